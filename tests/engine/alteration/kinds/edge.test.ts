import { describe, expect, it } from 'vitest';
import { edgeLength } from '../../../../src/lib/engine/draft/length.ts';
import { pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { garmentRounds } from '../../../../src/lib/engine/draft/round.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { carryAlterations } from '../../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { carried, notCarried } from '../../../support/alteration-law.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

const evenly = (edge: string, move: number) => ({
	id: 'one',
	kind: 'edge',
	edge,
	pins: [{ at: { fraction: 0.5 }, move }]
});

/** A piece with a U-shaped armhole: straight plumb sides 40 apart, a round bottom; the shoulder line runs level above. */
function withRoundArmhole() {
	const k = 0.5522847498 * 20;
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'U-shaped armhole',
		pieces: [
			{
				id: 'body',
				name: 'Body',
				cut: 'single',
				edges: [
					{ id: 'left', name: 'Left top', kind: 'open', path: 'M 0 0 L 80 0' },
					{
						id: 'armhole',
						name: 'Armhole',
						kind: 'open',
						path: `M 80 0 L 80 60 C 80 ${60 + k} ${100 - k} 80 100 80 C ${100 + k} 80 120 ${60 + k} 120 60 L 120 0`
					},
					{ id: 'right', name: 'Right top', kind: 'open', path: 'M 120 0 L 200 0' },
					{ id: 'rest', name: 'Rest', kind: 'open', path: 'M 200 0 L 200 300 L 0 300 L 0 0' }
				]
			}
		]
	});
}

describe('an edge chalked anew', () => {
	it('added evenly at an open centre front widens the round by four times that, on no other edge than its neighbours', () => {
		const draft = plainBodice();
		const { draft: after } = carried(draft, evenly('front/centre', 10));
		const round = (one: typeof draft) => garmentRounds(one).find(({ level }) => level === 'waist')!.round;
		expect(round(after) - round(draft)).toBeCloseTo(20, 6);
		expect(after.pieces[0].edges[2]).toBe(draft.pieces[0].edges[2]);
		expect(pieceArea(after, 'front') - pieceArea(draft, 'front')).toBeCloseTo(3900, 3);
	});

	// Lowering an armhole with straight plumb sides by d makes it 2d longer, whatever the shape of its bottom: elementary; cap ease
	// is the sleeve head less the armhole (pattern teaching pages; common practice), so it falls by as much.
	it('lowering a U-shaped armhole by 10 mm makes it 20 mm longer', () => {
		const file = JSON.parse(JSON.stringify(plainBodiceFile));
		const body = (id: string, path: string) => ({ id, name: id, kind: 'open', path });
		file.pieces = [
			{
				id: 'body',
				name: 'Body',
				cut: 'single',
				edges: [
					body('top', 'M 0 0 L 80 0'),
					body('front-armhole', 'M 80 0 L 80 60'),
					body('under-arm', 'M 80 60 L 120 60'),
					body('back-armhole', 'M 120 60 L 120 0'),
					body('rest', 'M 120 0 L 200 0 L 200 300 L 0 300 L 0 0')
				]
			}
		];
		file.seams = [];
		const draft = parseDraft(file);
		const armhole = (one: typeof draft) =>
			['front-armhole', 'under-arm', 'back-armhole'].reduce((sum, id) => sum + edgeLength(one, `body/${id}`), 0);
		const { draft: after } = carried(draft, evenly('body/under-arm', -10));
		expect(armhole(after) - armhole(draft)).toBeCloseTo(20, 9);
	});

	it('refuses a line that would turn back on itself, and the offer that comes with it works', () => {
		const draft = withRoundArmhole();
		// Outward of a hollow is into its round of 20 mm radius: 25 cannot be.
		const waiting = notCarried(draft, evenly('body/armhole', 25));
		expect(waiting.code).toBe('too-tight');
		expect(waiting.settle).toHaveLength(1);
		const offered = waiting.settle[0] as unknown as { pins: { move: number }[] };
		expect(offered.pins[0].move).toBeGreaterThan(12.7);
		expect(offered.pins[0].move).toBeLessThan(20);
		expect(
			carryAlterations(draft, [parseAlteration(JSON.parse(JSON.stringify(waiting.settle[0])))]).applied
		).toHaveLength(1);
	});

	it('refuses a line that no longer meets its neighbour, and keeping 0 at that end settles it', () => {
		const file = JSON.parse(JSON.stringify(plainBodiceFile));
		// An armhole cut in two where it runs on smoothly: moving one half evenly leaves a step.
		const front = file.pieces[0];
		front.edges.splice(
			1,
			1,
			{ id: 'armhole-top', name: 'Upper armhole', kind: 'open', path: 'M 160 0 C 155 30 160 75 180 110' },
			{ id: 'armhole', name: 'Armhole', kind: 'open', path: 'M 180 110 C 200 145 225 145 250 150' }
		);
		const draft = parseDraft(file);
		const waiting = notCarried(draft, evenly('front/armhole-top', -5));
		expect(waiting.code).toBe('no-join');
		expect(waiting.settle).toHaveLength(1);
		expect(carryAlterations(draft, [parseAlteration(JSON.parse(JSON.stringify(waiting.settle[0])))]).unplaced).toEqual(
			[]
		);
	});

	it('a fold edge moves evenly or not at all', () => {
		const file = JSON.parse(JSON.stringify(plainBodiceFile));
		file.pieces[1].cut = 'fold';
		file.pieces[1].edges[2].kind = 'fold';
		file.seams.pop();
		const draft = parseDraft(file);
		expect(carried(draft, evenly('back/centre', 5)).draft.pieces[1].edges[2].path).toHaveLength(1);
		const uneven = {
			id: 'one',
			kind: 'edge',
			edge: 'back/centre',
			pins: [
				{ at: { end: 'start' }, move: 0 },
				{ at: { end: 'finish' }, move: 5 }
			]
		};
		expect(notCarried(draft, uneven).code).toBe('fold-uneven');
	});
});
