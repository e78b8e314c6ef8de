import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { stepping } from '../../../src/lib/ui/fitting/stepping.svelte.ts';
import type { FittingView } from '../../../src/lib/ui/fitting/view/fitting-view.ts';
import type { KeptView } from '../../../src/lib/ui/fitting/view/kept-view.ts';

/** Views are only told from each other here. */
const view = () => ({}) as FittingView;
const kept = {} as KeptView;
const typed = (amount: string) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount });

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('a step is shown until the thumb rests, for what it was drawn of and nothing else', () => {
	const steps = stepping();
	const [step, fields] = [view(), typed('1/8')];
	steps.show(kept, fields, step);
	expect(steps.of(kept, fields)).toBe(step);
	expect(steps.of({} as KeptView, fields)).toBeUndefined();
	expect(steps.of(kept, typed('1/8'))).toBeUndefined();
	vi.advanceTimersByTime(119);
	expect(steps.of(kept, fields)).toBe(step);
	vi.advanceTimersByTime(1);
	expect(steps.of(kept, fields)).toBeUndefined();
});

test('while a finger lies on the page nothing moves under it: the whole page waits until it is lifted', () => {
	const steps = stepping();
	const fields = typed('1/8');
	steps.show(kept, fields, view());
	vi.advanceTimersByTime(100);
	steps.press();
	steps.leave();
	vi.advanceTimersByTime(5000);
	expect(steps.of(kept, fields)).toBeDefined();
	steps.lift();
	vi.advanceTimersByTime(119);
	expect(steps.of(kept, fields)).toBeDefined();
	vi.advanceTimersByTime(1);
	expect(steps.of(kept, fields)).toBeUndefined();
});

test('a step that is shown under the finger waits as well; one that is none shows the whole page at once', () => {
	const steps = stepping();
	const [fields, none] = [typed('1/8'), typed('none')];
	steps.press();
	steps.show(kept, fields, view());
	vi.advanceTimersByTime(5000);
	expect(steps.of(kept, fields)).toBeDefined();
	steps.show(kept, none, undefined);
	expect([steps.of(kept, fields), steps.of(kept, none)]).toEqual([undefined, undefined]);
});

test('what is left is the whole page at once where no finger lies on it', () => {
	const steps = stepping();
	const fields = typed('1/8');
	steps.show(kept, fields, view());
	steps.leave();
	expect(steps.of(kept, fields)).toBeUndefined();
});

test('a step that was worked out ahead is not worked out again, and another is', () => {
	const steps = stepping();
	const draw = vi.fn(view);
	const from = view();
	const ahead = steps.step(from, typed('1/8'), draw);
	expect(steps.step(from, typed('1/8'), draw)).toBe(ahead);
	expect(draw).toHaveBeenCalledOnce();
	steps.step(from, typed('1/4'), draw);
	steps.step(view(), typed('1/4'), draw);
	expect(draw).toHaveBeenCalledTimes(3);
});
