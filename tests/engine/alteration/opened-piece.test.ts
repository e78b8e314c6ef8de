/** A piece cut on the fold is opened when one side alone is altered; its left edges then run the other way than they are named. */
import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import type { Draft, Piece } from '../../../src/lib/engine/draft/types.ts';
import { pathLength, pointAt } from '../../../src/lib/engine/geometry/path.ts';
import type { Point } from '../../../src/lib/engine/geometry/types.ts';
import { expectFileRoundTrip, expectSound } from '../../support/alteration-law.ts';
import { plainBodiceFile } from '../../support/plain-bodice.ts';

/** The plain bodice with its back on the fold, x = 250. */
function onTheFold(): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile));
	file.pieces[1].cut = 'fold';
	file.pieces[1].edges[2].kind = 'fold';
	file.pieces[1].marks = [{ id: 'blade', kind: 'point', at: [170, 130] }];
	file.pieces[1].edges[0].path = 'M 90 0 C 130 4 170 6 210 0';
	file.seams.pop();
	return parseDraft(file);
}

const turnedOver = ([x, y]: Point): Point => [500 - x, y];
const back = (draft: Draft): Piece => draft.pieces.find(({ id }) => id === 'back')!;

/** The back with every feature of one side where its own line lies, as points. */
function sideOf(piece: Piece, side: 'left' | 'right'): Record<string, Point[]> {
	const suffix = `@${side}`;
	const found: Record<string, Point[]> = {};
	for (const edge of piece.edges.filter(({ id }) => id.endsWith(suffix)))
		found[edge.id.slice(0, -suffix.length)] = [0, 0.13, 0.5, 0.77, 1].map((share) =>
			pointAt(edge.path, pathLength(edge.path) * (side === 'left' ? 1 - share : share))
		);
	for (const one of [...piece.marks].filter(({ id }) => id.endsWith(suffix)))
		found[one.id.slice(0, -suffix.length)] = [one.at];
	for (const dart of piece.darts.filter(({ id }) => id.endsWith(suffix)))
		found[dart.id.slice(0, -suffix.length)] = [dart.point];
	for (const notch of piece.notches.filter(({ id }) => id.endsWith(suffix))) {
		const { path } = piece.edges.find(({ id }) => id === notch.edge)!;
		found[notch.id.slice(0, -suffix.length)] = [pointAt(path, notch.at)];
	}
	return found;
}

const square = (edge: string, offset: number, within: number) => ({
	from: { edge: `back/${edge}`, end: 'start', offset },
	in: within
});
const alterations: Record<string, object> = {
	edge: {
		kind: 'edge',
		edge: 'back/side',
		pins: [
			{ at: { end: 'start' }, move: 9 },
			{ at: { end: 'finish' }, move: 0 }
		]
	},
	seam: {
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: { end: 'start' }, b: 0 },
			{ at: { end: 'finish', offset: 60 }, b: 9 },
			{ at: { end: 'finish' }, b: 4 }
		]
	},
	dart: { kind: 'dart', edge: 'back/hem', at: { end: 'start', offset: 90 }, intake: 14, point: square('hem', 90, 140) },
	spread: {
		kind: 'spread',
		cuts: [
			{
				piece: 'back',
				from: { edge: 'back/side', end: 'start', offset: 80 },
				to: { edge: 'back/armhole', end: 'start', offset: 60 },
				gapFrom: 8,
				gapTo: 0,
				keep: 'back/hem'
			}
		]
	},
	'seam at its notch': {
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: { end: 'start' }, b: 0 },
			{ at: { notch: 'n1' }, b: 6 },
			{ at: { end: 'finish' }, b: 0 }
		]
	},
	'true-seam': { kind: 'true-seam', seam: 'shoulder', end: 'finish', take: 'b' },
	'smooth at an end': { kind: 'smooth', edge: 'back/armhole', end: 'start', reach: 40 },
	'mark set': { kind: 'mark', piece: 'back', set: { id: 'waist-point', kind: 'point', at: square('side', 90, 60) } },
	'mark moved': { kind: 'mark', piece: 'back', move: { id: 'blade', to: square('armhole', 40, 50) } },
	notch: { kind: 'mark', piece: 'back', notch: { id: 'n2', at: { edge: 'back/shoulder', end: 'start', offset: 30 } } },
	'notch moved': { kind: 'mark', piece: 'back', move: { id: 'n1', to: { edge: 'back/side', notch: 'n1', offset: 25 } } }
};

describe('an alteration of the left half of an opened piece', () => {
	it.each(Object.entries(alterations))('is the mirror image of the same on the right: %s', (_, fields) => {
		const carried = (on: 'left' | 'right') => {
			const result = carryAlterations(onTheFold(), [parseAlteration({ id: 'one', on, ...fields })]);
			expect(result.unplaced).toEqual([]);
			expectSound(result.draft);
			expectFileRoundTrip(result.draft);
			return back(result.draft);
		};
		const [left, right] = [carried('left'), carried('right')];
		for (const [side, other] of [
			['left', 'right'],
			['right', 'left']
		] as const) {
			const [found, wanted] = [sideOf(left, side), sideOf(right, other)];
			expect(Object.keys(found).sort()).toEqual(Object.keys(wanted).sort());
			for (const [id, points] of Object.entries(found))
				points.forEach((point, i) => {
					const [x, y] = turnedOver(wanted[id][i]);
					expect(Math.hypot(point[0] - x, point[1] - y), `${id} of the ${side}`).toBeLessThan(0.02);
				});
		}
	});

	it.each(Object.entries(alterations))('carried to both after it was opened, reaches both alike: %s', (_, fields) => {
		const opened = carryAlterations(onTheFold(), [
			parseAlteration({
				id: 'open',
				kind: 'mark',
				piece: 'back',
				on: 'left',
				set: { id: 'pin', kind: 'point', at: square('hem', 40, 30) }
			})
		]).draft;
		expect(back(opened).cut).toBe('single');
		const result = carryAlterations(opened, [parseAlteration({ id: 'one', ...fields })]);
		expect(result.unplaced).toEqual([]);
		const [left, right] = [sideOf(back(result.draft), 'left'), sideOf(back(result.draft), 'right')];
		for (const [id, points] of Object.entries(right)) {
			if (id === 'pin') continue;
			points.forEach((point, i) => {
				const [x, y] = turnedOver(left[id][i]);
				expect(Math.hypot(point[0] - x, point[1] - y), id).toBeLessThan(0.02);
			});
		}
	});
});
