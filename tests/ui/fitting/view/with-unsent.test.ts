import { expect, test } from 'vitest';
import { carry, parseAlteration } from '../../../../src/lib/engine/index.ts';
import type { FittingGround, GroundAlteration } from '../../../../src/lib/ui/fitting/ground.ts';
import { keptView } from '../../../../src/lib/ui/fitting/view/kept-view.ts';
import { withUnsent, type UnsentForm } from '../../../../src/lib/ui/fitting/view/with-unsent.ts';
import { boxes, inch } from '../drafts.ts';

const ground: FittingGround = {
	...{ unit: 'in', caption: [], base: boxes, alterations: [], checks: {}, piecesOff: [], earlier: [], letters: {} }
};
const place = '/garments/g/fittings/f';

/** A side seam taken in at its waist by so much on each layer. */
const sideIn = (amount: string, more: Readonly<Record<string, string>> = {}): UnsentForm => ({
	action: `${place}?/keep&side=right`,
	fields: { act: 'took-in', seam: 'side', places: 'level:waist', 'amount.level:waist': amount, ...more }
});
const sideSeam = (id: string, mm: number) =>
	parseAlteration({
		...{ id, kind: 'seam', on: 'both', seam: 'side' },
		pins: [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -mm, b: -mm },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		]
	});
const recorded: GroundAlteration = {
	...{ id: 'one', revision: 3, number: 1, position: 1, act: 'took-in', intent: sideSeam('one', inch / 4) },
	...{ measured: 'one-layer', note: '', answers: null, state: 'standing', takenOut: false, pairedWith: null }
};
const withOne: FittingGround = { ...ground, alterations: [recorded] };

/** The draft that comes of what is kept and what waits. */
const after = (from: FittingGround, forms: readonly UnsentForm[]) => {
	const all = withUnsent(from, forms);
	return keptView(all.ground, all.waiting).after;
};

test('forms that wait are carried after what is kept, in order, as the engine carries them', () => {
	const forms = [sideIn('1/8'), sideIn('1/16')];
	const carried = carry(boxes, [sideSeam('a', inch / 4), sideSeam('b', inch / 8), sideSeam('c', inch / 16)], {
		queries: false
	});
	expect(carried.unplaced).toEqual([]);
	expect(after(withOne, forms)).toEqual(carried.draft);
	expect(withUnsent(withOne, forms).waiting.map(({ number, notSent }) => [number, notSent])).toEqual([
		[2, true],
		[3, true]
	]);
});

test('right and left with their own amounts wait as two, the second as the other side of the first', () => {
	const [right, left, ...others] = withUnsent(ground, [
		sideIn('1/4', { sides: 'each', 'left.level:waist': '1/8' })
	]).waiting;
	expect(others).toEqual([]);
	expect([right, left]).toMatchObject([
		{ number: 1, pairedWith: null, intent: { on: 'right' } },
		{ number: 2, pairedWith: right!.id, intent: { on: 'left' } }
	]);
});

test('a kept one that a form changes is drawn as it will be, and nothing waits beside it', () => {
	const forms = [sideIn('1/2', { alteration: 'one', revision: '3', note: 'more than it looked' })];
	const all = withUnsent(withOne, forms);
	expect(all.waiting).toEqual([]);
	expect(all.ground.alterations).toMatchObject([
		{ id: 'one', revision: 3, number: 1, note: 'more than it looked', notSent: true, intent: { id: 'one' } }
	]);
	expect(after(withOne, forms)).toEqual(carry(boxes, [sideSeam('one', inch / 2)], { queries: false }).draft);
	expect(recorded.intent).toEqual(sideSeam('one', inch / 4));
});

test('left out and taken up again change what is drawn', () => {
	const ask = (asks: string): UnsentForm => ({ action: `${place}?/${asks}`, fields: { alteration: 'one' } });
	expect(after(withOne, [ask('leaveOut')])).toEqual(boxes);
	expect(after(withOne, [ask('leaveOut'), ask('takeUp')])).toEqual(after(withOne, []));
});

test('what cannot be read, or is no alteration, waits unseen', () => {
	const observed: UnsentForm = { action: `${place}?/observe`, fields: { what: 'Drag lines' } };
	expect(withUnsent(withOne, [sideIn('ten'), observed])).toEqual({ ground: withOne, waiting: [] });
});
