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

/** A journal that answers each thing that it is sent when it is told to. */
function slow() {
	const sent: unknown[] = [];
	const answers: (() => void)[] = [];
	const hand = holdHand({
		shelf: shelf(),
		place,
		saved: () => {},
		send: (fields) => {
			sent.push(fields);
			return new Promise((resolve) => answers.push(() => resolve({ away: false, answer: { status: 200 } })));
		}
	});
	return { hand, sent, answer: () => answers.shift()?.() };
}

test('what is typed reaches the journal in order: one thing is sent after the other is answered', async () => {
	const { hand, sent, answer } = slow();
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent).toEqual([typed('1')]);
	answer();
	await vi.advanceTimersByTimeAsync(0);
	expect(sent).toEqual([typed('1'), typed('1/4')]);
	answer();
	await vi.advanceTimersByTimeAsync(1000);
	expect([sent.length, hand.putBy()]).toEqual([2, undefined]);
});

test('a form is sent after the hand that rests is in the journal', async () => {
	const { hand, sent, answer } = slow();
	hand.hold(typed('1/4'));
	const before = vi.fn();
	void hand.settled().then(before);
	await vi.advanceTimersByTimeAsync(0);
	expect([sent, before.mock.calls.length]).toEqual([[typed('1/4')], 0]);
	answer();
	await vi.advanceTimersByTimeAsync(0);
	expect(before).toHaveBeenCalledOnce();
});

test('a form does not wait longer than three seconds for a hand that is not answered', async () => {
	const { hand } = slow();
	hand.hold(typed('1/4'));
	const before = vi.fn();
	void hand.settled().then(before);
	await vi.advanceTimersByTimeAsync(2900);
	expect(before).not.toHaveBeenCalled();
	await vi.advanceTimersByTimeAsync(200);
	expect(before).toHaveBeenCalledOnce();
});

test('while a hand is being kept nothing is sent of it: neither what rests, nor what is typed, nor when the journal is heard of', async () => {
	const { hand, sent, given, on } = held();
	given.away = true;
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(1000);
	given.away = false;
	hand.hold(typed('1/4'));
	hand.keep();
	expect(on.names()).toEqual([]);
	hand.again();
	hand.leave();
	hand.hold(typed('1/8'));
	await hand.settled();
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent.map(([fields]) => fields)).toEqual([typed('1')]);
	hand.emptied();
	hand.again();
	await vi.advanceTimersByTimeAsync(1000);
	expect([sent.length, on.names()]).toEqual([1, []]);
});

test('a save that waits for the one before it is not sent when the hand is being kept by then', async () => {
	const { hand, sent, answer } = slow();
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	hand.keep();
	answer();
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent).toEqual([typed('1')]);
});

test('a hand that was not kept is in the browser again, and is saved', async () => {
	const { hand, sent, on } = held();
	hand.hold(typed('1/4'));
	hand.keep();
	hand.notKept();
	expect(hand.putBy()).toEqual(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	expect([sent, on.names()]).toEqual([[[typed('1/4'), false]], []]);
});
