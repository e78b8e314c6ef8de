/**
 * Whether a request failed because its other end is gone: a page that was closed while it sent, a network that dropped. Nothing went
 * wrong here, and nobody is left to be told. This server asks no other, so that no connection but a visitor’s can be reset.
 */
export const isBrokenOff = (error: unknown): boolean =>
	error instanceof Error && 'code' in error && error.code === 'ECONNRESET';
