import fc from 'fast-check';
import type { Path, Point } from '../../src/lib/engine/geometry/types.ts';
import type { Draft, Edge, Level, Notch, Piece, RunEdge, Seam } from '../../src/lib/engine/draft/types.ts';
import { compose, reflection, rotation, translation } from '../../src/lib/engine/geometry/motion.ts';
import { pathLength, pointAt } from '../../src/lib/engine/geometry/path.ts';
import { lerp, midpoint } from '../../src/lib/engine/geometry/point.ts';
import { movePiece } from '../../src/lib/engine/draft/turn-piece.ts';
import { number } from './arbitrary-number.ts';

/*
 * Random drafts that are valid by construction. Each outline is a star seen from its own centre: corners at rising angles less
 * than half a turn apart, and between two of them lines and curves whose control points keep to the angle between the two,
 * in order. A Bézier meets any line no more often than its control polygon does, so every ray from the centre meets the outline
 * once: it cannot cross itself. Darts point at the centre and stay in the angle of their edge, so no two meet.
 */

interface EdgeShape {
	readonly kind: 'line' | 'curve' | 'two';
	/** Radii of control points and middle corner against those of the straight growth between the corners. */
	readonly bulges: readonly [number, number, number];
}

interface Shape {
	readonly corners: readonly { readonly jitter: number; readonly radius: number; readonly edge: EdgeShape }[];
	readonly notch: number;
	readonly dart: { readonly edge: number; readonly share: number; readonly reach: number } | null;
	readonly foldDart: { readonly angle: number; readonly intake: number } | null;
	readonly pleat: boolean;
	readonly levelAngle: number;
	readonly levelOnEdge: boolean;
	readonly lap: number;
}

const edgeShape: fc.Arbitrary<EdgeShape> = fc.record({
	kind: fc.constantFrom('line', 'curve', 'curve', 'two'),
	bulges: fc.tuple(number(0.85, 1.2), number(0.85, 1.2), number(0.85, 1.2))
});

function shapeWith(least: number, most: number): fc.Arbitrary<Shape> {
	return fc.record({
		corners: fc.array(fc.record({ jitter: number(-0.25, 0.25), radius: number(100, 220), edge: edgeShape }), {
			minLength: least,
			maxLength: most
		}),
		notch: number(0.1, 0.35),
		dart: fc.option(fc.record({ edge: fc.nat(most), share: number(0.03, 0.12), reach: number(0.3, 0.6) })),
		foldDart: fc.option(fc.record({ angle: number(0, Math.PI), intake: number(1, 6) })),
		pleat: fc.boolean(),
		levelAngle: number(-0.3, 0.3),
		levelOnEdge: fc.boolean(),
		lap: fc.constantFrom(0, 0, 15, -10)
	});
}

const polar = (angle: number, radius: number): Point => [radius * Math.cos(angle) + 0, radius * Math.sin(angle) + 0];

/** From corner to corner of one angle of the star. */
function edgePath(from: Point, to: Point, a0: number, a1: number, r0: number, r1: number, shape: EdgeShape): Path {
	const control = (fraction: number, bulge: number): Point =>
		polar(a0 + (a1 - a0) * fraction, (r0 + (r1 - r0) * fraction) * bulge);
	const [first, second, middle] = shape.bulges;
	if (shape.kind === 'line') return [{ kind: 'line', from, to }];
	if (shape.kind === 'curve') {
		return [{ kind: 'cubic', from, control1: control(1 / 3, first), control2: control(2 / 3, second), to }];
	}
	const joint = control(1 / 2, middle);
	return [
		{ kind: 'cubic', from, control1: control(1 / 6, first), control2: control(1 / 3, second), to: joint },
		{ kind: 'line', from: joint, to }
	];
}

interface Corner {
	readonly angle: number;
	readonly radius: number;
	readonly at: Point;
}

/** All the way round. */
function closedCorners(shape: Shape): readonly Corner[] {
	const step = (2 * Math.PI) / shape.corners.length;
	return shape.corners.map(({ jitter, radius }, i) => {
		const angle = (i + jitter) * step;
		return { angle, radius, at: polar(angle, radius) };
	});
}

/** From straight above the centre, clockwise to straight below it: the fold closes the outline through the centre. */
function halfCorners(shape: Shape): readonly Corner[] {
	const last = shape.corners.length - 1;
	const step = Math.PI / last;
	return shape.corners.map(({ jitter, radius }, i) => {
		if (i === 0) return { angle: -Math.PI / 2, radius, at: [0, -radius] };
		if (i === last) return { angle: Math.PI / 2, radius, at: [0, radius] };
		const angle = -Math.PI / 2 + (i + jitter) * step;
		return { angle, radius, at: polar(angle, radius) };
	});
}

function edgesOf(shape: Shape, corners: readonly Corner[], isFold: boolean): Edge[] {
	const count = isFold ? corners.length - 1 : corners.length;
	const edges = Array.from({ length: count }, (_, i): Edge => {
		const start = corners[i];
		const end = corners[(i + 1) % corners.length];
		const endAngle = end.angle > start.angle ? end.angle : end.angle + 2 * Math.PI;
		const path = edgePath(start.at, end.at, start.angle, endAngle, start.radius, end.radius, shape.corners[i].edge);
		return { id: `edge-${i}`, name: `Edge ${i}`, kind: 'open', path, lap: 0, turn: false };
	});
	if (!isFold) return edges;
	const fold: Path = [{ kind: 'line', from: corners[corners.length - 1].at, to: corners[0].at }];
	return [...edges, { id: 'fold', name: 'Fold', kind: 'fold', path: fold, lap: 0, turn: false }];
}

/** The shape as a piece round `[0, 0]`; the first edges, as many as `sewn`, are seams with a notch each. */
function pieceFrom(shape: Shape, id: string, cut: 'pair' | 'fold', sewn: number): Piece {
	const corners = cut === 'fold' ? halfCorners(shape) : closedCorners(shape);
	const edges = edgesOf(shape, corners, cut === 'fold').map((edge, i): Edge => {
		if (i < sewn) return { ...edge, kind: 'seam' };
		// The last edge that is neither sewn nor the fold closes on the centre line.
		return edge.kind === 'open' && i === corners.length - (cut === 'fold' ? 2 : 1) ? { ...edge, lap: shape.lap } : edge;
	});
	const outer = edges.filter((edge) => edge.kind !== 'fold');
	const centre: Point = cut === 'fold' ? [Math.min(...corners.slice(1, -1).map(({ at }) => at[0])) / 4, 0] : [0, 0];
	const dartEdge = shape.dart ? outer[shape.dart.edge % outer.length] : undefined;
	const pleatEdge = shape.pleat ? outer.find((edge) => edge.kind === 'open' && edge !== dartEdge) : undefined;
	const along: Point = [Math.cos(shape.levelAngle), Math.sin(shape.levelAngle)];
	const levelEdge = outer.find((edge) => edge.kind === 'open');
	const levels: Level[] = [{ level: 'waist', line: [centre, [centre[0] + 5 * along[0], centre[1] + 5 * along[1]]] }];
	if (shape.levelOnEdge && levelEdge) levels.push({ level: 'hem', edge: levelEdge.id });
	return {
		id,
		name: id,
		cut,
		side: 'both',
		limb: false,
		edges,
		darts: shape.dart && dartEdge ? [dartOn(dartEdge, shape.dart.share, shape.dart.reach)] : [],
		foldDarts:
			shape.foldDart && cut === 'pair'
				? [
						{
							id: 'fold-dart',
							name: 'Fold dart',
							ends: [polar(shape.foldDart.angle, 8), polar(shape.foldDart.angle, -8)],
							widest: { at: 0.5, intake: shape.foldDart.intake },
							widths: []
						}
					]
				: [],
		notches: edges
			.slice(0, sewn)
			.map((edge, i): Notch => ({ id: `notch-${i}`, edge: edge.id, at: shape.notch * pathLength(edge.path) })),
		levels,
		marks: [{ id: 'bust-point', kind: 'bust-point', at: centre }],
		pleats: pleatEdge
			? [
					{
						id: 'pleat-1',
						edge: pleatEdge.id,
						from: 0.4 * pathLength(pleatEdge.path),
						to: 0.6 * pathLength(pleatEdge.path),
						turned: 0.1 * pathLength(pleatEdge.path)
					}
				]
			: [],
		grain: [
			[centre[0], -20],
			[centre[0], 20]
		]
	};
}

function dartOn(edge: Edge, share: number, reach: number): Piece['darts'][number] {
	const length = pathLength(edge.path);
	const [from, to] = [(0.5 - share / 2) * length, (0.5 + share / 2) * length];
	const mouth = midpoint(pointAt(edge.path, from), pointAt(edge.path, to));
	return { id: 'dart', name: 'Dart', edge: edge.id, from, to, point: lerp(mouth, [0, 0], reach), widths: [] };
}

function withMates(piece: Piece, other: string): Piece {
	return { ...piece, notches: piece.notches.map((notch) => ({ ...notch, mate: `${other}/${notch.id}` })) };
}

interface Family {
	readonly shape: Shape;
	readonly relation: 'alone' | 'copy' | 'mirror' | 'fold';
	readonly sewn: number;
	readonly together: boolean;
	readonly turn: number;
	readonly shift: readonly [number, number];
}

const family: fc.Arbitrary<Family> = fc.constantFrom('alone', 'copy', 'mirror', 'fold').chain((relation) =>
	fc.record({
		relation: fc.constant(relation),
		shape: relation === 'fold' ? shapeWith(3, 5) : shapeWith(4, 6),
		sewn: fc.integer({ min: 1, max: 2 }),
		together: fc.boolean(),
		turn: number(-Math.PI, Math.PI),
		shift: fc.tuple(number(-400, 400), number(-400, 400))
	})
);

/** A piece, or a piece and its copy or mirror image, sewn together along their like edges. */
function piecesOf(
	{ shape, relation, sewn, together, turn, shift }: Family,
	k: number
): Pick<Draft, 'pieces' | 'seams'> {
	const id = `piece-${k}`;
	if (relation === 'fold') return { pieces: [pieceFrom(shape, id, 'fold', 0)], seams: [] };
	if (relation === 'alone') {
		const seam: Seam = {
			id: `centre-${k}`,
			name: 'Centre seam',
			a: [{ edge: `${id}/edge-0`, reversed: false }],
			b: 'mirror',
			ease: 0
		};
		return { pieces: [pieceFrom(shape, id, 'pair', 1)], seams: [seam] };
	}
	const otherId = `${id}-${relation}`;
	const motion = compose(rotation(turn, [0, 0]), translation(...shift));
	const whole = relation === 'copy' ? motion : compose(reflection([0, 0], [0, 1]), motion);
	const piece = pieceFrom(shape, id, 'pair', sewn);
	const other = { ...movePiece(piece, whole), id: otherId, name: otherId };
	const run = (of: string, reversed: boolean, edges: readonly number[]): RunEdge[] =>
		edges.map((i) => ({ edge: `${of}/edge-${i}`, reversed }));
	const seam = (i: number, edges: readonly number[]): Seam => ({
		id: `seam-${k}-${i}`,
		name: `Seam ${k} ${i}`,
		a: run(id, false, edges),
		b: run(otherId, relation === 'mirror', edges),
		ease: 0
	});
	const indexes = Array.from({ length: sewn }, (_, i) => i);
	return {
		pieces: [withMates(piece, otherId), withMates(other, id)],
		seams: together ? [seam(0, indexes)] : indexes.map((i) => seam(i, [i]))
	};
}

/**
 * Drafts of one to five pieces, pair and fold, with straight and curved edges, corners inside edges, matched seams of like or
 * mirrored shape (some of two edges), centre seams, mated notches, darts, fold darts, pleats, laps, a `waist` line and a `hem`.
 */
export const arbitraryDraft: fc.Arbitrary<Draft> = fc
	.array(family, { minLength: 1, maxLength: 2 })
	.chain((families) => {
		const parts = families.map(piecesOf);
		return fc.option(shapeWith(3, 5)).map((fold): Draft => ({
			name: 'Random draft',
			pieces: [...parts.flatMap(({ pieces }) => pieces), ...(fold ? [pieceFrom(fold, 'on-the-fold', 'fold', 0)] : [])],
			seams: parts.flatMap(({ seams }) => seams)
		}));
	});
