import type { Instant } from '../journal/records.ts';
import type { KeptPassphrase } from './passphrase.ts';

/** A device that is signed in. */
export interface SignIn {
	readonly id: string;
	/** In words: “a phone with Android, Firefox”. */
	readonly device: string;
	/** On the network, when it was last used. */
	readonly address: string;
	readonly beganAt: Instant;
	readonly seenAt: Instant;
}

/** Who may come in from other devices: kept in the journal's database, apart from the journal itself. */
export interface Access {
	passphrase(): KeptPassphrase | undefined;
	/** Sets it, or another one; every device is signed out by that. */
	setPassphrase(kept: KeptPassphrase): void;
	/** Signs a device in. `token` is what the device holds: 32 random bytes in base64url, kept nowhere else. */
	signIn(device: string, address: string): { readonly token: string; readonly signIn: SignIn };
	/**
	 * The device that holds this, noted as used now unless it asks `byItself`; `signed-out` where somebody signed it out, undefined
	 * where it was not used for twelve hours or never signed in.
	 */
	signedIn(token: string, address: string, byItself?: boolean): SignIn | 'signed-out' | undefined;
	/** Every device that is signed in, the one used last first. */
	signIns(): readonly SignIn[];
	signOut(id: string): void;
	signOutAll(): void;
}
