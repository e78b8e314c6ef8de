import {
	notchCounts,
	levelSpan,
	movePath,
	movePoint,
	outlineOf,
	pathBox,
	pathLength,
	pointAt,
	tangentAt
} from './engine.ts';
import type { Draft, Edge, Motion, Piece, Point } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { linesBefore, piecesBefore } from './answering.ts';
import { balanceAcross, takeNames } from './balance.ts';
import { together } from './clearance.ts';
import type { CutPath } from './cut-path.ts';
import { lieOf, shifted } from './frame.ts';
import { crossStep } from './measure-strip.ts';
import { pieceWithWords } from './piece-with-words.ts';
import { placePins } from './pins.ts';
import type { Material, PinOnDrawing, Scene } from './scene.ts';
import { outOf } from './vectors.ts';

export interface CloseOptions {
	readonly unit: Unit;
	/** One edge, or the two that are sewn together, by whole name. */
	readonly edges: readonly string[];
	/** px. */
	readonly width?: number;
	readonly height?: number;
	/** px to an inch; 46 if left out: a quarter inch is then 12 px wide. */
	readonly perInch?: number;
	/** The balance line to look at, the waist if there is one; else the middle of the edge. */
	readonly at?: string;
	/** A place to look at instead, of each edge that has it, in its piece's own mm. */
	readonly places?: ReadonlyMap<string, Point>;
	readonly before?: Draft;
	readonly cut?: readonly CutPath[];
	/** The lines that are to be cut on instead: what falls short of them is crossed out. */
	readonly wanted?: readonly CutPath[];
	readonly material?: Material;
	readonly side?: 'right' | 'left';
	readonly pins?: readonly PinOnDrawing[];
}

interface Looked {
	readonly piece: Piece;
	readonly edge: Edge;
	/** At the drawing's scale, its origin where it was. */
	readonly motion: Motion;
	/** What is looked at, px. */
	readonly middle: Point;
	/** Its edge looks to the right. */
	readonly faces: number;
}

/**
 * A close look at a seam: its two edges facing one another across a strip of table, level at one balance line, cut off where
 * the drawing ends. True to one scale, like the table.
 */
export function layClose(draft: Draft, options: CloseOptions): Scene {
	const { unit, width = 390, height = 232, perInch = 46, before } = options;
	const scale = perInch / 25.4;
	const earlier = before && piecesBefore(before, draft);
	const looked = options.edges.flatMap((name) => lookAt(draft, name, scale, options, earlier));
	const [left, right] = [...looked].sort((a, b) => b.faces - a.faces);
	const xs = right ? [width * 0.3, width * 0.7] : [width / 2];
	const cuts = notchCounts(draft);
	const outlines = new Map((options.cut ?? []).map(({ piece, outline }) => [piece, outline]));
	const wanted = new Map((options.wanted ?? []).map(({ piece, outline }) => [piece, outline]));
	const placed = [left, right].flatMap((one, i) => {
		if (!one) return [];
		const motion = shifted(one.motion, xs[i] - one.middle[0], height * 0.56 - one.middle[1]);
		const was = earlier?.get(one.piece.id);
		const cut = outlines.get(one.piece.id);
		const line = wanted.get(one.piece.id);
		return [
			{
				piece: one.piece,
				motion,
				beforeMotion: motion,
				row: 0,
				limb: false,
				...(was && { before: was }),
				...(cut && { cut }),
				...(line && { wanted: line })
			}
		];
	});
	const window = { left: 0, top: 0, right: width, bottom: height };
	const drawn = placed.map((one) => pieceWithWords({ ...one, cuts, selected: options.edges, thin: false, window }));
	const clear = together(drawn.map((one) => one.clear));
	const balance = balanceAcross(placed, width, right ? 'in the middle' : 'at the left');
	takeNames(balance, clear);
	const step = crossStep(scale, unit);
	return {
		width,
		height,
		scale,
		unit,
		material: options.material ?? 'white',
		thin: false,
		crosses: { step, x: (width / 2) % step, y: (height * 0.56) % step },
		balance,
		pieces: drawn.map(({ worded }) => worded),
		pins: placePins(options.pins ?? [], drawn, { clear, width, height, unit, thin: false })
	};
}

/** Where the line lay before, if it did, so that nothing but the new line moves while a pin is stepped. */
function lookAt(
	draft: Draft,
	name: string,
	scale: number,
	{ side = 'right', at: level = 'waist', places }: CloseOptions,
	earlier: ReadonlyMap<string, Piece> | undefined
): readonly Looked[] {
	const [id, edgeId] = name.split('/');
	const piece = draft.pieces.find((one) => one.id === id);
	const edge = piece?.edges.find((one) => one.id === edgeId);
	if (!piece || !edge) return [];
	const before = earlier?.get(piece.id);
	// A piece opened at its fold since is not the piece that it was: one half of it lies turned over.
	const line = before?.cut === piece.cut && linesBefore(before, piece).find((one) => one.edge === edge.id);
	const motion = lieOf(scale, side === 'left' ? 'mirrored' : 'upright');
	const path = movePath(motion, line ? line.path : edge.path);
	const half = pathLength(path) / 2;
	const lying = before && line ? before : piece;
	const levels = lying.levels.filter((part) => part.level === level);
	const ends = levels.flatMap((part) => levelSpan(lying, part)?.points ?? []).map((point) => movePoint(motion, point));
	const place = places?.get(name);
	const on = place ? [movePoint(motion, place)] : ends.filter((point) => nearTo(path, point));
	return [
		{
			piece,
			edge,
			motion,
			middle: on[0] ?? pointAt(path, half),
			faces: facing(piece, motion, pointAt(path, half), path, half)
		}
	];
}

/** Whether a balance line ends within a px of the edge's own box: the edge is then looked at there. */
function nearTo(path: ReturnType<typeof movePath>, [x, y]: Point): boolean {
	const box = pathBox(path);
	return x >= box.left - 1 && x <= box.right + 1 && y >= box.top - 1 && y <= box.bottom + 1;
}

/** How far to the right the edge looks: of the way out of the cloth there, and of its place on the piece if it looks up or down. */
function facing(piece: Piece, motion: Motion, at: Point, path: ReturnType<typeof movePath>, s: number): number {
	const box = pathBox(movePath(motion, outlineOf(piece)));
	const out = outOf(tangentAt(path, s), motion[0] < 0);
	return out[0] + (0.2 * (at[0] - (box.left + box.right) / 2)) / (box.right - box.left);
}
