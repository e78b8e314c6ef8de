import { acts as pictured, type Act as Picture } from '../acts.ts';

/** What was done on the body, in the trade's words, and how it is recorded. */
export interface Act {
	/** As the journal keeps it: `took-in`. */
	readonly key: string;
	/** Its picture and the words under it. */
	readonly picture: Picture;
	/** “Took in a seam”. */
	readonly name: string;
	/** “pinned a fold”. */
	readonly note: string;
	/** “took in”: said of one that is not read yet. */
	readonly done: string;
	/** What it is done to. */
	readonly to: 'seam' | 'edge' | 'new-dart' | 'dart' | 'across' | 'slash' | 'point';
	/** Which way amounts go that are typed without a sign: cloth taken away, added, or as it is said beside them. */
	readonly way: 'in' | 'out' | 'said';
}

function act(key: string, picture: Picture, done: string, to: Act['to'], way: Act['way']): Act {
	const { name, note } = pictured.find((one) => one.act === picture)!;
	return { key, picture, name, note, done, to, way };
}

/** In the order of the pictures. */
export const acts: readonly Act[] = [
	act('took-in', 'take-in', 'took in', 'seam', 'in'),
	act('let-out', 'let-out', 'let out', 'seam', 'out'),
	act('moved-seam', 'move-seam', 'moved', 'seam', 'said'),
	act('new-dart', 'new-dart', 'pinned out', 'new-dart', 'in'),
	act('changed-dart', 'change-dart', 'changed', 'dart', 'said'),
	act('folded-across', 'fold-across', 'folded across', 'across', 'in'),
	act('slashed', 'slash', 'slashed and opened', 'slash', 'out'),
	act('chalked', 'chalk', 'chalked', 'edge', 'said'),
	act('open-edge', 'open-edge', 'changed', 'edge', 'said'),
	act('marked', 'mark', 'marked', 'point', 'said')
];

export function findAct(key: string | null | undefined): Act | undefined {
	return acts.find((one) => one.key === key);
}
