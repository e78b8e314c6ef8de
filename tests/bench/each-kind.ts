import { carry } from '../../src/lib/engine/index.ts';
import { altered, bodice } from './bodice.ts';
import { report } from './report.ts';

const on = (edge: string, fraction: number) => ({ edge, fraction });
const dart = {
	kind: 'dart',
	edge: 'back/hem',
	at: { fraction: 0.5 },
	intake: 12,
	point: { from: on('back/hem', 0.5), in: 120 }
};
const bulge = {
	kind: 'edge',
	edge: 'under-arm/side',
	pins: [
		{ at: { end: 'start' }, move: 0 },
		{ at: { fraction: 0.5 }, move: 6 },
		{ at: { end: 'finish' }, move: 0 }
	]
};

/** With a straight dart to swing, and a side seam whose two sides differ. */
const prepared = carry(
	bodice,
	[dart, bulge].map((one, i) => altered({ id: `prepared-${i}`, on: 'both', ...one })),
	{ queries: false }
).draft;

/** One of each kind, on both halves. */
const kinds: readonly ({ readonly kind: string } & Readonly<Record<string, unknown>>)[] = [
	{
		kind: 'seam',
		seam: 'side',
		pins: [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -4, b: -4 },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		]
	},
	bulge,
	{ ...dart, edge: 'side-back/hem', point: { from: on('side-back/hem', 0.5), in: 120 } },
	{ kind: 'dart-set', dart: 'front/front-dart', intake: 20 },
	{ kind: 'dart-swing', dart: 'back/prepared-0', edge: 'back/side-back', at: { fraction: 0.6 }, share: 0.5 },
	{
		kind: 'fold-dart',
		piece: 'under-arm',
		ends: [0.3, 0.7].map((fraction) => ({ from: on('under-arm/side', fraction), in: 40 })),
		widest: { at: 0.5, intake: 8 }
	},
	{
		kind: 'spread',
		cuts: [
			{
				piece: 'back',
				from: on('back/centre-back', 0.4),
				to: on('back/armhole', 0.5),
				gapFrom: 6,
				gapTo: 6,
				keep: 'back/hem'
			}
		]
	},
	{
		kind: 'bust-spread',
		piece: 'front',
		point: { mark: 'bust-point', toward: on('front/hem', 0.3), short: 0 },
		base: on('front/hem', 0.3),
		hinge: on('front/armhole', 0.5),
		dart: on('front/side', 0.7),
		gap: 10
	},
	{ kind: 'true-seam', seam: 'side', end: 'finish', take: 'half' },
	{ kind: 'true-dart', dart: 'front/front-dart', reach: 40 },
	{ kind: 'smooth', edge: 'front/hem', end: 'finish', reach: 40 },
	{ kind: 'mark', piece: 'front', notch: { id: 'new', at: on('front/side', 0.46) } }
];

export const eachKind = () =>
	report(
		'One alteration of each kind on the bodice, without queries',
		kinds.map(({ kind, ...fields }) => {
			const alteration = altered({ id: 'timed', kind, on: 'both', ...fields });
			const run = () => {
				const carried = carry(prepared, [alteration], { queries: false });
				// What it did is worked out when it is asked for.
				for (const { touched, round, neighbours } of carried.applied) void [touched, round, neighbours];
				return carried;
			};
			const { applied, unplaced } = run();
			if (applied.length !== 1) throw new Error(`The bench’s ${kind} is not carried: ${unplaced[0].sentence}`);
			return { name: kind, run };
		})
	);
