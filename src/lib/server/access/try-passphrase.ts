import type { Access, SignIn } from './access.ts';
import { isPassphrase } from './passphrase.ts';
import type { SlowDown } from './slow-down.ts';

/** Who tries: where from, and what it says it is. */
export interface Trying {
	readonly address: string;
	readonly device: string;
}

export type Tried =
	| { readonly token: string; readonly signIn: SignIn }
	| { readonly status: 400 | 403 | 429; readonly sentence: string; readonly wait?: number };

/**
 * Signs a device in if it gives the passphrase. Refused: while none is set, while the address has to wait after wrong ones
 * (`wait` in whole seconds), and a wrong one.
 */
export async function tryPassphrase(
	access: Access,
	slow: SlowDown,
	given: string,
	{ address, device }: Trying
): Promise<Tried> {
	const kept = access.passphrase();
	if (!kept) return { status: 403, sentence: noneIsSet };
	if (given.trim() === '') return { status: 400, sentence: 'Write the passphrase.' };
	const wait = Math.ceil(slow.ask(address) / 1000);
	if (wait > 0) return { status: 429, sentence: `Too many tries. Wait ${inWords(wait)}, then try again.`, wait };
	if (!(await isPassphrase(given, kept))) {
		slow.wrong(address);
		return { status: 403, sentence: 'That is not the passphrase. It is the one that was set on the machine itself.' };
	}
	slow.right(address);
	return access.signIn(device, address);
}

export const noneIsSet =
	'No passphrase has been set yet. Set one first, on the machine that Pin to Paper runs on: in the workroom, under Other devices.';

function inWords(seconds: number): string {
	if (seconds < 90) return `${seconds} ${seconds === 1 ? 'second' : 'seconds'}`;
	return `${Math.ceil(seconds / 60)} minutes`;
}
