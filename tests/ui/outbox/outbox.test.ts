import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { FormResult } from '../../../src/lib/ui/outbox/answered.ts';
import { Outbox } from '../../../src/lib/ui/outbox/outbox.svelte.ts';
import { shelf } from './shelf.ts';

type Fields = Readonly<Record<string, string>>;

const place = '/garments/g/fittings/f';
const redirected: FormResult = { type: 'redirect', status: 303, location: `${place}?kept=x` };
const stale: FormResult = {
	type: 'failure',
	status: 409,
	data: { problems: { '': 'This was changed elsewhere.' }, stands: 'Side seam, took in 1/8″', current: { revision: 7 } }
};

/** A server that can go away, and does what a form asks once for each key. */
function server() {
	const done: string[] = [];
	const keys = new Map<string, FormResult>();
	const given: { away: boolean; lost: boolean; answer: FormResult } = { away: false, lost: false, answer: redirected };
	const send = async (action: string, { once, what, ...rest }: Fields) => {
		if (given.away) return { away: true } as const;
		const before = keys.get(once);
		if (!before && given.answer.type === 'redirect') {
			done.push(`${action} ${what}${rest.revision ? ` at ${rest.revision}` : ''}`);
			keys.set(once, given.answer);
		}
		// It was received, and the answer was lost.
		return given.lost ? ({ away: true } as const) : ({ away: false, answer: before ?? given.answer } as const);
	};
	return { done, given, send };
}

/** The outbox of a page just opened; another one with the same shelf is the page opened again. */
function opened({ send }: ReturnType<typeof server>, on = shelf()) {
	const received = vi.fn(async () => {});
	let clock = 1000;
	return { outbox: new Outbox({ shelf: on, place, received, send, now: () => clock++ }), received, on };
}

const form = (what: string, more: Fields = {}) => ({ action: '?/keep', fields: { what, ...more }, words: what });
const words = ({ unsent }: Outbox) => unsent.map((one) => one.words);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('a form that is answered leaves nothing behind in the browser', async () => {
	const here = server();
	const { outbox, on, received } = opened(here);
	expect(await outbox.post(form('first'))).toEqual({ result: redirected });
	expect([here.done, on.names(), outbox.unsent]).toEqual([['?/keep first'], [], []]);
	expect(received).not.toHaveBeenCalled();
});

test('it is put by before it is sent: a page that is closed before the answer sends it when it is opened again', async () => {
	const here = server();
	const on = shelf();
	const never = new Outbox({ shelf: on, place, received: async () => {}, send: () => new Promise(() => {}) });
	void never.post(form('first'));
	const { outbox, received } = opened(here, on);
	await outbox.open();
	expect([here.done, on.names()]).toEqual([['?/keep first'], []]);
	expect(received).toHaveBeenCalledOnce();
});

test('while nothing is reached forms wait in order, and are sent in order when it is, by itself', async () => {
	const here = server();
	const { outbox, received } = opened(here);
	here.given.away = true;
	expect(await outbox.post(form('first'))).toBe('waits');
	expect(await outbox.post(form('second'))).toBe('waits');
	expect([words(outbox), outbox.away]).toEqual([['first', 'second'], true]);
	here.given.away = false;
	await vi.advanceTimersByTimeAsync(5000);
	expect([here.done, outbox.unsent, outbox.away]).toEqual([['?/keep first', '?/keep second'], [], false]);
	expect(received).toHaveBeenCalledOnce();
});

test('each form is sent after what is to be in the journal before it', async () => {
	const here = server();
	const order: string[] = [];
	const outbox = new Outbox({
		shelf: shelf(),
		place,
		received: async () => {},
		first: async () => void order.push('first'),
		send: (action, fields) => {
			order.push(fields.what!);
			return here.send(action, fields);
		}
	});
	await outbox.post(form('pinned'));
	await outbox.post(form('undo'), { later: false });
	expect(order).toEqual(['first', 'pinned', 'first', 'undo']);
});

test('a form whose answer was lost is done once', async () => {
	const here = server();
	const { outbox } = opened(here);
	here.given.lost = true;
	expect(await outbox.post(form('first'))).toBe('waits');
	here.given.lost = false;
	await outbox.flush();
	expect([here.done, outbox.unsent]).toEqual([['?/keep first'], []]);
});

test('it is tried soon, and then not more often than every half minute', async () => {
	const here = server();
	const send = vi.fn(here.send);
	const { outbox } = opened({ ...here, send });
	here.given.away = true;
	await outbox.post(form('first'));
	await vi.advanceTimersByTimeAsync(10 * 60_000);
	expect(send.mock.calls.length).toBeGreaterThan(20);
	expect(send.mock.calls.length).toBeLessThan(27);
	outbox.stop();
	await vi.advanceTimersByTimeAsync(10 * 60_000);
	expect(send.mock.calls.length).toBeLessThan(27);
});

describe('a form that waited and is not kept', () => {
	async function refused(answer: FormResult, more: Fields = {}) {
		const here = server();
		const page = opened(here);
		here.given.away = true;
		await page.outbox.post(form('first', more));
		await page.outbox.post(form('second'));
		here.given.away = false;
		here.given.answer = answer;
		await page.outbox.flush();
		return { here, ...page };
	}

	test('stays with its sentence and what stands now, and is not sent again by itself', async () => {
		const { outbox, here, received } = await refused(stale);
		expect(outbox.unsent.map(({ answer }) => answer)).toEqual([
			{ status: 409, sentence: 'This was changed elsewhere.', stands: 'Side seam, took in 1/8″', revision: 7 },
			{ status: 409, sentence: 'This was changed elsewhere.', stands: 'Side seam, took in 1/8″', revision: 7 }
		]);
		expect(outbox.waiting).toEqual([]);
		here.given.answer = redirected;
		await outbox.flush();
		await vi.advanceTimersByTimeAsync(60_000);
		expect(here.done).toEqual([]);
		expect(received).toHaveBeenCalledOnce();
	});

	test('is sent over what stands now when that is wished', async () => {
		const { outbox, here } = await refused(stale, { revision: '3' });
		here.given.answer = redirected;
		await outbox.keepMine(outbox.unsent[0]);
		expect([here.done, words(outbox)]).toEqual([['?/keep first at 7'], ['second']]);
	});

	test('is sent as a new one where what it changes is gone', async () => {
		const gone: FormResult = { type: 'failure', status: 404, data: { problems: { '': 'It was undone.' } } };
		const { outbox, here } = await refused(gone, { revision: '3', alteration: 'a' });
		here.given.answer = redirected;
		await outbox.keepMine(outbox.unsent[0]);
		expect(here.done).toEqual(['?/keep first']);
	});

	test('is let go when that is wished, and not by anything else', async () => {
		const { outbox, on } = await refused(stale);
		outbox.letGo(outbox.unsent[0]);
		expect([words(outbox), on.names().length]).toEqual([['second'], 1]);
	});

	test('does not hold up those after it', async () => {
		const { outbox, here } = await refused(stale);
		here.given.answer = redirected;
		await outbox.post(form('third'));
		expect([here.done, words(outbox)]).toEqual([['?/keep third'], ['first', 'second']]);
	});
});

test('a form that its page sees refused is the page’s to show again, and waits nowhere', async () => {
	const here = server();
	const { outbox, on } = opened(here);
	here.given.answer = stale;
	expect(await outbox.post(form('first'))).toEqual({ result: stale });
	expect(on.names()).toEqual([]);
});

test('a mistake of the server loses nothing: the form stays, to be sent once more', async () => {
	const here = server();
	const { outbox } = opened(here);
	here.given.answer = { type: 'error', status: 500, error: { message: 'Line 3f of the log.' } };
	await outbox.post(form('first'));
	expect(outbox.unsent).toMatchObject([{ answer: { status: 500, sentence: 'Line 3f of the log.' } }]);
	here.given.answer = redirected;
	await outbox.keepMine(outbox.unsent[0]);
	expect([here.done, outbox.unsent]).toEqual([['?/keep first'], []]);
});

test('where this device is not signed in any more the form waits until it is', async () => {
	const here = server();
	const { outbox } = opened(here);
	const away: FormResult = { type: 'redirect', status: 303, location: '/sign-in?back=%2F' };
	const send = vi.fn(async () => ({ away: false, answer: away }) as const);
	const page = opened({ ...here, send }, shelf());
	expect(await page.outbox.post(form('first'))).toEqual({ result: away });
	expect(words(page.outbox)).toEqual(['first']);
	expect(outbox.unsent).toEqual([]);
});

test('a browser that keeps nothing sends the form plainly, and says so when it cannot', async () => {
	const here = server();
	const { outbox, on } = opened(here, shelf(5));
	expect(await outbox.post(form('first'))).toEqual({ result: redirected });
	expect([outbox.full, on.names(), here.done]).toEqual([true, [], ['?/keep first']]);
	here.given.away = true;
	expect(await outbox.post(form('second'))).toBe('not put by');
	expect(outbox.notDone).toBe(true);
});

test('a form on its way is not told as not sent; once it waits it is', async () => {
	const here = server();
	let answer = () => {};
	const send: typeof here.send = (...form) => new Promise((resolve) => (answer = () => resolve(here.send(...form))));
	const { outbox } = opened({ ...here, send });
	here.given.away = true;
	const came = outbox.post(form('first'));
	expect([words(outbox), outbox.late]).toEqual([['first'], []]);
	answer();
	expect(await came).toBe('waits');
	expect(outbox.late.length).toBe(1);
});

test('what is done now or not at all is never put by', async () => {
	const here = server();
	const { outbox, on } = opened(here);
	here.given.away = true;
	expect(await outbox.post(form('undo'), { later: false })).toBe('not put by');
	expect([on.names(), outbox.full, outbox.notDone]).toEqual([[], false, true]);
	here.given.away = false;
	expect(await outbox.post(form('undo'), { later: false })).toEqual({ result: redirected });
	expect([here.done, outbox.notDone]).toEqual([['?/keep undo'], false]);
});

test('what is done now is done after what waits: it is meant of what that comes to', async () => {
	const here = server();
	const { outbox } = opened(here);
	here.given.away = true;
	void outbox.post(form('first'));
	expect(await outbox.post(form('undo'), { later: false })).toBe('not put by');
	expect(outbox.notDone).toBe(true);
	here.given.away = false;
	expect(await outbox.post(form('undo'), { later: false })).toEqual({ result: redirected });
	expect([here.done, outbox.unsent]).toEqual([['?/keep first', '?/keep undo'], []]);
});

test('a form that is refused when its page shows it no more stays in the list', async () => {
	const here = server();
	const { outbox } = opened(here);
	here.given.answer = stale;
	await outbox.post(form('first'), { shows: () => false });
	expect(outbox.late).toMatchObject([{ words: 'first', answer: { status: 409, revision: 7 } }]);
});

test('a mistake of our own while it is sent leaves the form waiting, and holds up nothing', async () => {
	const faults: unknown[] = [];
	const caught = (fault: unknown) => void faults.push(fault);
	process.on('unhandledRejection', caught);
	const here = server();
	const send = vi.fn(here.send);
	send.mockRejectedValueOnce(new Error('a mistake'));
	const { outbox } = opened({ ...here, send });
	expect(await outbox.post(form('first'))).toBe('waits');
	await vi.advanceTimersByTimeAsync(1000);
	expect([here.done, outbox.unsent]).toEqual([['?/keep first'], []]);
	vi.useRealTimers();
	await new Promise((resolve) => setTimeout(resolve));
	process.off('unhandledRejection', caught);
	expect(faults.map(String)).toEqual(['Error: a mistake']);
});

test('an answer that there is no room for is told all the same, and its form not sent again and again', async () => {
	const here = server();
	const on = shelf();
	const { outbox } = opened(here, on);
	here.given.away = true;
	await outbox.post(form('first'));
	on.setItem = () => {
		throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
	};
	here.given.away = false;
	here.given.answer = stale;
	await outbox.flush();
	expect(outbox.late).toMatchObject([{ words: 'first', answer: { status: 409 } }]);
	expect(outbox.waiting).toEqual([]);
});

test('a form says whether its page shows it still, when it is sent', async () => {
	const here = server();
	const send = vi.fn(here.send);
	const { outbox } = opened({ ...here, send });
	const said = () => send.mock.calls.map(([, { what, inHand }]) => [what, inHand]);
	await outbox.post(form('first'));
	await outbox.post(form('second'), { shows: () => false });
	here.given.away = true;
	await outbox.post(form('third'));
	here.given.away = false;
	await outbox.flush();
	expect(said()).toEqual([
		['first', 'yes'],
		['second', undefined],
		['third', 'yes'],
		['third', undefined]
	]);
});

test('what is kept while something is undone is sent after it, not beside it', async () => {
	const here = server();
	let answer = () => {};
	const held = new Promise<void>((resolve) => (answer = resolve));
	const begun: string[] = [];
	const send = async (action: string, fields: Fields) => {
		begun.push(fields.what!);
		if (fields.what === 'undo') await held;
		return here.send(action, fields);
	};
	const { outbox } = opened({ ...here, send });
	const undone = outbox.post(form('undo'), { later: false });
	const kept = outbox.post(form('kept'));
	await vi.advanceTimersByTimeAsync(100);
	expect(begun).toEqual(['undo']);
	answer();
	expect([await undone, await kept]).toEqual([{ result: redirected }, { result: redirected }]);
	expect(here.done).toEqual(['?/keep undo', '?/keep kept']);
});

test('a page that is left tries no more', async () => {
	const here = server();
	const { outbox } = opened(here);
	here.given.away = true;
	const came = outbox.post(form('first'));
	outbox.stop();
	expect(await came).toBe('waits');
	here.given.away = false;
	await vi.advanceTimersByTimeAsync(60_000);
	expect(here.done).toEqual([]);
});
