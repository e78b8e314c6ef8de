import { seamsOf, undividedName } from '../../../engine/index.ts';
import type { Draft } from '../../../engine/index.ts';
import { choosing } from '../choosing.ts';
import { targetsFor, type Target } from '../targets.ts';
import { addressOf } from '../typed.ts';
import type { InHand } from './in-hand.ts';

/** Where each edge and dart of the drawing leads when it is tapped: to its seam or itself, under the act in the hand. */
export function linksOf({ typed, hand, editing, kept }: InHand): Readonly<Record<string, string>> {
	if (editing || kept.ground.frozen) return {};
	const { base } = kept.ground;
	const offered = hand.act ? targetsFor(base, hand.act.to) : undefined;
	const fits = (target: Target) => !offered || offered.some(({ of, id }) => of === target.of && id === target.id);
	const link = (name: string, targets: readonly Target[]) => {
		const target = targets.find(fits);
		return target ? [[name, addressOf(choosing(typed, target))]] : [];
	};
	return Object.fromEntries(
		base.pieces.flatMap((piece) => [
			...piece.edges
				.filter(({ kind }) => kind !== 'fold')
				.flatMap(({ id }) => link(`${piece.id}/${id}`, targetsOfEdge(base, `${piece.id}/${id}`))),
			...[...piece.darts, ...piece.foldDarts].flatMap(({ id }) =>
				link(`${piece.id}/${id}`, [{ of: 'dart', id: undividedName(`${piece.id}/${id}`) }])
			)
		])
	);
}

function targetsOfEdge(draft: Draft, name: string): readonly Target[] {
	const [sewn] = seamsOf(draft, name);
	return [
		...(sewn ? [{ of: 'seam', id: undividedName(sewn.seam.id) } as const] : []),
		{ of: 'edge', id: undividedName(name) }
	];
}
