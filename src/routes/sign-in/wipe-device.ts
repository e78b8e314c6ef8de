/**
 * Takes away what this server's pages have put by in the browser: what was typed and not yet sent, above all. Cookies are
 * the server's to take.
 */
export async function wipeDevice(): Promise<void> {
	localStorage.clear();
	sessionStorage.clear();
	for (const { name } of (await indexedDB.databases?.()) ?? []) if (name) indexedDB.deleteDatabase(name);
	if ('caches' in globalThis) for (const name of await caches.keys()) await caches.delete(name);
}
