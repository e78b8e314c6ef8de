/** What can be done to a toile on the body, as the fitting asks it. */
export type Act =
	| 'take-in'
	| 'let-out'
	| 'move-seam'
	| 'new-dart'
	| 'change-dart'
	| 'fold-across'
	| 'slash'
	| 'chalk'
	| 'open-edge'
	| 'mark';

export interface ActWords {
	readonly act: Act;
	readonly name: string;
	readonly note: string;
}

/** In the order of the pictures. */
export const acts: readonly ActWords[] = [
	{ act: 'take-in', name: 'Took in a seam', note: 'pinned a fold' },
	{ act: 'let-out', name: 'Let out a seam', note: 'opened it' },
	{ act: 'move-seam', name: 'Moved a seam', note: 'forward, back' },
	{ act: 'new-dart', name: 'New dart', note: 'pinned out' },
	{ act: 'change-dart', name: 'Changed a dart', note: 'wider, moved' },
	{ act: 'fold-across', name: 'Folded across', note: 'to shorten' },
	{ act: 'slash', name: 'Slashed across', note: 'to lengthen' },
	{ act: 'chalk', name: 'Chalked a line', note: 'neck, hem …' },
	{ act: 'open-edge', name: 'Front or open edge', note: 'added, took off' },
	{ act: 'mark', name: 'Marked a point', note: 'bust, button' }
];

/** A stroke of a picture: the code that it is drawn in, and path text in a box of 40 × 28 px. */
export interface ActStroke {
	readonly code: string;
	readonly d: string;
}

const lens = 'M20 1C25.5 8 25.5 20 20 27C14.5 20 14.5 8 20 1Z';

/** The ten pictures, built of the line codes. */
export const actPictures: Readonly<Record<Act, readonly ActStroke[]>> = {
	'take-in': [
		{ code: 'in-tint', d: lens },
		{ code: 'act-hatch', d: 'M16 12L24 8.5M15.5 16L24.5 12.5M16 20L24.5 16.5M18 23L23.5 20.5M17.5 8L22.5 5.5' },
		{ code: 'act-after', d: lens },
		{ code: 'act-ink', d: 'M2 17.5L13 14.5M27 10.5L33 9' },
		{ code: 'act-pin', d: 'M36.5 5.2a3.2 3.2 0 1 0 0.01 0Z' }
	],
	'let-out': [
		{ code: 'act-after', d: 'M14 1C6.5 8 6.5 20 14 27M26 1C33.5 8 33.5 20 26 27' },
		{ code: 'act-before', d: 'M15.5 2V26M24.5 2V26' },
		{ code: 'act-zigzag', d: 'M15 5L11 8L15 11L9.5 14L15 17L11 20L15 23M25 5L29 8L25 11L30.5 14L25 17L29 20L25 23' }
	],
	'move-seam': [
		{ code: 'act-before', d: 'M20 1C22 8 22 20 20 27' },
		{ code: 'act-after', d: 'M30 1C34 8 34 20 30 27' },
		{ code: 'act-ink', d: 'M6 14H15M11.5 10.5L15 14L11.5 17.5M23 14H27.5' }
	],
	'new-dart': [
		{ code: 'act-ink', d: 'M2 3H38' },
		{ code: 'in-tint', d: 'M15 3L20 23L25 3Z' },
		{ code: 'act-hatch', d: 'M16.5 8L20.5 4M17.5 12L24 5.5M18.5 16L23 11.5' },
		{ code: 'act-after', d: 'M15 3L19.5 22M25 3L20.5 22' },
		{ code: 'act-ring', d: 'M20 22a2.3 2.3 0 1 0 0.01 0Z' }
	],
	'change-dart': [
		{ code: 'in-tint', d: lens },
		{ code: 'act-after', d: lens },
		{ code: 'act-before', d: 'M20 3C22.5 9 22.5 19 20 25C17.5 19 17.5 9 20 3Z' }
	],
	'fold-across': [
		{ code: 'act-ink', d: 'M7 1V27M33 1V27' },
		{ code: 'in-tint', d: 'M5 10.5H35V18.5L5 16Z' },
		{ code: 'act-hatch', d: 'M9 15.5L12.5 11M15 16L18.5 11M21 16.5L24.5 11M27 17L30.5 11' },
		{ code: 'act-after', d: 'M5 10.5H35M5 16L35 18.5' }
	],
	slash: [
		{ code: 'act-ink', d: 'M7 1V27M33 1V27' },
		{ code: 'out-tint', d: 'M8 14L33 8V20Z' },
		{ code: 'act-zigzag', d: 'M14 14.5L17 12.5L19.5 16L22 11.5L25 17L28 10.5L31.5 18.5' },
		{ code: 'act-after', d: 'M7.5 14L33 8M7.5 14L33 20' }
	],
	chalk: [
		{ code: 'act-ink', d: 'M4 4.5C9 3.5 12 3 15 2.5M25 2.5C28 3 31 3.5 36 4.5' },
		{ code: 'act-before', d: 'M16 3C17 12 23 12 24 3' },
		{ code: 'act-hatch', d: 'M15 13L17.5 8M18 16L19.5 11M22 16L22 11M25 13L23.5 8' },
		{ code: 'act-after', d: 'M13 3C13 21 27 21 27 3' }
	],
	'open-edge': [
		{ code: 'act-before', d: 'M20 1V27' },
		{ code: 'act-zigzag', d: 'M20.5 3L25.5 5L20.5 7.5L24.5 10L21 12' },
		{ code: 'act-hatch', d: 'M15 25L19.5 21M15.5 21.5L19.5 17.5' },
		{ code: 'act-after', d: 'M26 1C26 14 14 13 14 27' }
	],
	mark: [
		{ code: 'act-ink', d: 'M20 5.5a8.5 8.5 0 1 0 0.01 0Z' },
		{ code: 'act-after-fine', d: 'M20 1V27M7 14H33' }
	]
};
