import { describe, expect, it } from 'vitest';
import { carry, compare, parseAlteration } from '../../../../src/lib/engine/index.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

const side = (id: string, waist: number, more: object = {}) =>
	parseAlteration({
		id,
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: waist, b: waist },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		],
		...more
	});
const earlier = [
	{ name: 'fitting 1', how: 'over chemise and corset, pinned by M. Thorne', alterations: [side('one', 3.175)] }
];
const fitting = { name: 'fitting 2', how: 'over a shift' };
const disagreeing = (now: ReturnType<typeof side>, options: object = { earlier, fitting }) =>
	carry(plainBodice(), [now], options).queries.filter(({ code }) => code === 'fittings-disagree');

// The opposite way at the same place, with what was worn and who pinned at each: common practice, no source.
describe('two fittings that go opposite ways at one place', () => {
	it('are asked about, with what was worn and who pinned at each', () => {
		expect(disagreeing(side('two', -6.35))).toMatchObject([
			{
				severity: 'warning',
				where: 'side',
				figure: 6.35,
				sentence:
					'Side seam at the waist: fitting 1 out 1/8″ (over chemise and corset, pinned by M. Thorne), fitting 2 in 1/4″ (over a shift). Keep the later, halve it, or try again.'
			}
		]);
	});

	it('are not where they go the same way, at other places, on other halves of the wearer, or along other lines', () => {
		expect(disagreeing(side('two', 6.35))).toEqual([]);
		expect(disagreeing(side('two', 0))).toEqual([]);
		const elsewhere = [{ at: { fraction: 0.25 }, a: -6, b: -6 }];
		expect(disagreeing(side('two', 0, { pins: elsewhere }))).toEqual([]);
		const left = [{ ...earlier[0], alterations: [side('one', 3.175, { on: 'left' })] }];
		expect(disagreeing(side('two', -6, { on: 'right' }), { earlier: left, fitting })).toEqual([]);
		expect(disagreeing(side('two', -6, { on: 'left' }), { earlier: left, fitting })).toHaveLength(1);
		const neck = parseAlteration({
			id: 'neck',
			kind: 'edge',
			edge: 'front/neck',
			pins: [{ at: { end: 'start' }, move: -6 }]
		});
		expect(disagreeing(neck)).toEqual([]);
	});

	it('tell a seam that was moved forward from one that is moved back', () => {
		const forward = [{ at: { level: 'waist' }, a: 6, b: -6 }];
		const back = [{ at: { level: 'waist' }, a: -3, b: 3 }];
		const before = [{ ...earlier[0], alterations: [side('one', 0, { pins: forward })] }];
		expect(disagreeing(side('two', 0, { pins: back }), { earlier: before, fitting })).toHaveLength(1);
		expect(disagreeing(side('two', 0, { pins: forward }), { earlier: before, fitting })).toEqual([]);
	});

	it('are asked about an edge too', () => {
		const neck = (id: string, move: number) =>
			parseAlteration({ id, kind: 'edge', edge: 'front/neck', pins: [{ at: { fraction: 0.5 }, move }] });
		const before = [{ ...earlier[0], alterations: [neck('one', -6.35)] }];
		const [query] = disagreeing(neck('two', 3.175), { earlier: before, fitting });
		expect(query).toMatchObject({ where: 'front/neck', figure: 3.175 });
		expect(query.sentence).toContain('half way');
	});

	it('are settled by halving: half of what was moved now is moved back', () => {
		const now = side('two', -6.35);
		const [query] = disagreeing(now);
		const half = parseAlteration(JSON.parse(JSON.stringify(query.settle[0])));
		const { draft, unplaced, queries } = carry(plainBodice(), [now, half], { earlier, fitting });
		expect(unplaced).toEqual([]);
		expect(queries.map(({ code }) => code)).not.toContain('fittings-disagree');
		const edge = compare(plainBodice(), draft).edges.find((one) => one.edge === 'front/side')!;
		expect(edge.greatest.move).toBeCloseTo(-6.35 / 2, 1);
	});

	it('are not asked about where no fitting is carried', () => {
		expect(disagreeing(side('two', -6.35), {})).toEqual([]);
	});
});
