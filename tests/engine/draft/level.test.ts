import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/lib/engine/geometry/types.ts';
import { pointOn } from '../../../src/lib/engine/geometry/segment.ts';
import { outlineOf } from '../../../src/lib/engine/draft/outline.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';
import { edgeOf } from '../../../src/lib/engine/draft/find.ts';
import { levelOnEdge, levelSpan, levelSpans, levelWidth } from '../../../src/lib/engine/draft/level.ts';
import type { Piece } from '../../../src/lib/engine/draft/types.ts';
import { bodice, pieceOf, rectangleFile } from '../../support/drafts.ts';

function withLine(line: readonly (readonly [number, number])[], fields: Readonly<Record<string, unknown>> = {}): Piece {
	return pieceOf(rectangleFile({ levels: [{ level: 'waist', line }], ...fields }));
}

describe('the width at a drawn level', () => {
	it.each([
		[
			'drawn from side to side',
			[
				[0, 100],
				[200, 100]
			]
		],
		[
			'drawn in part: it runs on to the outline',
			[
				[80, 100],
				[90, 100]
			]
		],
		[
			'drawn beyond the outline',
			[
				[-30, 100],
				[260, 100]
			]
		],
		[
			'drawn backwards',
			[
				[150, 100],
				[20, 100]
			]
		],
		[
			'drawn through a bend that is none',
			[
				[50, 100],
				[80, 100],
				[120, 100]
			]
		],
		[
			'along the hem',
			[
				[20, 300],
				[100, 300]
			]
		]
	] as const)('is that of the rectangle, %s', (_, line) => {
		expect(levelWidth(withLine(line), 'waist')).toBeCloseTo(200, 9);
	});

	it('of a slanting line is its length inside', () => {
		expect(
			levelWidth(
				withLine([
					[0, 100],
					[4, 103]
				]),
				'waist'
			)
		).toBeCloseTo(250, 9);
	});

	it('of a bent line is its length along the bend', () => {
		expect(
			levelWidth(
				withLine([
					[20, 100],
					[100, 100],
					[140, 130]
				]),
				'waist'
			)
		).toBeCloseTo(100 + 125, 9);
	});

	it('leaves out the darts that it crosses, and a fold dart at its widest', () => {
		const piece = withLine(
			[
				[0, 240],
				[200, 240]
			],
			{
				darts: [{ id: 'd', edge: 'hem', from: 90, to: 110, point: [100, 180] }],
				foldDarts: [
					{
						id: 'f',
						ends: [
							[40, 200],
							[40, 280]
						],
						widest: { at: 0.5, intake: 14 }
					}
				]
			}
		);
		expect(levelWidth(piece, 'waist')).toBeCloseTo(200 - 10 - 14, 9);
	});

	it('takes the width of a shaped dart where the level is', () => {
		const piece = withLine(
			[
				[0, 240],
				[200, 240]
			],
			{
				darts: [
					{
						id: 'd',
						edge: 'hem',
						from: 98,
						to: 102,
						point: [100, 180],
						widths: [{ at: 0.5, left: 9, right: 12 }]
					}
				]
			}
		);
		expect(levelWidth(piece, 'waist')).toBeCloseTo(200 - 9 - 12, 9);
	});

	it('leaves out the lap of the edge that it ends on; a lacing gap counts in', () => {
		const edges = (lap: number) =>
			rectangleFile().edges.map((edge) => (edge.id === 'centre' ? { ...edge, kind: 'open', lap } : edge));
		expect(
			levelWidth(
				withLine(
					[
						[50, 100],
						[90, 100]
					],
					{ edges: edges(20) }
				),
				'waist'
			)
		).toBeCloseTo(180, 9);
		expect(
			levelWidth(
				withLine(
					[
						[50, 100],
						[90, 100]
					],
					{ edges: edges(-12) }
				),
				'waist'
			)
		).toBeCloseTo(212, 9);
	});

	it('finds the lap also at the very corner', () => {
		const edges = rectangleFile().edges.map((edge) =>
			edge.id === 'centre' ? { ...edge, kind: 'open', lap: 20 } : edge
		);
		expect(
			levelWidth(
				withLine(
					[
						[0, 300],
						[200, 100]
					],
					{ edges }
				),
				'waist'
			)
		).toBeCloseTo(200 * Math.SQRT2 - 20, 9);
	});

	it('on a piece with a deep bay is the stretch that holds the drawn line', () => {
		// A U on its side: two arms 100 wide, 60 apart.
		const piece = pieceOf({
			id: 'u',
			cut: 'single',
			edges: [
				{ id: 'outer', kind: 'open', path: 'M 0 0 L 100 0 L 100 200 L 160 200 L 160 0 L 260 0 L 260 300' },
				{ id: 'rest', kind: 'open', path: 'M 260 300 L 0 300 L 0 0' }
			],
			levels: [
				{
					level: 'one-arm',
					line: [
						[170, 50],
						[180, 50]
					]
				},
				{
					level: 'both-arms',
					line: [
						[20, 60],
						[30, 60]
					]
				},
				{
					level: 'both-arms',
					line: [
						[200, 60],
						[230, 60]
					]
				}
			]
		});
		expect(levelWidth(piece, 'one-arm')).toBeCloseTo(100, 9);
		expect(levelSpan(piece, piece.levels[0])!.points).toEqual([
			[160, 50],
			[260, 50]
		]);
		expect(levelWidth(piece, 'both-arms')).toBeCloseTo(200, 9);
		expect(levelSpans(piece, 'both-arms')).toHaveLength(2);
	});

	it('is undefined where the piece has no such level, or the line misses the piece', () => {
		expect(levelWidth(bodice.pieces[0], 'hip')).toBeUndefined();
		expect(
			levelWidth(
				withLine([
					[0, 900],
					[200, 900]
				]),
				'waist'
			)
		).toBeUndefined();
	});

	it.each([
		[20, 60],
		[120, 160],
		[60, 140]
	])('of a line drawn from %d to %d that grazes the outline from inside is the whole width', (from, to) => {
		const piece = pieceOf({
			id: 'p',
			cut: 'single',
			edges: [
				{ id: 'top', kind: 'open', path: 'M 0 0 L 100 50 L 200 0' },
				{ id: 'rest', kind: 'open', path: 'M 200 0 L 200 200 L 0 200 L 0 0' }
			],
			levels: [
				{
					level: 'chest',
					line: [
						[from, 50],
						[to, 50]
					]
				}
			]
		});
		expect(levelWidth(piece, 'chest')).toBeCloseTo(200, 9);
	});

	it('through the centre of a star-shaped piece is the sum of the two radii there', () => {
		// The random outlines are met once by every ray from [0, 0]: the radius is found by bisection on the polar angle.
		const radius = (piece: Piece, angle: number): number => {
			const ahead = ([x, y]: Point) =>
				Math.atan2(Math.sin(Math.atan2(y, x) - angle), Math.cos(Math.atan2(y, x) - angle));
			for (const segment of outlineOf(piece)) {
				const [start, end] = [ahead(segment.from), ahead(segment.to)];
				if (start > 0 || end < 0 || end - start > Math.PI) continue;
				let [low, high] = [0, 1];
				for (let i = 0; i < 60; i++) {
					const middle = (low + high) / 2;
					if (ahead(pointOn(segment, middle)) < 0) low = middle;
					else high = middle;
				}
				return Math.hypot(...pointOn(segment, low));
			}
			throw new Error('no segment is met');
		};
		fc.assert(
			fc.property(arbitraryDraft, (draft) => {
				for (const { id, cut, edges, levels, ...piece } of draft.pieces) {
					if (!/^piece-\d$/.test(id) || cut !== 'pair') continue;
					const plain = {
						...piece,
						id,
						cut,
						levels,
						darts: [],
						foldDarts: [],
						edges: edges.map((e) => ({ ...e, lap: 0 }))
					};
					const [level] = levels;
					const [start, end] = 'line' in level ? level.line : [];
					const angle = Math.atan2(end![1] - start![1], end![0] - start![0]);
					const expected = radius(plain, angle) + radius(plain, angle + Math.PI);
					expect(levelWidth(plain, 'waist')).toBeCloseTo(expected, 6);
				}
			}),
			{ seed: 20_009, numRuns: 100 }
		);
	});
});

describe('a level cut in parts', () => {
	it('by an opening counts the cloth between the parts once', () => {
		const piece = pieceOf(
			rectangleFile({
				levels: [
					{
						level: 'waist',
						line: [
							[110, 100],
							[180, 100]
						]
					},
					{
						level: 'waist',
						line: [
							[20, 100],
							[95, 100]
						]
					}
				]
			})
		);
		expect(levelWidth(piece, 'waist')).toBeCloseTo(200, 9);
		expect(levelSpan(piece, piece.levels[0])).toBe(levelSpan(piece, piece.levels[1]));
	});

	it('that were turned apart is measured along both and across the gap', () => {
		const piece = pieceOf(
			rectangleFile({
				levels: [
					{
						level: 'waist',
						line: [
							[20, 100],
							[100, 100]
						]
					},
					{
						level: 'waist',
						line: [
							[120, 105],
							[160, 115]
						]
					}
				]
			})
		);
		const slope = Math.hypot(40, 10) / 40;
		expect(levelWidth(piece, 'waist')).toBeCloseTo(100 + Math.hypot(20, 5) + 80 * slope, 9);
	});
});

describe('a level on an edge', () => {
	it('is as wide as the edge is sewn, less the laps beside it', () => {
		expect(levelWidth(bodice.pieces[0], 'waist')).toBeCloseTo(195 - 25, 9);
		expect(levelWidth(bodice.pieces[1], 'waist')).toBeCloseTo(225 - 45 - 20, 9);
	});

	it('that goes on along the next edge leaves out the laps at its two ends only', () => {
		const piece = pieceOf(
			rectangleFile({
				edges: [
					{ id: 'waist', kind: 'open', lap: 7, path: 'M 0 0 L 120 0' },
					{ id: 'waist-front', kind: 'open', path: 'M 120 0 L 200 0' },
					{ id: 'front-edge', kind: 'open', lap: 20, path: 'M 200 0 L 200 300' },
					{ id: 'rest', kind: 'open', path: 'M 200 300 L 0 300 L 0 0' }
				],
				levels: [
					{ level: 'waist', edge: 'waist' },
					{ level: 'waist', edge: 'waist-front' }
				]
			})
		);
		expect(levelWidth(piece, 'waist')).toBeCloseTo(200 - 20, 9);
	});
});

describe('where a level meets an edge', () => {
	const piece = pieceOf(
		rectangleFile({
			levels: [
				{
					level: 'waist',
					line: [
						[80, 100],
						[90, 100]
					]
				},
				{ level: 'hip', edge: 'hem' },
				{
					level: 'slant',
					line: [
						[0, 0],
						[100, 150]
					]
				}
			]
		})
	);
	const on = (edge: string, level: string) => levelOnEdge(piece, edgeOf(piece, edge)!, level);

	it('is counted from the start of the edge', () => {
		expect(on('side', 'waist')).toEqual([expect.closeTo(100, 9)]);
		expect(on('centre', 'waist')).toEqual([expect.closeTo(200, 9)]);
		expect(on('top', 'waist')).toEqual([]);
	});

	it('is the shared corner where the level lies on a neighbour, and nowhere on that edge itself', () => {
		expect(on('side', 'hip')).toEqual([300]);
		expect(on('centre', 'hip')).toEqual([0]);
		expect(on('top', 'hip')).toEqual([]);
		expect(on('hem', 'hip')).toEqual([]);
	});

	it('is on both edges at a corner', () => {
		expect(on('top', 'slant')).toEqual([0]);
		expect(on('centre', 'slant')).toEqual([300]);
		expect(on('side', 'slant')).toEqual([300]);
		expect(on('hem', 'slant')).toEqual([0]);
	});

	it('is twice on an edge that bows across it', () => {
		const bowed = pieceOf({
			id: 'p',
			cut: 'single',
			edges: [
				{ id: 'head', kind: 'open', path: 'M 0 100 L 50 0 L 150 0 L 200 100' },
				{ id: 'base', kind: 'open', path: 'M 200 100 L 0 100' }
			],
			levels: [
				{
					level: 'cap',
					line: [
						[90, 50],
						[110, 50]
					]
				}
			]
		});
		const quarter = Math.hypot(25, 50);
		expect(levelOnEdge(bowed, edgeOf(bowed, 'head')!, 'cap')).toEqual([
			expect.closeTo(quarter, 9),
			expect.closeTo(2 * quarter + 100 + quarter, 9)
		]);
	});
});
