import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { bodice, draftFile } from '../../../support/drafts.ts';
import { asked, settled } from '../altered.ts';

const tilt = (degrees: number): number => 200 * Math.tan((degrees * Math.PI) / 180);

/** Two panels sewn at the side, their hems falling away from the seam by so many degrees each. */
const hems = (front: number, back: number, hem: object = {}) =>
	parseDraft(
		draftFile(
			[
				{
					id: 'front',
					name: 'Front',
					cut: 'pair',
					edges: [
						{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
						{ id: 'side', kind: 'seam', path: 'M 200 0 L 200 300' },
						{ id: 'hem', name: 'Hem', kind: 'open', path: `M 200 300 L 0 ${300 + tilt(front)}`, ...hem },
						{ id: 'centre', kind: 'open', path: `M 0 ${300 + tilt(front)} L 0 0` }
					]
				},
				{
					id: 'back',
					name: 'Back',
					cut: 'pair',
					edges: [
						{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
						{ id: 'centre', kind: 'open', path: `M 200 0 L 200 ${300 + tilt(back)}` },
						{ id: 'hem', name: 'Hem', kind: 'open', path: `M 200 ${300 + tilt(back)} L 0 300`, ...hem },
						{ id: 'side', kind: 'seam', path: 'M 0 300 L 0 0' }
					]
				}
			],
			[{ id: 'side', name: 'Side seam', a: [{ edge: 'front/side' }], b: [{ edge: 'back/side', reversed: true }] }]
		)
	);

describe('the edges at the end of a seam', () => {
	it('run on smoothly if they make one straight angle together, however each of them slants', () => {
		expect(asked('seam-corner', hems(0, 0))).toEqual([]);
		expect(asked('seam-corner', hems(10, -10))).toEqual([]);
	});

	it('are asked about beyond 8°, at an armhole beyond 12°', () => {
		expect(asked('seam-corner', hems(4, 3.9))).toEqual([]);
		const [query] = asked('seam-corner', hems(5, 5));
		expect(query).toMatchObject({ severity: 'note', where: 'front/hem' });
		expect(query.figure).toBeCloseTo(10, 9);
		expect(query.sentence).toBe(
			'The front’s hem does not run on smoothly into the back’s hem: sewn, there is a corner of 10°.'
		);
		const armhole = { name: 'Armhole' };
		expect(asked('seam-corner', hems(5, 5, armhole))).toEqual([]);
		expect(asked('seam-corner', hems(-6.5, -6, armhole))).toHaveLength(1);
	});

	it('are not asked about where they were as sharp before', () => {
		const before = hems(5, 5);
		expect(asked('seam-corner', hems(5, 5), { before })).toEqual([]);
		expect(asked('seam-corner', hems(5, 5), { base: before })).toEqual([]);
		expect(asked('seam-corner', hems(6, 6), { before })).toHaveLength(1);
	});

	it('are not asked about where they make a corner on purpose', () => {
		expect(asked('seam-corner', hems(22, 22))).toHaveLength(1);
		expect(asked('seam-corner', hems(23, 23))).toEqual([]);
	});

	it('of one edge sewn to its own other end are said to be its two ends', () => {
		// A sleeve that narrows by 50 in 350 on either side: its wrist is 2 · atan(1/7) = 16.26° off when it is sewn.
		const [query] = asked('seam-corner', bodice).filter(({ where }) => where === 'sleeve/wrist');
		expect(query.figure).toBeCloseTo(16.26, 2);
		expect(query.sentence).toBe(
			'The two ends of the sleeve’s wrist do not run on smoothly into each other: sewn, there is a corner of 16°.'
		);
	});

	it('are settled by smoothing them over', () => {
		for (const draft of [hems(5, 6), hems(-6, -6)]) {
			const [query] = asked('seam-corner', draft);
			expect(asked('seam-corner', settled(draft, query))).toEqual([]);
		}
	});

	it('are not asked about where one is sewn and the other open', () => {
		expect(asked('seam-corner', hems(20, 20, { kind: 'seam' }))).toEqual([]);
	});
});

describe('an edge at a centre line', () => {
	const half = (degrees: number, edge: 'fold' | 'seam') =>
		parseDraft(
			draftFile(
				[
					{
						id: 'back',
						name: 'Back',
						cut: edge === 'fold' ? 'fold' : 'pair',
						edges: [
							{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
							{ id: 'side', kind: 'open', path: `M 200 0 L 200 ${300 + tilt(degrees)}` },
							{ id: 'hem', name: 'Hem', kind: 'open', path: `M 200 ${300 + tilt(degrees)} L 0 300` },
							{ id: 'centre', kind: edge, path: 'M 0 300 L 0 0' }
						]
					}
				],
				edge === 'fold' ? [] : [{ id: 'centre-back', a: [{ edge: 'back/centre' }], b: 'mirror' }]
			)
		);

	it('stands square to a fold and to a centre seam, or is asked about', () => {
		for (const kind of ['fold', 'seam'] as const) {
			expect(asked('seam-corner', half(3.9, kind))).toEqual([]);
			const [query] = asked('seam-corner', half(4.5, kind));
			expect(query.figure).toBeCloseTo(9, 9);
			expect(query.sentence).toBe(
				'The back’s hem does not meet its centre line square: sewn, there is a corner of 9°.'
			);
			expect(asked('seam-corner', settled(half(4.5, kind), query))).toEqual([]);
		}
	});
});
