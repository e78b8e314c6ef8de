import { parseDraft } from '../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../src/lib/engine/draft/types.ts';

/** Inches in the sketch below, so that it can be read against a tape. */
const k = 25.4;
const p = (x: number, y: number): string => `${x * k} ${y * k}`;
const C = (ax: number, ay: number, bx: number, by: number, x: number, y: number) =>
	` C ${p(ax, ay)} ${p(bx, by)} ${p(x, y)}`;
const L = (x: number, y: number) => ` L ${p(x, y)}`;
const M = (x: number, y: number) => `M ${p(x, y)}`;
const line = (level: string, y: number, x0: number, x1: number) => ({
	level,
	line: [
		[x0 * k, y * k],
		[x1 * k, y * k]
	]
});
const levels = (x0: number, x1: number) => [
	line('bust', 9.6, x0, x1),
	line('waist', 14.2, x0, x1),
	line('hip', 17.6, x0, x1)
];
const edge = (id: string, name: string, kind: string, path: string, more: object = {}) => ({
	id,
	name,
	kind,
	path,
	...more
});
const at = (x: number, y: number) => [x * k, y * k];

/** A close-fitting jacket of true curves, made up for these tests: back, side back, under-arm, front and a sleeve. */
export const jacketFile = {
	format: 'pin-to-paper/draft@1',
	name: 'Jacket for the drawing',
	pieces: [
		{
			id: 'back',
			name: 'Back',
			cut: 'pair',
			side: 'both',
			edges: [
				edge('neck', 'Neck', 'open', M(0.2, 1) + C(1, 1, 1.8, 0.7, 2.3, 0)),
				edge('shoulder', 'Shoulder', 'seam', M(2.3, 0) + L(5.6, 1.6)),
				edge('armhole', 'Armhole', 'seam', M(5.6, 1.6) + C(5.3, 2.6, 5.1, 3.6, 5.3, 4.6)),
				edge(
					'side-back',
					'Side-back seam',
					'seam',
					M(5.3, 4.6) + C(4.4, 7.5, 2.6, 10.5, 2.4, 14.2) + C(2.4, 15.8, 2.9, 17.5, 3.6, 19)
				),
				edge('hem', 'Hem', 'open', M(3.6, 19) + C(2.5, 19.2, 1.4, 19.25, 0.3, 19.2), { turn: true }),
				edge(
					'centre-back',
					'Centre-back seam',
					'seam',
					M(0.3, 19.2) + C(0.45, 17, 0.7, 16, 0.7, 14.2) + C(0.7, 10.5, 0.2, 7, 0.2, 1)
				)
			],
			notches: [
				{ id: 'n1', edge: 'side-back', at: 120, mate: 'side-back/n1' },
				{ id: 'n2', edge: 'side-back', at: 250, mate: 'side-back/n2' },
				{ id: 's1', edge: 'shoulder', at: 46, mate: 'front/s1' }
			],
			levels: levels(1, 2.2),
			grain: [at(1.35, 4), at(1.35, 12)]
		},
		{
			id: 'side-back',
			name: 'Side back',
			cut: 'pair',
			side: 'both',
			edges: [
				edge('armhole', 'Armhole', 'seam', M(2.8, 6) + C(3, 6.8, 3.3, 7.3, 3.7, 7.7)),
				edge(
					'under-arm-back',
					'Under-arm seam',
					'seam',
					M(3.7, 7.7) + C(3.5, 10, 3.2, 12, 3.2, 14.2) + C(3.2, 16, 3.5, 17.6, 3.9, 19)
				),
				edge('hem', 'Hem', 'open', M(3.9, 19) + C(2.6, 19.2, 1.4, 19.2, 0.2, 19.05), { turn: true }),
				edge(
					'side-back',
					'Side-back seam',
					'seam',
					M(0.2, 19.05) + C(0.7, 17.5, 1, 16, 1, 14.2) + C(1, 11, 0, 9.5, 2.8, 6)
				)
			],
			notches: [
				{ id: 'n2', edge: 'side-back', at: 130, mate: 'back/n2' },
				{ id: 'n1', edge: 'side-back', at: 260, mate: 'back/n1' },
				{ id: 'u1', edge: 'under-arm-back', at: 100, mate: 'under-arm/u1' }
			],
			levels: levels(1.4, 3),
			grain: [at(2.2, 9.9), at(2.2, 13.4)]
		},
		{
			id: 'under-arm',
			name: 'Under-arm',
			cut: 'pair',
			side: 'both',
			edges: [
				edge('armhole', 'Armhole', 'seam', M(0.5, 7.4) + C(1.4, 8.6, 2.6, 8.6, 3.7, 8.2)),
				edge(
					'side',
					'Side seam',
					'seam',
					M(3.7, 8.2) + C(3.7, 10.5, 3.4, 12, 3.4, 14.2) + C(3.4, 16, 3.9, 17.6, 4.6, 19.2)
				),
				edge('hem', 'Hem', 'open', M(4.6, 19.2) + C(3, 19.3, 1.5, 19.2, 0, 19), { turn: true }),
				edge(
					'under-arm-back',
					'Under-arm seam',
					'seam',
					M(0, 19) + C(0.5, 17.4, 0.8, 16, 0.8, 14.2) + C(0.8, 12, 0.6, 9.5, 0.5, 7.4)
				)
			],
			notches: [
				{ id: 'u1', edge: 'under-arm-back', at: 190, mate: 'side-back/u1' },
				{ id: 'm1', edge: 'side', at: 60, mate: 'front/m1' },
				{ id: 'm2', edge: 'side', at: 118, mate: 'front/m2' },
				{ id: 'm3', edge: 'side', at: 190, mate: 'front/m3' }
			],
			levels: levels(1, 3),
			grain: [at(1.9, 9.9), at(1.9, 13.6)]
		},
		{
			id: 'front',
			name: 'Front',
			cut: 'pair',
			side: 'both',
			edges: [
				edge('armhole', 'Armhole', 'seam', M(1.4, 8.2) + C(3.2, 7.8, 3.9, 5, 3.4, 2)),
				edge('shoulder', 'Shoulder', 'seam', M(3.4, 2) + L(7.4, 0.6)),
				edge('neck', 'Neck', 'open', M(7.4, 0.6) + C(7.6, 3, 8.9, 4, 10.6, 4)),
				edge('front', 'Front edge', 'open', M(10.6, 4) + C(11.4, 9, 11.5, 14, 11.1, 20.4), { lap: 19.05 }),
				edge('hem', 'Hem', 'open', M(11.1, 20.4) + C(7.5, 20, 4, 19.6, 0.4, 19.2), { turn: true }),
				edge(
					'side',
					'Side seam',
					'seam',
					M(0.4, 19.2) + C(1.1, 17.6, 1.6, 16, 1.6, 14.2) + C(1.6, 12, 1.4, 10.5, 1.4, 8.2)
				)
			],
			foldDarts: [
				{
					id: 'front-dart',
					name: 'Front dart',
					ends: [at(5.6, 10.6), at(5.4, 18.6)],
					widest: { at: 0.45, intake: 20 },
					widths: [
						{ at: 0.2, left: 4, right: 4 },
						{ at: 0.45, left: 10, right: 10 },
						{ at: 0.8, left: 4, right: 4 }
					]
				},
				{
					id: 'second-dart',
					name: 'Second dart',
					ends: [at(7.5, 10.9), at(7.5, 18.9)],
					widest: { at: 0.42, intake: 20 },
					widths: [{ at: 0.42, left: 10, right: 10 }]
				}
			],
			notches: [
				{ id: 'm3', edge: 'side', at: 95, mate: 'under-arm/m3' },
				{ id: 'm2', edge: 'side', at: 167, mate: 'under-arm/m2' },
				{ id: 'm1', edge: 'side', at: 225, mate: 'under-arm/m1' },
				{ id: 's1', edge: 'shoulder', at: 50, mate: 'back/s1' }
			],
			levels: levels(3, 8),
			marks: [{ id: 'bust-point', kind: 'bust-point', at: at(6.2, 9.6) }],
			grain: [at(8.9, 6), at(8.9, 12)]
		},
		{
			id: 'sleeve',
			name: 'Top sleeve',
			cut: 'pair',
			side: 'both',
			limb: true,
			edges: [
				edge('head', 'Sleeve head', 'seam', M(0, 6) + C(0.6, 2, 2, 0, 3.9, 0) + C(5.8, 0, 7, 2, 7.6, 4.6)),
				edge('fore', 'Fore sleeve seam', 'seam', M(7.6, 4.6) + C(6.9, 9, 6.3, 14, 6.2, 22)),
				edge('wrist', 'Wrist', 'open', M(6.2, 22) + L(1.9, 23.4), { turn: true }),
				edge('hind', 'Hind sleeve seam', 'seam', M(1.9, 23.4) + C(0.6, 18, -0.6, 13, 0, 6))
			],
			notches: [{ id: 'h1', edge: 'head', at: 170 }],
			levels: [line('elbow', 13.4, 1.5, 5.5)],
			grain: [at(3.8, 6), at(3.8, 16)]
		}
	],
	seams: [
		{
			id: 'side-back',
			name: 'Side-back seam',
			a: [{ edge: 'back/side-back' }],
			b: [{ edge: 'side-back/side-back', reversed: true }]
		},
		{
			id: 'under-arm-back',
			name: 'Under-arm seam',
			a: [{ edge: 'side-back/under-arm-back' }],
			b: [{ edge: 'under-arm/under-arm-back', reversed: true }]
		},
		{ id: 'side', name: 'Side seam', a: [{ edge: 'under-arm/side' }], b: [{ edge: 'front/side', reversed: true }] },
		{
			id: 'shoulder',
			name: 'Shoulder seam',
			a: [{ edge: 'back/shoulder' }],
			b: [{ edge: 'front/shoulder', reversed: true }]
		},
		{ id: 'centre-back', name: 'Centre-back seam', a: [{ edge: 'back/centre-back' }], b: 'mirror' }
	]
};

export const jacket: Draft = parseDraft(jacketFile);
