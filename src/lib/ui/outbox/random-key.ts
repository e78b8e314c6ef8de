/** 128 random bits as text. (`crypto.randomUUID` is not there over the plain http of a local network.) */
export function randomKey(): string {
	return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
