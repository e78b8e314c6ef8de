import demoFile from '../../../src/lib/intake/demo-draft.json';
import { parseDraft } from '../../../src/lib/engine/index.ts';
import type { Draft } from '../../../src/lib/engine/index.ts';

/** The demo's jacket: curves, two darts, a sleeve in its armhole. */
export const jacket: Draft = parseDraft(demoFile);

export const inch = 25.4;

const level = (x0: number, x1: number) => [
	{ level: 'waist', line: [[x0, 200] as [number, number], [x1, 200] as [number, number]] }
];

/**
 * Two pieces of plain rectangles with a sleeve, so that everything can be worked out by hand: armholes lie level along the top,
 * 200 mm each; side seams are plumb, 400 mm; the sleeve head is 420 mm: 20 mm of fullness. The left end of the front's top and
 * the right end of the back's are the shoulder points, which nothing is sewn to.
 */
export const boxes: Draft = parseDraft({
	format: 'pin-to-paper/draft@1',
	name: 'Boxes',
	pieces: [
		{
			id: 'front',
			name: 'Front',
			cut: 'pair',
			edges: [
				{ id: 'armhole', name: 'Armhole', kind: 'seam', path: 'M 0 0 L 200 0' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 200 0 L 200 400' },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 200 400 L 0 400' },
				{ id: 'front-edge', name: 'Front edge', kind: 'open', path: 'M 0 400 L 0 0' }
			],
			notches: [{ id: 'n1', edge: 'side', at: 100, mate: 'back/n1' }],
			levels: level(10, 190),
			marks: [{ id: 'bust-point', kind: 'bust-point', at: [80, 120] }]
		},
		{
			id: 'back',
			name: 'Back',
			cut: 'pair',
			edges: [
				{ id: 'armhole', name: 'Armhole', kind: 'seam', path: 'M 0 0 L 200 0' },
				{ id: 'centre', name: 'Centre back', kind: 'seam', path: 'M 200 0 L 200 400' },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 200 400 L 0 400' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 0 400 L 0 0' }
			],
			notches: [{ id: 'n1', edge: 'side', at: 300, mate: 'front/n1' }],
			darts: [{ id: 'waist-dart', edge: 'hem', from: 90, to: 110, point: [100, 150] }],
			levels: level(10, 190)
		},
		{
			id: 'sleeve',
			name: 'Sleeve',
			cut: 'pair',
			limb: true,
			edges: [
				{ id: 'head', name: 'Sleeve head', kind: 'seam', path: 'M 0 0 L 420 0' },
				{ id: 'fore', name: 'Fore seam', kind: 'seam', path: 'M 420 0 L 420 600' },
				{ id: 'wrist', name: 'Wrist', kind: 'open', path: 'M 420 600 L 0 600' },
				{ id: 'hind', name: 'Hind seam', kind: 'seam', path: 'M 0 600 L 0 0' }
			]
		}
	],
	seams: [
		{ id: 'side', name: 'Side seam', a: [{ edge: 'front/side' }], b: [{ edge: 'back/side', reversed: true }] },
		{ id: 'centre-back', name: 'Centre-back seam', a: [{ edge: 'back/centre' }], b: 'mirror' },
		{
			id: 'armhole',
			name: 'Armhole seam',
			a: [{ edge: 'front/armhole' }, { edge: 'back/armhole' }],
			b: [{ edge: 'sleeve/head' }],
			ease: 20
		},
		{ id: 'sleeve', name: 'Sleeve seam', a: [{ edge: 'sleeve/fore' }], b: [{ edge: 'sleeve/hind', reversed: true }] }
	]
});
