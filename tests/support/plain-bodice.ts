/**
 * A small bodice in plain shapes whose measures can be worked out by hand: a back and a front sewn at side and shoulder, a
 * centre back seam, an open front. Side seams are straight and plumb, 300 mm; the waist lies 200 mm below the armhole.
 */
import { parseDraft } from '../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../src/lib/engine/draft/types.ts';

export const plainBodiceFile = {
	format: 'pin-to-paper/draft@1',
	name: 'Plain bodice',
	pieces: [
		{
			id: 'front',
			name: 'Front',
			cut: 'pair',
			edges: [
				{ id: 'shoulder', name: 'Shoulder', kind: 'seam', path: 'M 40 0 L 160 0' },
				{ id: 'armhole', name: 'Armhole', kind: 'open', path: 'M 160 0 C 150 60 150 130 250 150' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 250 150 L 250 450' },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 250 450 L 0 450' },
				{ id: 'centre', name: 'Centre front', kind: 'open', path: 'M 0 450 L 0 60', lap: 20 },
				{ id: 'neck', name: 'Neck', kind: 'open', path: 'M 0 60 C 30 60 40 30 40 0' }
			],
			notches: [{ id: 'n1', edge: 'side', at: 100, mate: 'back/n1' }],
			levels: [
				{
					level: 'bust',
					line: [
						[10, 170],
						[240, 170]
					]
				},
				{
					level: 'waist',
					line: [
						[10, 350],
						[240, 350]
					]
				}
			],
			marks: [{ id: 'bust-point', kind: 'bust-point', at: [110, 170] }],
			grain: [
				[60, 100],
				[60, 400]
			]
		},
		{
			id: 'back',
			name: 'Back',
			cut: 'pair',
			edges: [
				{ id: 'shoulder', name: 'Shoulder', kind: 'seam', path: 'M 90 0 L 210 0' },
				{ id: 'neck', name: 'Neck', kind: 'open', path: 'M 210 0 C 212 12 225 20 250 20' },
				{ id: 'centre', name: 'Centre back', kind: 'seam', path: 'M 250 20 L 250 450' },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 250 450 L 0 450' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 0 450 L 0 150' },
				{ id: 'armhole', name: 'Armhole', kind: 'open', path: 'M 0 150 C 80 130 90 60 90 0' }
			],
			notches: [{ id: 'n1', edge: 'side', at: 200, mate: 'front/n1' }],
			levels: [
				{
					level: 'bust',
					line: [
						[10, 170],
						[240, 170]
					]
				},
				{
					level: 'waist',
					line: [
						[10, 350],
						[240, 350]
					]
				}
			],
			grain: [
				[200, 100],
				[200, 400]
			]
		}
	],
	seams: [
		{
			id: 'side',
			name: 'Side seam',
			a: [{ edge: 'front/side', reversed: false }],
			b: [{ edge: 'back/side', reversed: true }],
			ease: 0
		},
		{
			id: 'shoulder',
			name: 'Shoulder seam',
			a: [{ edge: 'front/shoulder', reversed: false }],
			b: [{ edge: 'back/shoulder', reversed: true }],
			ease: 0
		},
		{ id: 'centre-back', name: 'Centre-back seam', a: [{ edge: 'back/centre', reversed: false }], b: 'mirror', ease: 0 }
	]
};

/** A fresh copy each time, so that no test sees what another froze. */
export function plainBodice(): Draft {
	return parseDraft(JSON.parse(JSON.stringify(plainBodiceFile)));
}
