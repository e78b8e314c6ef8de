/**
 * Shapes at which moving, cutting and joining lines goes wrong most easily, each with its remark, as draft files. Round each
 * lie the same quiet edges (`top`, `side`, `hem`, `centre`, clockwise), so that whatever can be asked of one can be asked of all.
 */
export interface NastyShape {
	readonly remark: string;
	readonly file: object;
	/** Alterations for this shape alone, besides those that every shape is put through. */
	readonly more?: readonly object[];
}

type Fields = Readonly<Record<string, unknown>>;

interface EdgeFile {
	readonly id: string;
	readonly kind: 'seam' | 'open';
	readonly path: string;
}

const top = 'M 0 0 L 200 0';
const hem = 'M 200 300 L 0 300';
const centre = 'M 0 300 L 0 0';

const seam = (id: string, path: string): EdgeFile => ({ id, kind: 'seam', path });
const open = (id: string, path: string): EdgeFile => ({ id, kind: 'open', path });

/** A panel with its own centre seam; what it has inside is in the fields. */
function panel(edges: readonly EdgeFile[], fields: Fields = {}) {
	return {
		format: 'pin-to-paper/draft@1',
		name: 'Nasty shape',
		pieces: [
			{
				id: 'panel',
				cut: 'pair',
				edges,
				marks: [{ id: 'bust-point', kind: 'bust-point', at: [90, 130] }],
				grain: [
					[30, 80],
					[30, 250]
				],
				...fields
			}
		],
		seams: [{ id: 'centre', a: [{ edge: 'panel/centre' }], b: 'mirror' }]
	};
}

const withSide = (side: string, fields?: Fields) =>
	panel([open('top', top), seam('side', side), open('hem', hem), seam('centre', centre)], fields);

const straightSide = 'M 200 0 L 200 300';
const slash = (from: object, to: object, gapFrom: number, gapTo: number, keep = 'panel/centre') => ({
	kind: 'spread',
	cuts: [{ piece: 'panel', from, to, gapFrom, gapTo, keep }]
});
const opened = (from: object, to: object) =>
	[
		[8, 8],
		[8, 0],
		[-8, -8],
		[0, -8]
	].map(([gapFrom, gapTo]) => slash(from, to, gapFrom, gapTo));

const hemDart = { id: 'dart', edge: 'hem', from: 90, to: 120, point: [95, 160] };
const waist = {
	level: 'waist',
	line: [
		[5, 200],
		[195, 200]
	]
};

export const nastyShapes: readonly NastyShape[] = [
	{
		remark: 'an edge 2 mm long, shorter than any amount',
		file: panel([
			open('top', 'M 0 0 L 198.8 0'),
			seam('nick', 'M 198.8 0 L 200 1.6'),
			seam('side', 'M 200 1.6 L 200 300'),
			open('hem', hem),
			seam('centre', centre)
		])
	},
	{
		remark: 'corners a third of a thousandth of a millimetre apart, all but coincident',
		file: panel([
			open('top', 'M 0 0 L 199.9997 0'),
			seam('nick', 'M 199.9997 0 L 200 0.0001'),
			seam('side', 'M 200 0.0001 L 200 300'),
			open('hem', hem),
			seam('centre', centre)
		])
	},
	{ remark: 'a cusp that points out', file: withSide('M 200 0 C 280 300 280 0 200 300') },
	{ remark: 'a cusp that points into the cloth', file: withSide('M 200 0 C 120 300 120 0 200 300') },
	{
		remark: 'straight lines drawn as curves whose handles have no length',
		file: withSide('M 200 0 C 200 0 230 150 230 150 C 230 150 200 300 200 300')
	},
	{ remark: 'a curve that starts without a handle', file: withSide('M 200 0 C 200 0 240 160 200 300') },
	{ remark: 'a hollow curve that ends without a handle', file: withSide('M 200 0 C 170 120 200 300 200 300') },
	{
		remark: 'a curve that bends by a ten-thousandth of a millimetre',
		file: withSide('M 200 0 C 200.0001 100 199.9999 200 200 300')
	},
	{
		remark: 'an armhole shaped like an S',
		file: panel(
			[
				open('top', 'M 0 0 L 160 0'),
				open('armhole', 'M 160 0 C 110 70 250 80 200 150'),
				seam('side', 'M 200 150 L 200 300'),
				open('hem', hem),
				seam('centre', centre)
			],
			{ notches: [{ id: 'notch', edge: 'armhole', at: 80 }] }
		)
	},
	{
		remark: 'a neck that is a whole quarter circle, its ends square to both neighbours',
		file: panel([
			open('neck', 'M 0 80 C 44.18278 80 80 44.18278 80 0'),
			open('top', 'M 80 0 L 200 0'),
			seam('side', straightSide),
			open('hem', hem),
			seam('centre', 'M 0 300 L 0 80')
		])
	},
	{
		remark: 'two darts whose mouths touch',
		file: withSide(straightSide, {
			darts: [
				{ id: 'first', edge: 'hem', from: 70, to: 100, point: [115, 160] },
				{ id: 'second', edge: 'hem', from: 100, to: 130, point: [85, 160] }
			]
		})
	},
	{
		remark: 'two darts that end in one point',
		file: withSide(straightSide, {
			darts: [
				{ id: 'first', edge: 'hem', from: 70, to: 100, point: [90, 130] },
				{ id: 'second', edge: 'side', from: 120, to: 150, point: [90, 130] }
			]
		})
	},
	{
		remark: 'a dart whose mouth begins in a corner of the piece',
		file: withSide(straightSide, { darts: [{ id: 'dart', edge: 'hem', from: 0, to: 20, point: [120, 150] }] })
	},
	{
		remark: 'a dart whose point is on the edge across from it',
		file: withSide(straightSide, { darts: [{ id: 'dart', edge: 'hem', from: 90, to: 110, point: [100, 0] }] })
	},
	{
		remark: 'a slash through a dart',
		file: withSide(straightSide, { darts: [hemDart] }),
		more: [
			...opened({ edge: 'panel/centre', fraction: 0.3 }, { edge: 'panel/side', fraction: 0.7 }),
			...opened({ edge: 'panel/top', fraction: 0.5 }, { edge: 'panel/hem', end: 'finish', offset: 95 }),
			...opened({ edge: 'panel/top', fraction: 0.5 }, { dart: 'panel/dart' })
		]
	},
	{
		remark: 'a slash through a notch and along a balance line',
		file: withSide(straightSide, {
			notches: [
				{ id: 'notch', edge: 'side', at: 200 },
				{ id: 'other', edge: 'centre', at: 100 }
			],
			levels: [waist]
		}),
		more: [
			...opened({ edge: 'panel/centre', level: 'waist' }, { edge: 'panel/side', notch: 'notch' }),
			...opened({ edge: 'panel/side', level: 'waist' }, { edge: 'panel/centre', notch: 'other' })
		]
	},
	{
		remark: 'a seam of three edges on one side and one on the other',
		file: {
			format: 'pin-to-paper/draft@1',
			name: 'Nasty shape',
			pieces: [
				...panel([
					open('top', top),
					seam('side', 'M 200 0 C 215 30 215 70 200 100'),
					seam('side-2', 'M 200 100 L 205 120'),
					seam('side-3', 'M 205 120 C 190 180 190 240 200 300'),
					open('hem', hem),
					seam('centre', centre)
				]).pieces,
				{
					id: 'back',
					cut: 'pair',
					edges: [
						open('top', 'M 300 0 L 500 0'),
						seam('centre', 'M 500 0 L 500 300'),
						open('hem', 'M 500 300 L 300 300'),
						seam('side', 'M 300 300 C 310 200 285 100 300 0')
					]
				}
			],
			seams: [
				{
					id: 'side',
					a: [{ edge: 'panel/side' }, { edge: 'panel/side-2' }, { edge: 'panel/side-3' }],
					b: [{ edge: 'back/side', reversed: true }]
				},
				{ id: 'centre', a: [{ edge: 'panel/centre' }], b: 'mirror' }
			]
		}
	},
	{
		remark: 'a piece 3 m long',
		file: panel(
			[
				open('top', top),
				seam('side', 'M 200 0 C 160 400 260 700 300 1000 C 340 1300 420 2600 420 3000'),
				open('hem', 'M 420 3000 C 300 3020 120 3020 0 3000'),
				seam('centre', 'M 0 3000 L 0 0')
			],
			{ darts: [{ id: 'dart', edge: 'top', from: 90, to: 110, point: [100, 140] }] }
		)
	},
	{
		remark: 'a piece drawn anticlockwise',
		file: panel(
			[
				seam('centre', 'M 0 0 L 0 300'),
				open('hem', 'M 0 300 L 200 300'),
				seam('side', 'M 200 300 C 190 200 190 100 200 0'),
				open('top', 'M 200 0 L 0 0')
			],
			{ darts: [{ ...hemDart, from: 80, to: 110 }], notches: [{ id: 'notch', edge: 'side', at: 100 }] }
		)
	},
	{
		remark: 'a point sharper than 3° between two edges',
		file: panel([open('top', 'M 0 0 L 200 0'), seam('side', 'M 200 0 L 3 8'), seam('centre', 'M 3 8 L 0 0')], {
			marks: [{ id: 'bust-point', kind: 'bust-point', at: [50, 3] }],
			grain: [
				[20, 3],
				[60, 3]
			]
		})
	},
	{
		remark: 'a strip 3 mm wide, narrower than the amounts',
		file: panel(
			[
				open('top', 'M 0 0 L 300 0'),
				seam('side', 'M 300 0 L 300 3'),
				open('hem', 'M 300 3 L 0 3'),
				seam('centre', 'M 0 3 L 0 0')
			],
			{
				marks: [{ id: 'bust-point', kind: 'bust-point', at: [100, 1.5] }],
				grain: [
					[20, 1.5],
					[280, 1.5]
				]
			}
		)
	},
	{
		remark: 'an edge that turns back beside itself, a hollow 4 mm wide',
		file: withSide('M 200 0 L 200 148 L 90 148 L 90 152 L 200 152 L 200 300')
	}
];

/** Shapes that the reader refuses, with what it says. */
export const refusedShapes: readonly { readonly remark: string; readonly file: object; readonly says: RegExp }[] = [
	{
		remark: 'coincident corners: an edge without length',
		file: panel([
			open('top', top),
			seam('nick', 'M 200 0 L 200 0.00005'),
			seam('side', 'M 200 0.00005 L 200 300'),
			open('hem', hem),
			seam('centre', centre)
		]),
		says: /has no length: leave it out, or draw it/
	},
	{
		remark: 'two darts whose mouths overlap',
		file: withSide(straightSide, {
			darts: [
				{ id: 'first', edge: 'hem', from: 70, to: 101, point: [115, 160] },
				{ id: 'second', edge: 'hem', from: 100, to: 130, point: [85, 160] }
			]
		}),
		says: /overlap|share|same/
	}
];
