import { seamRun, undividedName } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';
import { bustPieces } from './across/bust-slash.ts';
import { findLine, linesAcross, piecesNote } from './across/lines-across.ts';
import type { Act } from './acts.ts';
import { armholeEdges } from './armhole-edges.ts';
import { inSentence } from './casing.ts';
import { dartName, dartOf, edgeName, edgeOf, pieceName, pieceOf, seamName, seamOf } from './feature-names.ts';
import { layerNames } from './words/seam.ts';

/** What an alteration is made to: a seam by its id, an edge or a dart by its whole name, a piece, a line across; never divided. */
export interface Target {
	readonly of: 'seam' | 'edge' | 'dart' | 'across' | 'piece';
	readonly id: string;
}

export interface NamedTarget extends Target {
	/** “Side seam”, “Front neck”. */
	readonly name: string;
	/** “under-arm to front”. */
	readonly note: string;
}

/** The words of addresses and of forms that name a target. */
export const targetFields = ['across', 'piece', 'seam', 'edge', 'dart'] as const satisfies readonly Target['of'][];

/** The words that can name a target of an act. */
export const fieldsOf: Readonly<Record<Act['to'], readonly [Target['of'], ...Target['of'][]]>> = {
	seam: ['seam'],
	edge: ['edge'],
	'new-dart': ['edge'],
	dart: ['dart'],
	across: ['across'],
	slash: ['across', 'piece'],
	point: ['piece', 'seam', 'edge']
};

/** Everything in a draft that an act can be done to, in the order of the draft. */
export function targetsFor(draft: Draft, to: Act['to']): readonly NamedTarget[] {
	const all = known.get(draft) ?? {};
	known.set(draft, all);
	return (all[to] ??= offered[to](draft));
}

/** A draft stays while what is in the hand is stepped: what can be done to it is looked for once. */
const known = new WeakMap<Draft, Partial<Record<Act['to'], readonly NamedTarget[]>>>();

const offered: Readonly<Record<Act['to'], (draft: Draft) => readonly NamedTarget[]>> = {
	seam: seamTargets,
	edge: (draft) => edgeTargets(draft, (kind, inArmhole) => kind === 'open' || inArmhole),
	'new-dart': (draft) => edgeTargets(draft, (kind) => kind !== 'fold'),
	dart: dartTargets,
	across: lineTargets,
	slash: (draft) => [...lineTargets(draft), ...bustTargets(draft)],
	point: (draft) => [...pieceTargets(draft), ...edgeTargets(draft, (kind) => kind === 'open'), ...seamTargets(draft)]
};

function lineTargets(draft: Draft): readonly NamedTarget[] {
	return linesAcross(draft).map((line) => ({
		of: 'across',
		id: line.id,
		name: line.name,
		note: `across ${piecesNote(line)}`
	}));
}

function bustTargets(draft: Draft): readonly NamedTarget[] {
	return bustPieces(draft).map((piece) => ({
		of: 'piece',
		id: undividedName(piece.id),
		name: pieceName(draft, piece.id),
		note: 'for a fuller or a smaller bust'
	}));
}

function pieceTargets(draft: Draft): readonly NamedTarget[] {
	return once(draft.pieces.map(({ id }) => undividedName(id))).map((id) => ({
		of: 'piece',
		id,
		name: pieceName(draft, id),
		note: 'bust point and marks'
	}));
}

export function seamTargets(draft: Draft): readonly NamedTarget[] {
	return once(draft.seams.map(({ id }) => undividedName(id))).map((id) => ({
		of: 'seam',
		id,
		name: seamName(draft, id),
		note: seamNote(draft, id)
	}));
}

function seamNote(draft: Draft, id: string): string {
	if (seamOf(draft, id)!.b === 'mirror') return 'right to left';
	const [a, b] = layerNames(draft, id).map(inSentence);
	return `${a} to ${b}`;
}

export function edgeTargets(
	draft: Draft,
	wanted: (kind: 'seam' | 'open' | 'fold', inArmhole: boolean) => boolean
): readonly NamedTarget[] {
	const armholes = armholeEdges(draft);
	const names = draft.pieces.flatMap((piece) =>
		piece.edges
			.filter((edge) => wanted(edge.kind, armholes.has(`${piece.id}/${edge.id}`)))
			.map((edge) => undividedName(`${piece.id}/${edge.id}`))
	);
	return once(names).map((id) => ({ of: 'edge', id, name: edgeName(draft, id), note: '' }));
}

export function dartTargets(draft: Draft): readonly NamedTarget[] {
	const names = draft.pieces.flatMap((piece) =>
		[...piece.darts, ...piece.foldDarts].map(({ id }) => undividedName(`${piece.id}/${id}`))
	);
	return once(names).map((id) => ({ of: 'dart', id, name: dartName(draft, id), note: '' }));
}

const once = (names: readonly string[]) => [...new Set(names)];

/** Whether the draft has it; divided or not. */
export function isThere(draft: Draft, { of, id }: Target): boolean {
	if (of === 'seam') return seamOf(draft, id) !== undefined;
	if (of === 'edge') return edgeOf(draft, id) !== undefined;
	if (of === 'across') return findLine(draft, id) !== undefined;
	if (of === 'piece') return pieceOf(draft, id) !== undefined;
	return dartOf(draft, id) !== undefined;
}

/** What is said when it has not. */
export function notThere(draft: Draft, { of, id }: Target): string {
	const there = {
		seam: seamTargets,
		edge: (one: Draft) => edgeTargets(one, () => true),
		dart: dartTargets,
		across: lineTargets,
		piece: pieceTargets
	}[of](draft);
	const word = of === 'across' ? 'line' : of;
	const names = there.map(({ name }) => inSentence(name)).join(', ');
	return `There is no ${word} “${id.slice(0, 40)}” in this draft. ${names ? `It has: ${names}.` : `It has no ${word}s at all.`}`;
}

/** The edges that chalk is rubbed along, both layers of a seam; whole names as the draft has them, divided or not. */
export function edgesOfTarget(draft: Draft, { of, id }: Target): readonly string[] {
	// A centre seam has one edge: its piece is sewn to its own mirror image.
	if (of === 'seam')
		return once(
			draft.seams
				.filter((seam) => undividedName(seam.id) === undividedName(id))
				.flatMap((seam) => (['a', 'b'] as const).flatMap((side) => seamRun(draft, seam, side).map(({ name }) => name)))
		);
	if (of !== 'edge') return [];
	return draft.pieces.flatMap((piece) =>
		piece.edges.map((edge) => `${piece.id}/${edge.id}`).filter((name) => undividedName(name) === undividedName(id))
	);
}
