import { seamRun, undividedName } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';
import type { Act } from './acts.ts';
import { inSentence } from './casing.ts';
import { dartName, dartOf, edgeName, edgeOf, seamName, seamOf } from './feature-names.ts';
import { layerNames } from './words/seam.ts';

/** What an alteration is made to: a seam by its id, an edge or a dart by its whole name, never divided. */
export interface Target {
	readonly of: 'seam' | 'edge' | 'dart';
	readonly id: string;
}

export interface NamedTarget extends Target {
	/** “Side seam”, “Front neck”. */
	readonly name: string;
	/** “under-arm to front”. */
	readonly note: string;
}

/** The word of the address and of the form that names a target of an act. */
export function fieldOf(to: Act['to']): Target['of'] | undefined {
	if (to === 'seam') return 'seam';
	if (to === 'dart') return 'dart';
	return to === 'edge' || to === 'new-dart' ? 'edge' : undefined;
}

/** Everything in a draft that an act can be done to, in the order of the draft. */
export function targetsFor(draft: Draft, to: Act['to']): readonly NamedTarget[] {
	if (to === 'seam') return seamTargets(draft);
	if (to === 'edge') return edgeTargets(draft, (kind, inArmhole) => kind === 'open' || inArmhole);
	if (to === 'new-dart') return edgeTargets(draft, (kind) => kind !== 'fold');
	return to === 'dart' ? dartTargets(draft) : [];
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

/** Both sides of every seam that sets a limb into the body: chalked anew as a neck is. */
export function armholeEdges(draft: Draft): ReadonlySet<string> {
	return new Set(
		draft.seams.flatMap((seam) => {
			if (seam.b === 'mirror') return [];
			const sides = (['a', 'b'] as const).map((side) => seamRun(draft, seam, side));
			const [a, b] = sides.map((run) => run.every(({ piece }) => piece.limb));
			return a === b ? [] : sides.flat().map(({ name }) => name);
		})
	);
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
	return dartOf(draft, id) !== undefined;
}

/** What is said when it has not. */
export function notThere(draft: Draft, { of, id }: Target): string {
	const there = { seam: seamTargets(draft), edge: edgeTargets(draft, () => true), dart: dartTargets(draft) }[of];
	const names = there.map(({ name }) => inSentence(name)).join(', ');
	return `There is no ${of} “${id.slice(0, 40)}” in this draft. ${names ? `It has: ${names}.` : `It has no ${of}s at all.`}`;
}

/** The edges that chalk is rubbed along, both layers of a seam; whole names as the draft has them, divided or not. */
export function edgesOfTarget(draft: Draft, { of, id }: Target): readonly string[] {
	if (of === 'seam')
		return draft.seams
			.filter((seam) => undividedName(seam.id) === undividedName(id))
			.flatMap((seam) => (['a', 'b'] as const).flatMap((side) => seamRun(draft, seam, side).map(({ name }) => name)));
	if (of === 'dart') return [];
	return draft.pieces.flatMap((piece) =>
		piece.edges.map((edge) => `${piece.id}/${edge.id}`).filter((name) => undividedName(name) === undividedName(id))
	);
}
