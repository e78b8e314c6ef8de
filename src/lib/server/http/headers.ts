/** Pages that hold body measures or photos, or name the wearer whose they are. */
const withBodies = /^\/(wearers|garments|photos)(\/|$)/;

/**
 * Sets what every answer carries: it is read as what it says it is, framed by nobody, and asks for no camera,
 * microphone or whereabouts. The referrer stays within the server and is not turned off, since browsers name no
 * origin with a form that is sent without one. Pages with bodies are kept by no cache. A drawing opened by itself
 * gets a policy of its own, under which nothing in it runs; the framework gives pages theirs.
 */
export function setHeaders(headers: Headers, path: string): void {
	headers.set('x-content-type-options', 'nosniff');
	headers.set('x-frame-options', 'DENY');
	headers.set('referrer-policy', 'same-origin');
	headers.set('cross-origin-opener-policy', 'same-origin');
	headers.set('cross-origin-resource-policy', 'same-origin');
	headers.set('permissions-policy', 'camera=(), microphone=(), geolocation=()');
	if (withBodies.test(path)) headers.set('cache-control', 'no-store');
	if (headers.get('content-type')?.startsWith('image/svg'))
		headers.set('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; font-src data:");
}
