import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto';
import { oneAtATime } from '../one-at-a-time.ts';

/** A passphrase as it is kept: salt and hash in base64, and scrypt's N. */
export interface KeptPassphrase {
	readonly salt: string;
	readonly hash: string;
	readonly cost: number;
}

/** scrypt (RFC 7914) with N = 2^15, r = 8, p = 1: about 0.2 s and 32 MB for each try. */
const cost = 2 ** 15;
const blockSize = 8;
const length = 32;

/** Shortest passphrase, in letters. */
const shortest = 12;

/** Longest that is looked at: nobody's machine is to be kept busy with a book. */
const longest = 400;

/** Why a new passphrase will not do, with what would; nothing when it will. */
export function passphraseProblem(text: string): string | undefined {
	const letters = [...plain(text)].length;
	if (letters > longest) return `That is longer than ${longest} letters. A line of words is enough.`;
	if (letters >= shortest) return undefined;
	return `Take at least ${shortest} letters: three or four words that do not belong together, with spaces between them.`;
}

/** Spaces at the ends, double spaces and the ways of writing one letter are no part of it: phones add and change them. */
const plain = (text: string): string => text.normalize('NFKC').trim().replaceAll(/\s+/g, ' ');

const singly = oneAtATime();

/** A passphrase with a new salt, to be kept. */
export async function hashPassphrase(text: string): Promise<KeptPassphrase> {
	const salt = randomBytes(16);
	return { salt: salt.toString('base64'), hash: (await derived(text, salt, cost)).toString('base64'), cost };
}

/** Whether it is the passphrase that is kept. One is tried at a time, on all addresses together. */
export async function isPassphrase(text: string, kept: KeptPassphrase): Promise<boolean> {
	if ([...text].length > longest * 2) return false;
	const hash = Buffer.from(kept.hash, 'base64');
	return timingSafeEqual(await derived(text, Buffer.from(kept.salt, 'base64'), kept.cost), hash);
}

function derived(text: string, salt: Buffer, N: number): Promise<Buffer> {
	// Node.js stops at 32 MB unless told otherwise, which is a little less than N * r * 128 and what it needs besides.
	const options = { N, r: blockSize, p: 1, maxmem: 2 * 128 * N * blockSize };
	return singly(
		() =>
			new Promise((resolve, reject) => {
				scrypt(plain(text), salt, length, options, (fault, key) => (fault ? reject(fault) : resolve(key)));
			})
	);
}
