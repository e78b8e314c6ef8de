import { parseDraft } from '../../../src/lib/engine/index.ts';
import type { Draft } from '../../../src/lib/engine/index.ts';

/** A small draft with one of everything that is printed; invented for these tests, no garment. */
export const printedDraft: Draft = parseDraft({
	format: 'pin-to-paper/draft@1',
	name: 'Under-bodice for printing',
	pieces: [
		{
			id: 'back',
			name: 'Back',
			cut: 'fold',
			edges: [
				{ id: 'neck', name: 'Neck', kind: 'open', path: 'M 0 20 C 30 20 58 16 70 0' },
				{ id: 'shoulder', name: 'Shoulder', kind: 'seam', path: 'M 70 0 L 175 45' },
				{ id: 'armhole', name: 'Armhole', kind: 'seam', path: 'M 175 45 C 150 100 152 165 190 190' },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 190 190 C 172 250 165 300 165 330 L 172 400' },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 172 400 C 110 408 50 405 0 405', turn: true },
				{ id: 'centre', name: 'Centre back', kind: 'fold', path: 'M 0 405 L 0 20' }
			],
			notches: [
				{ id: 'n1', edge: 'side', at: 60, mate: 'front/n1' },
				{ id: 'n2', edge: 'side', at: 142, mate: 'front/n2' },
				{ id: 'n3', edge: 'side', at: 190, mate: 'front/n3' },
				{ id: 'a1', edge: 'armhole', at: 90 }
			],
			pleats: [{ id: 'p1', edge: 'hem', from: 60, to: 90, turned: 20 }],
			levels: [
				{
					level: 'waist',
					line: [
						[20, 330],
						[140, 330]
					]
				}
			],
			grain: [
				[60, 120],
				[60, 280]
			]
		},
		{
			id: 'front',
			name: 'Front',
			cut: 'pair',
			edges: [
				{ id: 'shoulder', name: 'Shoulder', kind: 'seam', path: 'M 20 45 L 122 0' },
				{ id: 'neck', name: 'Neck', kind: 'open', path: 'M 122 0 C 126 60 160 85 200 90' },
				{ id: 'front', name: 'Front edge', kind: 'open', path: 'M 200 90 C 214 180 190 300 205 420', lap: 18 },
				{ id: 'hem', name: 'Hem', kind: 'open', path: 'M 205 420 C 150 415 80 410 30 400', turn: true },
				{ id: 'side', name: 'Side', kind: 'seam', path: 'M 30 400 L 36 330 C 36 300 22 250 0 190' },
				{ id: 'armhole', name: 'Armhole', kind: 'seam', path: 'M 0 190 C 45 175 52 100 20 45' }
			],
			darts: [{ id: 'waist-dart', edge: 'hem', from: 78, to: 102, point: [118, 232] }],
			foldDarts: [
				{
					id: 'side-dart',
					ends: [
						[72, 252],
						[76, 386]
					],
					widest: { at: 0.55, intake: 12 }
				}
			],
			notches: [
				{ id: 'n3', edge: 'side', at: 21, mate: 'back/n3' },
				{ id: 'n2', edge: 'side', at: 70, mate: 'back/n2' },
				{ id: 'n1', edge: 'side', at: 154, mate: 'back/n1' },
				{ id: 'a1', edge: 'armhole', at: 70 }
			],
			levels: [
				{
					level: 'bust',
					line: [
						[30, 205],
						[180, 205]
					]
				},
				{
					level: 'waist',
					line: [
						[60, 330],
						[180, 330]
					]
				}
			],
			marks: [
				{ id: 'bust-point', kind: 'bust-point', at: [112, 205] },
				{ id: 'b1', kind: 'button', at: [186, 150] },
				{ id: 'b2', kind: 'button', at: [184, 180] },
				{ id: 'h1', kind: 'buttonhole', at: [186, 290] },
				{ id: 'h2', kind: 'buttonhole', at: [187, 320], to: [167, 320] }
			],
			grain: [
				[145, 215],
				[145, 320]
			]
		},
		{
			id: 'band',
			name: 'Waist band',
			cut: 'single',
			edges: [
				{ id: 'top', name: 'Top', kind: 'seam', path: 'M 0 0 L 320 0' },
				{ id: 'end', name: 'End', kind: 'open', path: 'M 320 0 L 320 24' },
				{ id: 'foot', name: 'Foot', kind: 'seam', path: 'M 320 24 L 0 24' },
				{ id: 'start', name: 'Start', kind: 'open', path: 'M 0 24 L 0 0' }
			],
			grain: [
				[100, 17],
				[220, 17]
			]
		}
	],
	seams: [
		{
			id: 'side',
			name: 'Side seam',
			a: [{ edge: 'back/side', reversed: false }],
			b: [{ edge: 'front/side', reversed: true }],
			ease: 0
		},
		{
			id: 'shoulder',
			name: 'Shoulder seam',
			a: [{ edge: 'back/shoulder', reversed: false }],
			b: [{ edge: 'front/shoulder', reversed: true }],
			ease: 0
		}
	]
});

/** The same with the front divided, its left half standing in the coordinates of the right. */
export const dividedDraft: Draft = {
	...printedDraft,
	pieces: printedDraft.pieces.flatMap((piece) =>
		piece.id === 'front'
			? (['right', 'left'] as const).map((side) => ({ ...piece, id: `front@${side}`, side }))
			: [piece]
	),
	seams: []
};
