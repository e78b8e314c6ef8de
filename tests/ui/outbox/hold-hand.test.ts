import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { HandSaved } from '../../../src/lib/ui/outbox/ask-fitting.ts';
import { holdHand } from '../../../src/lib/ui/outbox/hold-hand.ts';
import { shelf } from './shelf.ts';

const place = '/garments/g/fittings/f';
const typed = (amount: string) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount });

function held(on = shelf()) {
	const sent: [unknown, boolean][] = [];
	const given: { away: boolean; answer: HandSaved } = { away: false, answer: 'saved' };
	const saved = vi.fn();
	const hand = holdHand({
		shelf: on,
		place,
		saved,
		send: async (fields, leaving) => {
			sent.push([fields, leaving]);
			return given.away ? { away: true } : { away: false, answer: given.answer };
		}
	});
	return { hand, sent, given, saved, on };
}

/** A journal that answers each thing that it is sent when it is told to. */
function slow(on = shelf()) {
	const sent: unknown[] = [];
	const answers: ((away: boolean) => void)[] = [];
	const hand = holdHand({
		shelf: on,
		place,
		saved: () => {},
		send: (fields) => {
			sent.push(fields);
			return new Promise((resolve) => {
				answers.push((away) => resolve(away ? { away } : { away, answer: 'saved' }));
			});
		}
	});
	const answer = async (which = 0, away = false) => {
		answers.splice(which, 1)[0]?.(away);
		await vi.advanceTimersByTimeAsync(0);
	};
	return { hand, sent, answer, on };
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

test('a page that is left sends what still rests, and nothing once that is answered', async () => {
	const { hand, sent } = held();
	hand.leave();
	hand.hold(typed('1/4'));
	hand.leave();
	await vi.advanceTimersByTimeAsync(0);
	hand.leave();
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent).toEqual([[typed('1/4'), true]]);
});

test('a page that is left sends what waits for a save that is slow, and once more when it is back: which came last is not known', async () => {
	const { hand, sent, answer } = slow();
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	hand.leave();
	expect(sent).toEqual([typed('1'), typed('1/4')]);
	// The later one is answered first.
	await answer(1);
	await answer();
	expect(hand.putBy()).toEqual(typed('1/4'));
	await answer();
	hand.again();
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent.at(-1)).toEqual(typed('1/4'));
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

test('what the journal could not write stays in the browser, what it will never write does not', async () => {
	const { hand, sent, given, saved, on } = held();
	given.answer = 'not now';
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	expect([hand.putBy(), on.names().length]).toEqual([typed('1/4'), 1]);
	given.answer = 'never';
	hand.again();
	await vi.advanceTimersByTimeAsync(0);
	expect([sent.length, hand.putBy(), on.names()]).toEqual([2, undefined, []]);
	expect(saved).not.toHaveBeenCalled();
});

test('what is typed while the step before is on its way is not taken for saved', async () => {
	const { hand, answer } = slow();
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await answer();
	expect(hand.putBy()).toEqual(typed('1/4'));
});

test('what is typed reaches the journal in order: one thing is sent after the other is answered', async () => {
	const { hand, sent, answer } = slow();
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(1000);
	expect(sent).toEqual([typed('1')]);
	await answer();
	expect(sent).toEqual([typed('1'), typed('1/4')]);
	await answer();
	await vi.advanceTimersByTimeAsync(1000);
	expect([sent.length, hand.putBy()]).toEqual([2, undefined]);
});

test('a hand that is put down is let go in the journal as well; one that is kept is not sent again', async () => {
	const { hand, sent, on } = held();
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(null);
	await vi.advanceTimersByTimeAsync(250);
	expect(sent.map(([fields]) => fields)).toEqual([typed('1/4'), null]);
	hand.hold(typed('1/8'));
	hand.keep().done(true);
	// It stands on the page until that is drawn anew.
	hand.hold(typed('1/8'));
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

test('two pages of one browser do not wipe each other’s', async () => {
	const on = shelf();
	const [one, other] = [held(on), held(on)];
	one.hand.hold(typed('1/4'));
	other.hand.hold(typed('1/8'));
	other.hand.keep().done(true);
	await vi.advanceTimersByTimeAsync(1000);
	expect([one.sent, other.sent]).toEqual([[[typed('1/4'), false]], []]);
});

describe('a form', () => {
	test('is sent after the hand that rests is in the journal', async () => {
		const { hand, sent, answer } = slow();
		hand.hold(typed('1/4'));
		const before = vi.fn();
		void hand.settled().then(before);
		await vi.advanceTimersByTimeAsync(0);
		expect([sent, before.mock.calls.length]).toEqual([[typed('1/4')], 0]);
		await answer();
		expect(before).toHaveBeenCalledOnce();
	});

	test('does not wait longer than three seconds for one that is not answered', async () => {
		const { hand } = slow();
		hand.hold(typed('1/4'));
		const before = vi.fn();
		void hand.settled().then(before);
		await vi.advanceTimersByTimeAsync(2900);
		expect(before).not.toHaveBeenCalled();
		await vi.advanceTimersByTimeAsync(200);
		expect(before).toHaveBeenCalledOnce();
	});
});

describe('a hand that is being kept', () => {
	test('is not saved beside it: neither what rests, nor what is typed of it, nor when the journal is heard of', async () => {
		const { hand, sent, given, on } = held();
		given.away = true;
		hand.hold(typed('1'));
		await vi.advanceTimersByTimeAsync(1000);
		given.away = false;
		hand.hold(typed('1/4'));
		const keeping = hand.keep();
		expect(on.names()).toEqual([]);
		hand.again();
		hand.leave();
		hand.hold(typed('1/8'));
		await hand.settled();
		await vi.advanceTimersByTimeAsync(1000);
		expect(sent.map(([fields]) => fields)).toEqual([typed('1')]);
		keeping.done(true);
		hand.again();
		await vi.advanceTimersByTimeAsync(1000);
		expect([sent.length, on.names()]).toEqual([1, []]);
	});

	test('is not sent by a save that had waited for the one before it', async () => {
		const { hand, sent, answer } = slow();
		hand.hold(typed('1'));
		await vi.advanceTimersByTimeAsync(250);
		hand.hold(typed('1/4'));
		await vi.advanceTimersByTimeAsync(250);
		hand.keep();
		await answer();
		await vi.advanceTimersByTimeAsync(1000);
		expect(sent).toEqual([typed('1')]);
	});

	test('is in the browser again if it was not kept, and is saved', async () => {
		const { hand, sent, on } = held();
		hand.hold(typed('1/4'));
		hand.keep().done(false);
		expect(hand.putBy()).toEqual(typed('1/4'));
		await vi.advanceTimersByTimeAsync(250);
		expect([sent, on.names()]).toEqual([[[typed('1/4'), false]], []]);
	});

	test('is let go again after a save that came later than its keeping', async () => {
		const { hand, sent, answer } = slow();
		hand.hold(typed('1/4'));
		await vi.advanceTimersByTimeAsync(250);
		hand.keep().done(true);
		await answer();
		await vi.advanceTimersByTimeAsync(250);
		expect(sent).toEqual([typed('1/4'), null]);
	});

	test('can be pinned once more, word for word, once the hand was empty', async () => {
		const { hand, sent } = held();
		hand.hold(typed('1/4'));
		hand.keep().done(true);
		hand.hold(null);
		hand.hold(typed('1/4'));
		await vi.advanceTimersByTimeAsync(250);
		hand.hold(null);
		await vi.advanceTimersByTimeAsync(250);
		expect(sent.map(([fields]) => fields)).toEqual([typed('1/4'), null]);
	});

	test('gives way to the next that is taken in the hand meanwhile: that is held, and saved when the first is answered', async () => {
		const { hand, sent, on } = held();
		hand.hold(typed('1/4'));
		const keeping = hand.keep();
		expect(keeping.same()).toBe(true);
		hand.hold({ ...typed('1/8'), seam: 'shoulder' });
		expect([keeping.same(), on.names().length]).toEqual([false, 1]);
		keeping.done(true);
		await vi.advanceTimersByTimeAsync(250);
		expect(sent).toEqual([[{ ...typed('1/8'), seam: 'shoulder' }, false]]);
	});

	test('and the next one of it, are both kept', async () => {
		const { hand, sent, on } = held();
		hand.hold(typed('1/4'));
		const first = hand.keep();
		hand.hold({ ...typed('1/8'), seam: 'shoulder' });
		const second = hand.keep();
		first.done(true);
		await vi.advanceTimersByTimeAsync(1000);
		second.done(true);
		await vi.advanceTimersByTimeAsync(1000);
		expect([sent, on.names()]).toEqual([[], []]);
	});
});

test('a save that fails by our own mistake does not hold up those after it', async () => {
	const faults: unknown[] = [];
	const caught = (fault: unknown) => void faults.push(fault);
	process.on('unhandledRejection', caught);
	const send = vi.fn(async (): Promise<{ away: false; answer: HandSaved }> => ({ away: false, answer: 'saved' }));
	send.mockRejectedValueOnce(new Error('a mistake'));
	const hand = holdHand({ shelf: shelf(), place, saved: () => {}, send });
	hand.hold(typed('1'));
	await vi.advanceTimersByTimeAsync(250);
	hand.hold(typed('1/4'));
	await vi.advanceTimersByTimeAsync(250);
	vi.useRealTimers();
	await new Promise((resolve) => setTimeout(resolve));
	process.off('unhandledRejection', caught);
	expect([send.mock.calls.length, hand.putBy(), faults.map(String)]).toEqual([2, undefined, ['Error: a mistake']]);
});
