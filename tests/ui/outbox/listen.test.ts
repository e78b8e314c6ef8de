import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { listen } from '../../../src/lib/ui/outbox/listen.ts';

/** As much of a page as is listened to. */
function page() {
	const events = new EventTarget();
	const window = new EventTarget();
	const seen = { visibilityState: 'visible' as DocumentVisibilityState };
	const document = Object.assign(events, { defaultView: window });
	Object.defineProperty(document, 'visibilityState', { get: () => seen.visibilityState });
	const show = (state: DocumentVisibilityState) => {
		seen.visibilityState = state;
		events.dispatchEvent(new Event('visibilitychange'));
	};
	return { document: document as unknown as Document, show, online: () => window.dispatchEvent(new Event('online')) };
}

function listening() {
	const given = { away: false };
	const ask = vi.fn(async () =>
		given.away ? ({ away: true } as const) : ({ away: false, answer: { whole: 3, hands: '' } } as const)
	);
	const [heard, away] = [vi.fn(), vi.fn()];
	const { document, show, online } = page();
	const stop = listen({ ask, heard, away, every: 4000 }, document);
	return { given, ask, heard, away, show, online, stop };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('it asks again and again while the page is looked at, and not while it is not', async () => {
	const { ask, heard, show } = listening();
	await vi.advanceTimersByTimeAsync(12_500);
	expect(heard.mock.calls).toEqual(Array.from({ length: 3 }, () => [{ whole: 3, hands: '' }]));
	show('hidden');
	await vi.advanceTimersByTimeAsync(60_000);
	expect(ask.mock.calls.length).toBe(4);
	show('visible');
	await vi.advanceTimersByTimeAsync(0);
	expect(ask.mock.calls.length).toBe(5);
	await vi.advanceTimersByTimeAsync(4000);
	expect(ask.mock.calls.length).toBe(6);
});

test('it says that nothing is reached, and asks at once when the network is back', async () => {
	const { given, heard, away, online } = listening();
	given.away = true;
	await vi.advanceTimersByTimeAsync(4000);
	expect([away.mock.calls.length, heard.mock.calls.length]).toEqual([1, 0]);
	given.away = false;
	online();
	await vi.advanceTimersByTimeAsync(0);
	expect(heard).toHaveBeenCalledOnce();
});

test('once stopped it asks nothing and says nothing', async () => {
	const { ask, heard, stop, online } = listening();
	await vi.advanceTimersByTimeAsync(4000);
	stop();
	online();
	await vi.advanceTimersByTimeAsync(60_000);
	expect([ask.mock.calls.length, heard.mock.calls.length]).toEqual([1, 1]);
});
