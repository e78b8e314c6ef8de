import { describe, expect, it } from 'vitest';
import { carry, parseAlteration, type Draft } from '../../../../src/lib/engine/index.ts';
import { pointsAlong } from '../../../support/apart.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

/** Slashed across a curved armhole, so that the opening leaves two corners in it. */
const slashed = parseAlteration({
	id: 'one',
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/armhole', fraction: 0.5 },
			to: { edge: 'front/centre', end: 'start', offset: 250 },
			gapFrom: 12,
			gapTo: 0,
			keep: 'front/hem'
		}
	]
});

/** The sharpest turn of the armhole from one half millimetre to the next, degrees, by plain chords; its ends left out. */
function sharpest(draft: Draft): number {
	const path = draft.pieces[0].edges[1].path;
	const chords = pointsAlong(path, 400).filter(
		(point, i, all) => i === 0 || Math.hypot(point[0] - all[i - 1][0], point[1] - all[i - 1][1]) > 0
	);
	const spaced = chords.reduce<(readonly [number, number])[]>((kept, point) => {
		const last = kept[kept.length - 1];
		return !last || Math.hypot(point[0] - last[0], point[1] - last[1]) >= 0.5 ? [...kept, point] : kept;
	}, []);
	const headings = spaced.slice(1).map(([x, y], i) => Math.atan2(y - spaced[i][1], x - spaced[i][0]));
	const turns = headings
		.slice(1)
		.map((heading, i) => Math.abs(((heading - headings[i] + 3 * Math.PI) % (2 * Math.PI)) - Math.PI));
	return (Math.max(...turns) * 180) / Math.PI;
}

describe('what a carry remarks is asked as a query', () => {
	it('an edge bridged straight where it was slashed, with how far, and smoothing there settles it', () => {
		const { draft, queries } = carry(plainBodice(), [slashed]);
		const bridge = queries.find((query) => query.code === 'bridge' && query.where === 'front/armhole')!;
		expect(bridge.figure).toBeGreaterThan(10);
		expect(bridge.sentence).toMatch(/bridged straight/);
		expect(bridge.settle).toHaveLength(1);
		const [way] = bridge.settle;
		const again = carry(draft, [parseAlteration(JSON.parse(JSON.stringify(way)))]);
		expect(again.unplaced).toEqual([]);
		expect(again.queries.filter((query) => query.code === 'bridge')).toEqual([]);
		expect(sharpest(draft)).toBeGreaterThan(2.5);
		expect(sharpest(again.draft)).toBeLessThan(1.2);
	});

	// A part that turns about its far end opens by gap × cos of half the turn: 120 mm over 250 turn by 2·atan(60/250) = 27°.
	it('an opening that comes out more than 1/16″ short of what was asked, by how much', () => {
		const asked = (gapFrom: number) => ({
			...slashed,
			cuts: [
				{
					piece: 'front',
					from: { edge: 'front/side', fraction: 0.5 },
					to: { edge: 'front/centre', end: 'start', offset: 150 },
					gapFrom,
					gapTo: 0,
					keep: 'front/hem'
				}
			]
		});
		const short = (gapFrom: number) =>
			carry(plainBodice(), [parseAlteration(asked(gapFrom))]).queries.filter(({ code }) => code === 'gap-short');
		const [query] = short(120);
		expect(query.where).toBe('front');
		expect(query.figure).toBeCloseTo(120 * (1 - Math.cos(Math.atan(60 / 250))), 1);
		expect(short(30)).toEqual([]);
	});

	// Narrowest of three rules for the cloth beyond the centre line: a sewing-machine manual's 3/4 of the diameter, 26.25 of 35 mm;
	// half the diameter and a quarter inch, 23.85.
	it('cloth too narrow for its buttons, by how much', () => {
		const holes = (diameter: number) =>
			parseAlteration({
				id: 'holes',
				kind: 'mark',
				piece: 'front',
				buttonholes: {
					edge: 'front/centre',
					first: { end: 'finish', offset: 15 },
					last: { end: 'start', offset: 60 },
					count: 5,
					button: { diameter, thickness: 4 },
					direction: 'along'
				}
			});
		const narrow = (diameter: number) =>
			carry(plainBodice(), [holes(diameter)]).queries.filter(({ code }) => code === 'extension-short');
		expect(narrow(35)).toMatchObject([{ where: 'front/centre', figure: expect.closeTo(35 / 2 + 25.4 / 4 - 20, 6) }]);
		expect(narrow(25)).toEqual([]);
	});

	it('nothing is asked where nothing was remarked', () => {
		const { queries } = carry(plainBodice(), []);
		expect(queries.filter((query) => query.code === 'bridge')).toEqual([]);
	});
});
