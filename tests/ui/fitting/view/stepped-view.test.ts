import { describe, expect, test } from 'vitest';
import type { Path } from '../../../../src/lib/engine/index.ts';
import { cuttingLines, nearestOn, parseAlteration, parsePathData } from '../../../../src/lib/engine/index.ts';
import { cutPaths } from '../../../../src/lib/ui/drawing/cut-paths.ts';
import type { PieceScene, PinScene, Scene } from '../../../../src/lib/ui/drawing/scene.ts';
import type { FittingGround, GroundAlteration } from '../../../../src/lib/ui/fitting/ground.ts';
import type { Typed } from '../../../../src/lib/ui/fitting/typed.ts';
import { fittingView, type FittingView } from '../../../../src/lib/ui/fitting/view/fitting-view.ts';
import { keptView, type KeptView } from '../../../../src/lib/ui/fitting/view/kept-view.ts';
import { steppedView } from '../../../../src/lib/ui/fitting/view/stepped-view.ts';
import { inch, jacket } from '../drafts.ts';

const allowances = { default: inch };

const taken = (number: number, seam: string, mm: number): GroundAlteration => ({
	...{ id: `kept-${number}`, revision: 1, number, position: number, act: 'took-in', note: '', answers: null },
	intent: parseAlteration({
		id: `kept-${number}`,
		kind: 'seam',
		seam,
		pins: [{ at: { level: 'waist' }, a: mm, b: mm }]
	}),
	...{ measured: 'one-layer', state: 'standing', takenOut: false, pairedWith: null }
});

const ground = (...alterations: readonly GroundAlteration[]): FittingGround => ({
	...{ unit: 'in', base: jacket, alterations, piecesOff: [], earlier: [], letters: {}, caption: ['Fitting 1'] },
	checks: { base: jacket, before: jacket, toile: { draft: jacket, allowances, cut: 'toile' } },
	cut: cutPaths(cuttingLines(jacket, allowances))
});

function whole(kept: KeptView, typed: Typed): FittingView {
	const view = fittingView(kept, typed);
	if ('notThere' in view) throw new Error(view.notThere);
	return view;
}

/** The view of each of these amounts in turn, each stepped from the one before. */
function steppedThrough(kept: KeptView, typed: (amount: string) => Typed, amounts: readonly string[]): FittingView {
	const [first, ...rest] = amounts;
	return rest.reduce(
		(shown, amount) => {
			const view = steppedView(kept, typed(amount), shown);
			if (!view) throw new Error(`${amount} was no step.`);
			return view;
		},
		whole(kept, typed(first!))
	);
}

/** The lines of a piece, without where its words stand. */
const lines = ({ words: _, grain, cloth, ...piece }: PieceScene) => ({
	...piece,
	grain: grain?.path,
	cloth: cloth.at(-1)
});
const asDrawn = ({ pieces }: Scene) => pieces.map(lines);
const labels = ({ pins }: Scene) => pins.map(({ number, feature, way, label }) => ({ number, feature, way, label }));

const hands: readonly [string, FittingGround, (amount: string) => Typed][] = [
	['a seam taken in', ground(), (amount) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount })],
	[
		'a seam whose pieces are pinned already',
		ground(taken(1, 'side-back', -4), taken(2, 'side', -3)),
		(amount) => ({ act: 'took-in', seam: 'shoulder', 'amount.end:start': amount })
	],
	[
		'a kept alteration that others come after',
		ground(taken(1, 'side', -3), taken(2, 'side-back', -3)),
		(amount) => ({ alteration: 'kept-1', act: 'took-in', seam: 'side', 'amount.level:waist': amount })
	],
	[
		'an edge moved',
		ground(),
		(amount) => ({ act: 'chalked', edge: 'front/hem', way: 'in', 'amount.end:start': amount })
	]
];

describe.each(hands)('%s, stepped', (_, of, typed) => {
	const kept = keptView(of);

	test('is drawn with the lines, the amounts, the fields and the sum that the whole page has', () => {
		const stepped = steppedThrough(kept, typed, ['1/16', '1/8', '3/16', '1/4', '3/16']);
		const asWhole = whole(keptView(of), typed('3/16'));
		expect(asDrawn(stepped.scene)).toEqual(asDrawn(asWhole.scene));
		expect(labels(stepped.scene)).toEqual(labels(asWhole.scene));
		expect(stepped.typed).toEqual(asWhole.typed);
		expect(stepped.hand).toEqual(asWhole.hand);
		expect(stepped.spots).toEqual(asWhole.spots);
		expect(stepped.closeSpots).toEqual(asWhole.closeSpots);
		expect(stepped.told?.effect.sum).toEqual(asWhole.told?.effect.sum);
		expect(stepped.problems).toEqual(asWhole.problems);
		expect(stepped.close && asDrawn(stepped.close)).toEqual(asWhole.close && asDrawn(asWhole.close));
	});

	test('is stepped away to nothing, and on again from nothing', () => {
		const gone = steppedThrough(kept, typed, ['1/8', '1/16', '0']);
		expect(labels(gone.scene)).toEqual(labels(whole(keptView(of), typed('0')).scene));
		expect(gone.told?.effect.sum).toEqual(whole(kept, typed('0')).told?.effect.sum);
		const again = steppedThrough(kept, typed, ['0', '1/16', '1/8']);
		const asWhole = whole(keptView(of), typed('1/8'));
		expect(labels(again.scene)).toEqual(labels(asWhole.scene));
		expect(asDrawn(again.scene)).toEqual(asDrawn(asWhole.scene));
	});

	test('comes to the same page once it rests, whatever was stepped before', () => {
		steppedThrough(kept, typed, ['1/16', '1/8', '0', '1/16', '1/8']);
		expect(whole(kept, typed('1/8'))).toEqual(whole(keptView(of), typed('1/8')));
	});
});

function lineOf({ pieces }: Scene, edge: string): Path {
	const read = parsePathData(pieces.flatMap(({ edges }) => edges).find((one) => one.edge === edge)!.path);
	if ('problem' in read) throw new Error(read.problem);
	return read.path;
}

test('a pin goes through the line where it lies now, and its head stays as far from it', () => {
	const typed = (amount: string) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount });
	const kept = keptView(ground());
	const from = whole(kept, typed('1/16'));
	const to = steppedThrough(kept, typed, ['1/16', '1/8', '1/4', '1/2']);
	const reach = ({ at, head }: PinScene) => Math.hypot(head[0] - at[0], head[1] - at[1]);
	expect(to.scene.pins).toHaveLength(2);
	to.scene.pins.forEach((pin, i) => {
		const was = from.scene.pins[i]!;
		expect(reach(pin)).toBeCloseTo(reach(was), 6);
		const line = lineOf(to.scene, pin.feature);
		// Paths are written to hundredths of a px.
		expect(nearestOn(line, pin.at, 1e-3).distance).toBeLessThan(0.02);
		expect(nearestOn(line, was.at, 1e-3).distance).toBeGreaterThan(2);
	});
});

test('is no step where anything but an amount or the chosen place changed, or what is refused', () => {
	const kept = keptView(ground());
	const typed = { act: 'took-in', seam: 'side', 'amount.level:waist': '1/8' };
	const shown = whole(kept, typed);
	expect(steppedView(kept, { ...typed, here: 'level:hip' }, shown)?.typed.here).toBe('level:hip');
	const changes: readonly Typed[] = [
		{ sides: 'right' },
		{ side: 'left' },
		{ seam: 'shoulder' },
		{ along: 'all' },
		{ act: 'let-out' }
	];
	for (const change of changes) expect(steppedView(kept, { ...typed, ...change }, shown)).toBeUndefined();
	expect(steppedView(kept, { ...typed, 'amount.level:waist': '4' }, shown)).toBeUndefined();
	// As it came from the server: nothing of it was drawn here.
	const sent = JSON.parse(JSON.stringify(shown)) as FittingView;
	expect(steppedView(kept, typed, sent)).toBeUndefined();
});

test('where the table is not on the screen, only the close look is drawn in the frame of a step', () => {
	const typed = (amount: string) => ({ act: 'took-in', seam: 'side', 'amount.level:waist': amount });
	const kept = keptView(ground());
	const shown = whole(kept, typed('1/8'));
	const beside = steppedView(kept, typed('1/4'), shown, { table: false })!;
	expect(beside.scene).toBe(shown.scene);
	const asWhole = whole(keptView(ground()), typed('3/8'));
	expect(asDrawn(steppedView(kept, typed('3/8'), beside, { table: false })!.close!)).toEqual(asDrawn(asWhole.close!));
	// On the screen again, it is drawn on from where it was left.
	expect(asDrawn(steppedView(kept, typed('3/8'), beside)!.scene)).toEqual(asDrawn(asWhole.scene));
});
