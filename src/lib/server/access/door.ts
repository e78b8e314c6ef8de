import { isIP } from 'node:net';
import type { Access, SignIn } from './access.ts';

/** Who asks: this machine itself, a device of the network that is signed in, or one that is not (any more). */
export type Visitor =
	| { readonly kind: 'this-machine' }
	| { readonly kind: 'device'; readonly signIn: SignIn }
	| { readonly kind: 'stranger'; readonly signedOut: boolean };

export interface Knock {
	/** Of the connection's other end. */
	readonly address: string;
	readonly headers: Headers;
	/** What the device holds, from its cookie. */
	readonly token?: string;
	/** An open page asks by itself, and nobody may be there: that is no use of the device. */
	readonly byItself?: boolean;
}

/** The cookie that a signed-in device holds. Sent with nothing that begins on another site, and out of reach of scripts. */
export const deviceCookie = 'device';
export const deviceCookieOptions = {
	path: '/',
	httpOnly: true,
	sameSite: 'strict',
	// The local network is plain http; the pages say so.
	secure: false,
	// The sign-in itself ends after twelve hours without a word; this only outlives a browser that is closed in between.
	maxAge: 7 * 24 * 60 * 60
} as const;

export function visitorOf({ address, headers, token, byItself }: Knock, access: Access): Visitor {
	if (isThisMachine(address, headers)) return { kind: 'this-machine' };
	const signIn = token === undefined ? undefined : access.signedIn(token, plainAddress(address), byItself);
	if (signIn === undefined || signIn === 'signed-out') return { kind: 'stranger', signedOut: signIn === 'signed-out' };
	return { kind: 'device', signIn };
}

/**
 * Whether a request is of this machine itself. It has to come over the loopback and ask for it by a loopback name: what
 * others send through a forwarder on this machine comes over the loopback as well, but under the name that they typed, or
 * with a note of whom it is from.
 */
export function isThisMachine(address: string, headers: Headers): boolean {
	if (headers.has('forwarded') || headers.has('x-forwarded-for')) return false;
	const host = (headers.get('host') ?? '').replace(/:\d+$/, '').replace(/^\[(.*)\]$/, '$1');
	return isLoopback(plainAddress(address)) && (host.toLowerCase() === 'localhost' || isLoopback(host));
}

const isLoopback = (address: string): boolean =>
	address === '::1' || (isIP(address) === 4 && address.startsWith('127.'));

/** An IPv4 address that is written as IPv6, `::ffff:192.168.1.20`, as IPv4. */
export const plainAddress = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, '');
