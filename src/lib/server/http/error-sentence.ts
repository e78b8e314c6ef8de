/**
 * What a page says about an error that no route foresaw: one sentence with what would be right.
 * `id` is that of the line in the log, where there is one.
 */
export function errorSentence(status: number, id: string): string {
	if (status === 404) return 'There is no page at this address. Everything is reached from the workroom.';
	if (status === 405) return 'This address only takes what its own page sends. Open the page and try there.';
	if (status === 413) return 'That is larger than Pin to Paper takes at once. Nothing was saved; try a smaller file.';
	if (status === 415) return 'This address takes forms only. Send it from its page.';
	if (status < 500) return 'That could not be read. Go back, load the page again, and send it once more.';
	return `Something went wrong in Pin to Paper itself, and nothing was half saved. Load the page again; if it stays, the log tells more under ${id}.`;
}
