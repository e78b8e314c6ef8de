import type { Draft, Edge, Piece, RunEdge, Seam } from './types.ts';
import { edgeOf, findNotch, findPiece, nameOf, splitName } from './find.ts';
import { edgeStitchedLength } from './length.ts';
import { remembered } from '../geometry/memo.ts';
import { undividedName } from './undivided-name.ts';

export type SeamSide = 'a' | 'b';

/** One edge of a seam's run as the seam walks it. Stitched lengths in mm. */
export interface SeamEdge {
	/** `piece/edge`. */
	readonly name: string;
	readonly piece: Piece;
	readonly edge: Edge;
	readonly reversed: boolean;
	/** Stitched length on the seam where this edge begins. */
	readonly startsAt: number;
	readonly length: number;
}

/** The edges of a side as the file names them; side b of a mirror seam is side a. */
export function sideOf(seam: Seam, side: SeamSide): readonly RunEdge[] {
	return side === 'a' || seam.b === 'mirror' ? seam.a : seam.b;
}

/** A side of a seam, edge by edge from its start. Thrown: a run that names no edge of the draft. */
export function seamRun(draft: Draft, seam: Seam, side: SeamSide): readonly SeamEdge[] {
	return runEdges(draft, sideOf(seam, side));
}

/** Stitched length of a run in mm. Thrown: a run that names no edge of the draft. */
export function runLength(draft: Draft, run: readonly RunEdge[]): number {
	let sum = 0;
	for (let i = 0; i < run.length; i++) {
		const { piece, edge } = edgeOfRun(draft, run, i);
		sum += edgeStitchedLength(piece, edge);
	}
	return sum;
}

function runEdges(draft: Draft, run: readonly RunEdge[]): readonly SeamEdge[] {
	let startsAt = 0;
	return run.map(({ edge: name, reversed }, i) => {
		const { piece, edge } = edgeOfRun(draft, run, i);
		const length = edgeStitchedLength(piece, edge);
		const walked = { name, piece, edge, reversed, startsAt, length };
		startsAt += length;
		return walked;
	});
}

/** The names of a run in their parts: a run is walked far more often than it is drawn up. */
const namesIn = remembered((run: readonly RunEdge[]) => run.map(({ edge }) => splitName(edge)));

function edgeOfRun(draft: Draft, run: readonly RunEdge[], i: number): { readonly piece: Piece; readonly edge: Edge } {
	const name = namesIn(run)[i];
	const piece = findPiece(draft, name.piece);
	const edge = piece && edgeOf(piece, name.id);
	if (!piece || !edge) throw new Error(`There is no edge ${run[i].edge} in this draft.`);
	return { piece, edge };
}

/** Remembered by the list, which a draft keeps when its edges move. */
const seamsByEdge = remembered((seams: readonly Seam[]) => {
	const index = new Map<string, { readonly seam: Seam; readonly side: SeamSide }[]>();
	const note = (name: string, seam: Seam, side: SeamSide): void => {
		const known = index.get(name);
		if (known) known.push({ seam, side });
		else index.set(name, [{ seam, side }]);
	};
	for (const seam of seams) {
		for (const { edge } of seam.a) note(edge, seam, 'a');
		if (seam.b !== 'mirror') for (const { edge } of seam.b) note(edge, seam, 'b');
	}
	return index;
});

/** The seams that an edge is sewn in, and on which side; a mirror seam counts once, on side a. */
export function seamsOf(draft: Draft, name: string): readonly { readonly seam: Seam; readonly side: SeamSide }[] {
	return seamsByEdge(draft.seams).get(name) ?? [];
}

export function otherSide(side: SeamSide): SeamSide {
	return side === 'a' ? 'b' : 'a';
}

/**
 * The notch that one on a side of a seam meets on the other side, both named whole; either may name the other as its mate. A
 * notch of a divided piece meets the mate on its own side of the wearer. On a mirror seam a notch meets itself. Undefined where
 * the seam has none.
 */
export function mateOnSeam(draft: Draft, seam: Seam, side: SeamSide, notch: string): string | undefined {
	if (seam.b === 'mirror') return notch;
	const mate = findNotch(draft, notch)?.notch.mate;
	for (const { piece, edge } of seamRun(draft, seam, otherSide(side))) {
		for (const other of piece.notches) {
			if (other.edge !== edge.id) continue;
			const name = nameOf(piece, other.id);
			if (name !== notch && (sameNotch(mate, name) || sameNotch(other.mate, notch))) return name;
		}
	}
	return undefined;
}

function sameNotch(mate: string | undefined, name: string): boolean {
	return mate !== undefined && undividedName(mate) === undividedName(name);
}
