import { describe, expect, test } from 'vitest';
import { carry, cuttingLines, parseAlteration } from '../../../../src/lib/engine/index.ts';
import { cutPaths } from '../../../../src/lib/ui/drawing/cut-paths.ts';
import type { FittingGround, GroundAlteration } from '../../../../src/lib/ui/fitting/ground.ts';
import { fittingView, type FittingView } from '../../../../src/lib/ui/fitting/view/fitting-view.ts';
import { inHand, type InHand } from '../../../../src/lib/ui/fitting/view/in-hand.ts';
import { keptView } from '../../../../src/lib/ui/fitting/view/kept-view.ts';
import { spokenHand } from '../../../../src/lib/ui/fitting/view/spoken-hand.ts';
import { inch, jacket } from '../drafts.ts';

const allowances = { default: inch };
const checks = { base: jacket, before: jacket, toile: { draft: jacket, allowances, cut: 'toile' as const } };

function kept(number: number, intent: object): GroundAlteration {
	return {
		id: `kept-${number}`,
		revision: 1,
		number,
		position: number,
		act: 'took-in',
		intent: parseAlteration({ id: `kept-${number}`, ...intent }),
		measured: 'one-layer',
		note: '',
		answers: null,
		state: 'standing',
		takenOut: false,
		pairedWith: null
	};
}

const seam = (id: string, mm: number) => ({
	kind: 'seam',
	seam: id,
	pins: [{ at: { end: 'start' } }, { at: { level: 'waist' }, a: mm, b: mm }, { at: { end: 'finish' } }]
});
/** Cut straight across the front: the carry remarks a bridge where the edge is stepped. */
const spread = {
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/side', level: 'waist' },
			to: { edge: 'front/front-edge', level: 'waist' },
			gapFrom: 6,
			gapTo: 12,
			keep: 'front/shoulder'
		}
	]
};

const ground = (...alterations: readonly GroundAlteration[]): FittingGround => ({
	unit: 'in',
	base: jacket,
	alterations,
	checks,
	cut: cutPaths(cuttingLines(jacket, allowances)),
	piecesOff: [],
	earlier: [],
	letters: {},
	caption: ['Fitting 1']
});
const typed = { act: 'let-out', seam: 'side', 'amount.level:waist': '1 1/2' };

function view(of: FittingGround, fields: Readonly<Record<string, string>>): FittingView {
	const drawn = fittingView(keptView(of), fields);
	if ('notThere' in drawn) throw new Error(drawn.notThere);
	return drawn;
}

describe('what is asked of an alteration in the hand', () => {
	const told = (one: { readonly code: string; readonly where: string; readonly sentence: string }) =>
		`${one.code} ${one.where} ${one.sentence}`;

	test.each([
		['nothing is kept', []],
		['another is kept', [kept(1, seam('shoulder', -3))]],
		['one is kept whose carry remarked something', [kept(1, spread), kept(2, seam('side-back', -4))]]
	])('is what carrying everything together asks, where %s', (_, alterations) => {
		const held = inHand(keptView(ground(...alterations)), typed) as InHand;
		const intents = held.carried.map(({ alteration }) => alteration);
		const together = carry(jacket, intents, checks);
		expect(intents).toHaveLength(alterations.length + 1);
		expect(held.after).toEqual(together.draft);
		expect(new Set(held.queries().map(told))).toEqual(new Set(together.queries.map(told)));
	});

	test('is what carrying everything together asks, where a kept one in the middle is changed', () => {
		const of = ground(kept(1, seam('side', -3)), kept(2, seam('shoulder', -3)));
		const held = inHand(keptView(of), { ...typed, alteration: 'kept-1' }) as InHand;
		const together = carry(
			jacket,
			held.carried.map(({ alteration }) => alteration),
			checks
		);
		expect(held.carried).toHaveLength(2);
		expect(held.after).toEqual(together.draft);
		expect(held.queries().map(told)).toEqual(together.queries.map(told));
	});
});

test('pieces that are not touched are drawn with the same lines and words, whatever is stepped', () => {
	const [one, other] = ['1/8', '1/4'].map((text) =>
		view(ground(), { act: 'took-in', seam: 'side', 'amount.level:waist': text })
	);
	const changed = one.scene.pieces.filter(
		(piece, i) => JSON.stringify(piece) !== JSON.stringify(other.scene.pieces[i])
	);
	expect(changed.map(({ id }) => id).sort()).toEqual(['front', 'under-arm']);
	expect(one.spots).toEqual(
		other.spots.map((spot) => ({ ...spot, says: expect.any(String), amount: expect.any(Number) }))
	);
});

describe('the places of the seam in the hand', () => {
	test('stand on both layers, on the line as it was', () => {
		const { spots, scene } = view(ground(), { act: 'took-in', seam: 'side', 'amount.level:waist': '1/4' });
		expect(spots.map(({ edge }) => edge.split('/')[0]).sort()).toEqual(
			Array.from({ length: 10 }, (_, i) => (i < 5 ? 'front' : 'under-arm'))
		);
		const waist = spots.filter(({ key }) => key === 'level:waist');
		// The waist line stands level across the table.
		expect(waist[0].at[1]).toBeCloseTo(waist[1].at[1], 6);
		expect(waist.map(({ here, amount }) => [here, amount])).toEqual([
			[true, inch / 4],
			[true, inch / 4]
		]);
		for (const { at } of spots) expect(at[0] >= 0 && at[0] <= scene.width).toBe(true);
	});

	test('are none where the whole line moves, or where nothing is in the hand', () => {
		expect(view(ground(), { act: 'took-in', seam: 'side', along: 'all' }).spots).toEqual([]);
		expect(view(ground(), {}).spots).toEqual([]);
	});
});

describe('what is read out', () => {
	const said = (fields: Readonly<Record<string, string>>) => spokenHand(view(ground(), fields), 'in');

	test('is the thing, the place and what it comes to', () => {
		expect(said({ act: 'took-in', seam: 'side', 'amount.level:waist': '1/4', here: 'level:waist' })).toBe(
			'Side seam, under-arm to front. Waist line, in 1/4 inch. 1 inch round the waist.'
		);
		expect(said({ act: 'let-out', seam: 'side', 'amount.level:waist': '3/4', here: 'level:waist' })).toBe(
			'Side seam, under-arm to front. Waist line, out 3/4 inch. 3 inches round the waist.'
		);
	});

	test('is what would be right, of something that cannot be read', () => {
		expect(said({ act: 'took-in', seam: 'side', 'amount.level:waist': 'ten' })).toMatch(/“ten” is not in figures/);
	});

	test('asks what was done, or where', () => {
		expect(said({ seam: 'side' })).toBe('Side seam, under-arm to front. What was done?');
		expect(said({ act: 'took-in' })).toBe('Took in a seam: where?');
		expect(said({})).toBe('');
	});
});
