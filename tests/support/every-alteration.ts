/** Alterations of every kind for a draft, on every edge, seam and dart that it has: moderate ones and ones that ask too much. */
import type { Draft, Piece } from '../../src/lib/engine/draft/types.ts';

const amounts = [6, -6, 40, -40, 400, -400];

/** As files, each with an id of its own; `more` is put with them. */
export function everyAlteration(draft: Draft, more: readonly object[] = []): object[] {
	const all = [
		...more,
		...draft.seams.flatMap((seam) => onSeam(seam.id, seam.b === 'mirror')),
		...draft.pieces.flatMap((piece) => [...piece.edges.flatMap(({ id }) => onEdge(piece, id)), ...onPiece(piece)])
	];
	return all.map((alteration, i) => ({ id: `alteration-${i + 1}`, ...alteration }));
}

function onSeam(seam: string, mirror: boolean): object[] {
	const moved = (a: number, b: number) => (mirror ? { a } : { a, b });
	return [
		...amounts.map((by) => ({ kind: 'seam', seam, pins: [{ at: { fraction: 0.46 }, ...moved(by, by) }] })),
		...[8, -8].map((by) => ({
			kind: 'seam',
			seam,
			on: 'left',
			pins: [
				{ at: { end: 'start' }, ...moved(0, 0) },
				{ at: { fraction: 0.4 }, ...moved(by, -by) },
				{ at: { end: 'finish' }, ...moved(by / 2, by) }
			]
		})),
		...['a', 'b', 'half'].map((take) => ({ kind: 'true-seam', seam, end: 'finish', take })),
		{ kind: 'true-seam', seam, at: { fraction: 0.46 }, take: 'half' }
	];
}

function onEdge(piece: Piece, id: string): object[] {
	const edge = `${piece.id}/${id}`;
	const others = piece.edges.filter((one) => one.id !== id).map((one) => `${piece.id}/${one.id}`);
	return [
		...amounts.map((move) => ({ kind: 'edge', edge, pins: [{ at: { fraction: 0.46 }, move }] })),
		...[12, -12].map((move) => ({
			kind: 'edge',
			edge,
			on: 'right',
			pins: [
				{ at: { end: 'start' }, move: 0 },
				{ at: { fraction: 0.46 }, move },
				{ at: { end: 'finish' }, move: 0 }
			]
		})),
		...[0.3, 0.46].map((fraction) => ({
			kind: 'dart',
			edge,
			at: { fraction },
			intake: 15,
			point: { from: { edge, fraction }, in: 80 }
		})),
		...piece.darts.flatMap((dart) =>
			[1, 0.4].map((share) => ({
				kind: 'dart-swing',
				dart: `${piece.id}/${dart.id}`,
				edge,
				at: { fraction: 0.37 },
				share
			}))
		),
		...others.slice(0, 2).flatMap((other, i) =>
			[
				[10, 10],
				[0, 10],
				[-10, -10],
				[0, -10]
			].map(([gapFrom, gapTo]) => ({
				kind: 'spread',
				cuts: [
					{
						piece: piece.id,
						from: { edge, fraction: 0.45 },
						to: { edge: other, fraction: 0.6 },
						gapFrom,
						gapTo,
						keep: others[(i + 1) % others.length]
					}
				]
			}))
		),
		...['start', 'finish'].map((end) => ({ kind: 'smooth', edge, end, reach: 40 })),
		{ kind: 'mark', piece: piece.id, notch: { id: 'new', at: { edge, fraction: 0.46 } } },
		{
			kind: 'mark',
			piece: piece.id,
			set: { id: 'new', kind: 'point', at: { from: { edge, fraction: 0.46 }, in: 30 } }
		},
		bustSpread(piece, id, 12),
		bustSpread(piece, id, -12),
		bustSpread(piece, id, 400)
	];
}

function bustSpread(piece: Piece, id: string, gap: number): object {
	const start = piece.edges.findIndex((one) => one.id === id);
	const on = (steps: number, fraction: number) => ({
		edge: `${piece.id}/${piece.edges[(start + steps) % piece.edges.length].id}`,
		fraction
	});
	return {
		kind: 'bust-spread',
		piece: piece.id,
		point: { mark: 'bust-point', toward: on(0, 0.46), short: 0 },
		hinge: on(0, 0.3),
		dart: on(1, 0.4),
		base: on(2, 0.46),
		gap
	};
}

function onPiece(piece: Piece): object[] {
	const [first, second] = piece.edges.map((edge) => `${piece.id}/${edge.id}`);
	return [
		...[4, 60, 400].map((intake) => ({
			kind: 'fold-dart',
			piece: piece.id,
			ends: [
				{ from: { edge: first, fraction: 0.46 }, in: 20 },
				{ from: { edge: second, fraction: 0.46 }, in: 60 }
			],
			widest: { at: 0.5, intake }
		})),
		...piece.darts.flatMap(({ id }) => [
			...[0, 12, 70, 400].map((intake) => ({ kind: 'dart-set', dart: `${piece.id}/${id}`, intake })),
			...[10, 120, 1000].map((inward) => ({
				kind: 'dart-set',
				dart: `${piece.id}/${id}`,
				point: { from: { edge: second, fraction: 0.46 }, in: inward }
			})),
			...[10, 80].map((reach) => ({ kind: 'true-dart', dart: `${piece.id}/${id}`, reach }))
		])
	];
}
