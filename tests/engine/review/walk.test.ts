import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { walk } from '../../../src/lib/engine/review/walk.ts';
import { bodice, draftFile, rectangleFile, roundArmholeFile } from '../../support/drafts.ts';
import { plainBodice, plainBodiceFile } from '../../support/plain-bodice.ts';

const named = (draft: Parameters<typeof walk>[0], seam: string) => walk(draft).find((one) => one.seam === seam)!;

/** A U-shaped armhole with straight sides `depth` long, set into which a sleeve with a head of 270 mm gives `ease`. */
const withSleeve = (depth: number) => {
	const sleeve = {
		...rectangleFile({ id: 'sleeve', width: 270, height: 100, limb: true }),
		edges: [
			{ id: 'head', kind: 'seam', path: 'M 0 0 L 270 0' },
			{ id: 'front', kind: 'seam', path: 'M 270 0 L 270 100' },
			{ id: 'wrist', kind: 'open', path: 'M 270 100 L 0 100' },
			{ id: 'back', kind: 'seam', path: 'M 0 100 L 0 0' }
		]
	};
	const seam = { id: 'armhole', name: 'Armhole', a: [{ edge: 'panel/armhole' }], b: [{ edge: 'sleeve/head' }] };
	return parseDraft(draftFile([roundArmholeFile(depth), sleeve], [seam]));
};

describe('a seam walked', () => {
	it('has the stitched length of both sides and where its notches meet', () => {
		const side = named(plainBodice(), 'side');
		expect(side).toMatchObject({ a: 300, b: 300, ease: 0, difference: 0 });
		// 100 mm from the armhole on the front; on the back, drawn upwards, 200 from the hem.
		expect(side.notches).toHaveLength(1);
		expect(side.notches[0]).toMatchObject({ a: 'front/n1', b: 'back/n1' });
		for (const at of [side.notches[0].atA, side.notches[0].atB]) expect(at).toBeCloseTo(100, 9);
	});

	it('of two edges against one is as long as the two together, less the fullness meant', () => {
		const armhole = named(bodice, 'armhole');
		expect(armhole.difference).toBeCloseTo(armhole.b - armhole.a - 29.79, 9);
		expect(armhole.notches.map(({ a, b }) => [a, b])).toEqual([
			['back/back-notch', 'sleeve/back-notch'],
			['front/front-notch', 'sleeve/front-notch']
		]);
	});

	it('down a centre is as long as its own mirror image', () => {
		expect(named(plainBodice(), 'centre-back')).toEqual({
			seam: 'centre-back',
			a: 430,
			b: 430,
			ease: 0,
			difference: 0,
			notches: []
		});
	});

	it('leaves out the mouths of darts and the cloth turned in pleats', () => {
		const skirt = rectangleFile({
			id: 'skirt',
			width: 400,
			pleats: [{ id: 'pleat', edge: 'top', from: 100, to: 180, turned: 60 }],
			darts: [{ id: 'dart', edge: 'top', from: 250, to: 270, point: [260, 90] }]
		});
		const band = rectangleFile({ id: 'band', width: 320, height: 40, top: -60 });
		const seam = {
			id: 'waist',
			name: 'Waist seam',
			a: [{ edge: 'band/hem', reversed: true }],
			b: [{ edge: 'skirt/top' }]
		};
		expect(named(parseDraft(draftFile([skirt, band], [seam])), 'waist')).toMatchObject({ a: 320, b: 320 });
	});

	// Cap ease = sleeve head − armhole, never negative for a set-in sleeve. Lowering a U-shaped armhole by d lengthens
	// it by 2d: two straight sides, the round bottom the same. Elementary.
	it('has 20 mm less fullness in the sleeve head when the armhole is cut 10 mm deeper', () => {
		const [before, after] = [60, 70].map((depth) => named(withSleeve(depth), 'armhole'));
		expect(after.a - before.a).toBeCloseTo(20, 6);
		expect(after.difference - before.difference).toBeCloseTo(-20, 6);
		expect(before.difference).toBeGreaterThan(0);
		expect(named(withSleeve(75), 'armhole').difference).toBeLessThan(0);
	});

	// Tapered take-in: 10 mm over 200 along a straight edge makes it 200.2498 long, +0.2498 (Pythagoras).
	it('differs by what tapering one side adds to it', () => {
		const file = structuredClone(plainBodiceFile);
		file.pieces[0].edges[2].path = 'M 250 150 L 240 350';
		file.pieces[0].edges[3].path = 'M 240 350 L 0 350';
		file.pieces[0].edges[4].path = 'M 0 350 L 0 60';
		file.pieces[0].levels = [];
		file.pieces[1].edges[3].path = 'M 250 350 L 0 350';
		file.pieces[1].edges[2].path = 'M 250 20 L 250 350';
		file.pieces[1].edges[4].path = 'M 0 350 L 0 150';
		file.pieces[1].levels = [];
		file.pieces[1].notches = [];
		file.pieces[0].notches = [];
		expect(named(parseDraft(file), 'side').difference).toBeCloseTo(-0.2498, 4);
	});

	it('of one side of the wearer only is walked by itself', () => {
		const left = parseAlteration({
			id: 'one',
			kind: 'seam',
			seam: 'side',
			on: 'left',
			pins: [
				{ at: { end: 'start' }, a: 0 },
				{ at: { end: 'finish' }, a: -20 }
			]
		});
		const { draft } = carryAlterations(plainBodice(), [left]);
		expect(named(draft, 'side@right').difference).toBe(0);
		expect(Math.abs(named(draft, 'side@left').difference)).toBeGreaterThan(0.5);
		expect(named(draft, 'side@left').notches[0]).toMatchObject({ a: 'front@left/n1', b: 'back@left/n1' });
	});
});
