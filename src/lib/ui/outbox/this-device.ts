import { handCookie } from '../cookies.ts';
import { randomKey } from './random-key.ts';

/** Gives this browser the random name under which what is in its hand is kept; it has no other use. */
export function nameThisDevice(page: Document = document): void {
	if (page.cookie.split('; ').some((one) => one.startsWith(`${handCookie}=`))) return;
	page.cookie = `${handCookie}=${randomKey()}; path=/; max-age=31536000; samesite=lax`;
}
