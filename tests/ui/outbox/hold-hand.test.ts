import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { holdHand } from '../../../src/lib/ui/outbox/hold-hand.ts';
import { shelf } from './shelf.ts';

const place = '/garments/g/fittings/f';
const typed = (amount: string) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount });

function held(on = shelf()) {
	const sent: [unknown, boolean][] = [];
	const given = { away: false, status: 200 };
	const saved = vi.fn();
	const hand = holdHand({
		shelf: on,
		place,
		saved,
		send: async (fields, leaving) => {
			sent.push([fields, leaving]);
			return given.away ? { away: true } : { away: false, answer: { status: given.status } };
		}
	});
	return { hand, sent, given, saved, on };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('every step is in the browser at once, and in the journal when the hand rests', async () => {
	const { hand, sent, saved, on } = held();
	for (const amount of ['1', '1/', '1/4']) {
		hand.hold(typed(amount));
		expect(holdHand({ shelf: on, place, saved, send: vi.fn() }).putBy()).toEqual(typed(amount));
		await vi.advanceTimersByTimeAsync(100);
	}
	expect(sent).toEqual([]);
	await vi.advanceTimersByTimeAsync(200);
	expect([sent, on.names()]).toEqual([[[typed('1/4'), false]], []]);
	expect(saved).toHaveBeenCalledOnce();
});

test('a page that is left sends what still rests, and nothing twice', async () => {
	const { hand, sent } = held();
	hand.leave();
	hand.hold(typed('1/4'));
	hand.leave();
	hand.leave();
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent).toEqual([[typed('1/4'), true]]);
});

test('what the journal did not get stays in the browser until it is there again', async () => {
	const { hand, sent, given, on } = held();
	given.away = true;
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(1000);
	const later = held(on);
	expect(later.hand.putBy()).toEqual(typed('1/4'));
	later.hand.again();
	await vi.advanceTimersByTimeAsync(0);
	expect([later.sent, on.names()]).toEqual([[[typed('1/4'), false]], []]);
	expect(sent.length).toBe(1);
});

test('what is typed while the step before is on its way is not taken for saved', async () => {
	const on = shelf();
	let answer = () => {};
	const hand = holdHand({
		shelf: on,
		place,
		saved: () => {},
		send: () => new Promise((resolve) => (answer = () => resolve({ away: false, answer: { status: 200 } })))
	});
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	answer();
	await vi.advanceTimersByTimeAsync(0);
	expect(hand.putBy()).toEqual(typed('1/4'));
});

test('a hand that is put down is let go in the journal as well; one that is kept is not sent again', async () => {
	const { hand, sent, on } = held();
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(null);
	await vi.advanceTimersByTimeAsync(250);
	expect(sent.map(([fields]) => fields)).toEqual([typed('1/4'), null]);
	hand.hold(typed('1/8'));
	hand.emptied();
	hand.hold(null);
	await vi.advanceTimersByTimeAsync(1000);
	expect([sent.length, on.names()]).toEqual([2, []]);
});

test('a browser that keeps nothing saves the hand in the journal all the same', async () => {
	const { hand, sent } = held(shelf(5));
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	expect(sent).toEqual([[typed('1/4'), false]]);
});
