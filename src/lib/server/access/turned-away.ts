/** What of a request is looked at. */
interface Asked {
	readonly request: Request;
	readonly url: URL;
	readonly isDataRequest: boolean;
}

/** The page that a device may see before it is signed in. */
const signInPage = '/sign-in';

/**
 * What a device that is not signed in is answered: undefined where it may go on; where a page is asked for, the page to sign
 * in at, which leads back; for anything else, a sentence with 401.
 */
export function turnedAway({
	request,
	url,
	isDataRequest
}: Asked): { page: string } | { response: Response } | undefined {
	if (url.pathname === signInPage) return undefined;
	const accepted = request.headers.get('accept') ?? '';
	const forPage = isDataRequest || accepted.includes('text/html') || request.headers.has('x-sveltekit-action');
	if (forPage)
		return { page: `${signInPage}?${new URLSearchParams({ back: url.pathname + pageSearch(url) }).toString()}` };
	const message = 'This device is not signed in any more. Open the page again and sign in; then send it once more.';
	return { response: Response.json({ message }, { status: 401 }) };
}

/** The query without the name of a form's action, which is no part of the page's address. */
function pageSearch({ searchParams }: URL): string {
	const own = new URLSearchParams([...searchParams].filter(([name]) => !name.startsWith('/')));
	return own.size > 0 ? `?${own.toString()}` : '';
}
