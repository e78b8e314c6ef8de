/**
 * The page to return to after a form of the shell: a path on this site as it was sent along, or the workroom if it is
 * anything else, so that no link from elsewhere can lead away through us.
 */
export function pageToReturnTo(sent: FormDataEntryValue | null): string {
	if (typeof sent !== 'string') return '/';
	return /^\/(?![/\\])[^\s\\]*$/.test(sent) ? sent : '/';
}
