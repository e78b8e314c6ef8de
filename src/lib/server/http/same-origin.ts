/**
 * Whether a request may change something: reading always may, everything else only from a page of this very server.
 * The framework asks this of forms only; here it is asked of every method but GET and HEAD, so that a stranger's page
 * can send nothing at all. A browser names the origin with every such request; one without it is no browser's.
 */
export function mayChange(request: Request, url: URL): boolean {
	if (request.method === 'GET' || request.method === 'HEAD') return true;
	return request.headers.get('origin') === url.origin;
}
