/** What was done on the body, in the trade's words, and which kind of alteration records it. */
export interface Act {
	readonly key: string;
	/** “Took in a seam”. */
	readonly name: string;
	/** “pinned a fold along it”. */
	readonly note: string;
	/** “took in”: for one that is not read yet. */
	readonly done: string;
	/** What it is done to. */
	readonly to: 'seam' | 'edge' | 'new-dart' | 'dart' | 'piece';
	/** Which way the amounts go, as they are typed without a sign: cloth taken away, added, or as typed. */
	readonly way: 'in' | 'out' | 'either';
}

export const acts: readonly Act[] = [
	{ key: 'took-in', name: 'Took in a seam', note: 'pinned a fold', done: 'took in', to: 'seam', way: 'in' },
	{ key: 'let-out', name: 'Let out a seam', note: 'opened it', done: 'let out', to: 'seam', way: 'out' },
	{ key: 'moved-seam', name: 'Moved a seam', note: 'forward, back', done: 'moved', to: 'seam', way: 'either' },
	{ key: 'new-dart', name: 'New dart', note: 'pinned out', done: 'pinned out', to: 'new-dart', way: 'in' },
	{ key: 'changed-dart', name: 'Changed a dart', note: 'wider, moved', done: 'changed', to: 'dart', way: 'either' },
	{ key: 'folded-across', name: 'Folded across', note: 'to shorten', done: 'folded across', to: 'piece', way: 'in' },
	{
		key: 'slashed',
		name: 'Slashed across',
		note: 'to lengthen',
		done: 'slashed and opened',
		to: 'piece',
		way: 'out'
	},
	{ key: 'chalked', name: 'Chalked a line', note: 'neck, hem …', done: 'chalked', to: 'edge', way: 'either' },
	{
		key: 'open-edge',
		name: 'At an open edge',
		note: 'added, took off',
		done: 'changed',
		to: 'edge',
		way: 'either'
	},
	{ key: 'marked', name: 'Marked a point', note: 'bust, button', done: 'marked', to: 'piece', way: 'either' }
];

export function findAct(key: string | null | undefined): Act | undefined {
	return acts.find((act) => act.key === key);
}
