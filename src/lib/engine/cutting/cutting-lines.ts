import { dartLegs, foldDartLegs } from '../draft/dart-legs.ts';
import { edgeOf, nameOf } from '../draft/find.ts';
import { fitted } from '../geometry/accuracy.ts';
import { formatPathData } from '../geometry/path-data.ts';
import { levelSpan } from '../draft/level.ts';
import { line } from '../geometry/segment.ts';
import { outlineOf } from '../draft/outline.ts';
import { add, outward } from '../geometry/point.ts';
import { pointAt, straight, tangentAt } from '../geometry/path.ts';
import { signedArea } from '../geometry/area.ts';
import { undividedName } from '../draft/undivided-name.ts';
import type { Cut, Draft, Edge, EdgeKind, Mark, Piece, Side } from '../draft/types.ts';
import type { Path, Point } from '../geometry/types.ts';
import { allowanceOutline } from './allowance-outline.ts';
import { notchCounts } from './notch-counts.ts';
import { mouthsToShape } from './pressed-mouth.ts';

/** Allowances in mm: one for every edge, and those that differ by name (`front/neck`). Fold edges have none, whatever is said. */
export interface CuttingAllowances {
	readonly default: number;
	readonly edges?: Readonly<Record<string, number>>;
	/** Corners reach at most this many times the larger allowance before they are squared off; 2.5 if not said. */
	readonly mitre?: number;
}

/** A piece ready to cut. Lines are SVG path data in the piece's own coordinates, mm; points are `[x, y]`. */
export interface CutPiece {
	readonly piece: string;
	readonly name: string;
	readonly cut: Cut;
	readonly side: Side;
	/** The cutting line, closed, clockwise. */
	readonly outline: string;
	/** The stitching line, closed, dart mouths as drawn. */
	readonly stitching: string;
	/** mm² inside the cutting line. */
	readonly area: number;
	/** Greatest distance found between the cutting line and the exact one, mm. */
	readonly deviation: number;
	readonly edges: readonly CutEdge[];
	/** The fold that it is laid on, from cutting line to cutting line. */
	readonly fold?: string;
	readonly notches: readonly CutNotch[];
	readonly darts: readonly CutDart[];
	readonly levels: readonly { readonly level: string; readonly line: string }[];
	readonly marks: readonly Mark[];
	readonly grain?: string;
}

export interface CutEdge {
	/** `front/side` */
	readonly edge: string;
	readonly name: string;
	readonly kind: EdgeKind;
	/** Turned under: a hem, a cuff, a facing. */
	readonly turn: boolean;
	readonly allowance: number;
	readonly stitching: string;
}

/** One or more straight cuts across the stitching line, outward. */
export interface CutNotch {
	readonly id: string;
	readonly edge: string;
	/** On the stitching line. */
	readonly at: Point;
	/** Unit direction square to it. */
	readonly outward: Point;
	/** Never longer than the allowance there, mm. */
	readonly length: number;
	/** How many cuts side by side, so that mated notches are told from the others of their seam. */
	readonly count: 1 | 2 | 3;
}

export interface CutDart {
	readonly id: string;
	/** Each from its mouth (a fold dart: from its first end) to the point. */
	readonly legs: readonly [string, string];
	readonly fold: string;
	/** Where an awl goes: the point, or both ends of a fold dart. */
	readonly points: readonly Point[];
}

/** Notches are cut no deeper than this, mm. */
const notchLength = 6.35;

/**
 * The cutting lines of every piece. Each edge is offset by its own allowance, corners are mitred up to 2.5 × the larger
 * allowance and then squared off, hollows narrower than the allowance lose their loops, mouths of untrued darts are shaped as
 * they will be pressed. Never refused. Thrown: an allowance that is negative or no number, which is our own mistake.
 */
export function cuttingLines(draft: Draft, allowances: CuttingAllowances): CutPiece[] {
	const counts = notchCounts(draft);
	return draft.pieces.map((piece) => cutPiece(piece, allowances, counts));
}

function cutPiece(piece: Piece, allowances: CuttingAllowances, counts: ReadonlyMap<string, 1 | 2 | 3>): CutPiece {
	const edges = piece.edges.map((edge) => ({
		path: edge.path,
		allowance: allowanceFor(allowances, piece, edge),
		turn: edge.turn,
		mouths: mouthsToShape(piece, edge)
	}));
	const { path, deviation, ends } = allowanceOutline(edges, fitted / 2, allowances.mitre);
	const foldAt = piece.edges.findIndex(({ kind }) => kind === 'fold');
	return {
		piece: piece.id,
		name: piece.name,
		cut: piece.cut,
		side: piece.side,
		outline: formatPathData(path),
		stitching: formatPathData(outlineOf(piece)),
		area: signedArea(path),
		deviation,
		edges: piece.edges.map((edge, i) => ({
			edge: nameOf(piece, edge.id),
			name: edge.name,
			kind: edge.kind,
			turn: edge.turn,
			allowance: edges[i].allowance,
			stitching: formatPathData(edge.path)
		})),
		...(foldAt >= 0 && { fold: formatPathData([line(...ends[foldAt])]) }),
		notches: piece.notches.flatMap((notch) => {
			const index = piece.edges.findIndex(({ id }) => id === notch.edge);
			const { path: stitching } = piece.edges[index];
			return {
				id: notch.id,
				edge: nameOf(piece, notch.edge),
				at: pointAt(stitching, notch.at),
				outward: add(outward(tangentAt(stitching, notch.at)), [0, 0]),
				length: Math.min(notchLength, edges[index].allowance),
				count: counts.get(nameOf(piece, notch.id)) ?? 1
			};
		}),
		darts: cutDarts(piece),
		levels: piece.levels.flatMap((part) => {
			const drawn = 'line' in part ? spanLine(levelSpan(piece, part)?.points) : edgeOf(piece, part.edge)?.path;
			return drawn ? [{ level: part.level, line: formatPathData(drawn) }] : [];
		}),
		marks: piece.marks,
		...(piece.grain && { grain: formatPathData(straight(...piece.grain)) })
	};
}

function allowanceFor({ default: usual, edges = {} }: CuttingAllowances, piece: Piece, edge: Edge): number {
	if (edge.kind === 'fold') return 0;
	const name = nameOf(piece, edge.id);
	const known = [name, undividedName(name)].find((one) => Object.hasOwn(edges, one));
	const allowance = known === undefined ? usual : edges[known];
	if (!(allowance >= 0 && Number.isFinite(allowance)))
		throw new RangeError(`An allowance of ${allowance} mm on ${name}`);
	return allowance;
}

function cutDarts(piece: Piece): CutDart[] {
	const darts = piece.darts.map((dart): CutDart => {
		const { from, to, foldAt } = dartLegs(piece, dart);
		return {
			id: dart.id,
			legs: [formatPathData(from), formatPathData(to)],
			fold: formatPathData(straight(foldAt, dart.point)),
			points: [dart.point]
		};
	});
	const foldDarts = piece.foldDarts.map((dart): CutDart => {
		const { left, right } = foldDartLegs(dart);
		return {
			id: dart.id,
			legs: [formatPathData(left), formatPathData(right)],
			fold: formatPathData(straight(...dart.ends)),
			points: dart.ends
		};
	});
	return [...darts, ...foldDarts];
}

function spanLine(points: readonly Point[] | undefined): Path | undefined {
	return points && points.length > 1 ? points.slice(1).map((point, i) => line(points[i], point)) : undefined;
}
