import type { Draft, Edge, Piece, RunEdge, Seam } from './types.ts';
import { findEdge, findNotch, nameOf } from './find.ts';
import { edgeStitchedLength } from './length.ts';
import { remembered } from './memo.ts';
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
	return runEdges(draft, run).reduce((sum, { length }) => sum + length, 0);
}

function runEdges(draft: Draft, run: readonly RunEdge[]): readonly SeamEdge[] {
	let startsAt = 0;
	return run.map(({ edge: name, reversed }) => {
		const found = findEdge(draft, name);
		if (found === undefined) throw new Error(`There is no edge ${name} in this draft.`);
		const length = edgeStitchedLength(found.piece, found.edge);
		const walked = { name, piece: found.piece, edge: found.edge, reversed, startsAt, length };
		startsAt += length;
		return walked;
	});
}

const seamsByEdge = remembered((draft: Draft) => {
	const index = new Map<string, { readonly seam: Seam; readonly side: SeamSide }[]>();
	const note = (name: string, seam: Seam, side: SeamSide): void => {
		const known = index.get(name);
		if (known) known.push({ seam, side });
		else index.set(name, [{ seam, side }]);
	};
	for (const seam of draft.seams) {
		for (const { edge } of seam.a) note(edge, seam, 'a');
		if (seam.b !== 'mirror') for (const { edge } of seam.b) note(edge, seam, 'b');
	}
	return index;
});

/** The seams that an edge is sewn in, and on which side; a mirror seam counts once, on side a. */
export function seamsOf(draft: Draft, name: string): readonly { readonly seam: Seam; readonly side: SeamSide }[] {
	return seamsByEdge(draft).get(name) ?? [];
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
