import type { Journal } from '$lib/server/journal/journal.ts';
import type { HeldHand } from '$lib/server/journal/records.ts';
import { handCookie } from '$lib/ui/cookies.ts';
import type { Cookies } from '@sveltejs/kit';

/** What is in the hand at a fitting: of this device, and of the others; `heard`: who they are, in a few letters. */
export function handsAt(
	journal: Journal,
	fitting: string,
	cookies: Cookies
): { readonly own: HeldHand | undefined; readonly others: readonly HeldHand[]; readonly heard: string } {
	const device = cookies.get(handCookie);
	const hands = journal.hands(fitting);
	const others = hands.filter((hand) => hand.device !== device);
	const own = hands.find((hand) => hand.device === device);
	const heard = others.map((hand) => `${hand.device} ${hand.number}`).join(' ');
	return { own, others, heard };
}
