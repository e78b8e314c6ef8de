import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { draftFile, rectangleFile } from '../../../support/drafts.ts';
import { altered, asked, settled } from '../altered.ts';

/** A front 240 × 300 with its bust point 100 mm down; a dart from its waist. */
const front = (dart: object, more: object = {}) =>
	parseDraft(
		draftFile([
			rectangleFile({
				id: 'front',
				name: 'Front',
				width: 240,
				edges: [
					{ id: 'top', name: 'Top', kind: 'open', path: 'M 0 0 L 240 0' },
					{ id: 'side', name: 'Side', kind: 'open', path: 'M 240 0 L 240 300' },
					{ id: 'waist', name: 'Waist', kind: 'open', path: 'M 240 300 L 0 300' },
					{ id: 'centre', name: 'Centre', kind: 'open', path: 'M 0 300 L 0 0' }
				],
				marks: [{ id: 'bust-point', kind: 'bust-point', at: [120, 100] }],
				darts: [{ id: 'waist-dart', name: 'Waist dart', edge: 'waist', ...dart }],
				...more
			})
		])
	);
/** Its mouth symmetrical about the bust point, its point `short` mm below it. */
const aimed = (short: number, intake = 24) =>
	front({ from: 120 - intake / 2, to: 120 + intake / 2, point: [120, 100 + short] });

describe('the legs of a dart', () => {
	it('may differ by 1/16″ and no more', () => {
		const slanting = (aside: number) => front({ from: 108, to: 132, point: [120 + aside, 140] });
		// Legs to (108, 300) and (132, 300) from (120 + x, 140): they differ by about 2 · 12 · x / 160.
		expect(asked('dart-legs', slanting(10))).toEqual([]);
		const [query] = asked('dart-legs', slanting(12));
		const difference = Math.hypot(24, 160) - Math.hypot(0, 160);
		expect(Math.abs(query.figure!)).toBeCloseTo(difference, 9);
		expect(query).toMatchObject({ severity: 'note', where: 'front/waist-dart' });
		expect(query.sentence).toBe('One leg of the waist dart on the front is 1/16″ longer than the other.');
	});

	it('may differ as they do in the base draft', () => {
		const uneven = front({ from: 108, to: 132, point: [150, 140] });
		expect(asked('dart-legs', uneven)).toHaveLength(1);
		expect(asked('dart-legs', uneven, { base: uneven })).toEqual([]);
	});

	it('are settled by truing the dart', () => {
		const draft = front({ from: 108, to: 132, point: [140, 140] });
		const [query] = asked('dart-legs', draft);
		expect(query.settle).toMatchObject([{ id: 'settle-dart-legs-front-waist-dart', kind: 'true-dart', on: 'both' }]);
		expect(asked('dart-legs', settled(draft, query))).toEqual([]);
	});

	it('are asked of in double-pointed darts too', () => {
		const widths = [{ at: 0.5, left: 2, right: 22 }];
		const foldDart = {
			id: 'under-bust',
			ends: [
				[60, 60],
				[60, 160]
			],
			widest: { at: 0.5, intake: 24 },
			widths
		};
		const draft = front({ from: 108, to: 132, point: [120, 140] }, { foldDarts: [foldDart] });
		expect(asked('dart-legs', draft).map(({ where }) => where)).toEqual(['front/under-bust']);
	});
});

describe('the point of a dart', () => {
	// 1 in for a smaller bust to 2 1/2 in for a fuller one (Threads 181, 2015); 1/2 in (Indian agricultural e-course, pattern alteration).
	it.each([
		[12.7, undefined],
		[63.5, undefined],
		[12, 'note'],
		[64, 'note'],
		[76.2, 'note'],
		[77, 'warning'],
		[-1, 'warning']
	])('%d mm short of the bust point is told as %s', (short, severity) => {
		const [query] = asked('dart-point', aimed(short));
		expect(query?.severity).toBe(severity);
		if (query) expect(query.figure).toBeCloseTo(short, 9);
	});

	it('says past where it is past', () => {
		expect(asked('dart-point', aimed(-12.7))[0].sentence).toBe(
			'The waist dart on the front runs 1/2″ past the bust point.'
		);
	});

	it('is not asked of darts that are aimed more than 1″ beside it', () => {
		const beside = front({ from: 58, to: 82, point: [170, 230] });
		expect(asked('dart-point', beside)).toEqual([]);
	});

	it('is settled by bringing it 1″ short', () => {
		for (const short of [-10, 5, 90]) {
			const draft = aimed(short);
			const [query] = asked('dart-point', draft);
			expect(asked('dart-point', settled(draft, query))).toEqual([]);
		}
	});
});

describe('the width of a dart', () => {
	const without = front({ from: 40, to: 60, point: [190, 200] });
	const added = (intake: number) =>
		altered(without, {
			id: 'new',
			kind: 'dart',
			edge: 'front/waist',
			at: { fraction: 0.6 },
			intake,
			point: [96, 140]
		});

	it('is asked of above 1 1/2″ at the waist, and never of a dart that the base draft had', () => {
		expect(asked('dart-wide', added(38), { base: without })).toEqual([]);
		const [query] = asked('dart-wide', added(40), { base: without });
		expect(query).toMatchObject({ severity: 'note', where: 'front/new' });
		expect(query.figure).toBeCloseTo(40, 6);
		expect(asked('dart-wide', added(40), { base: added(40) })).toEqual([]);
		expect(asked('dart-wide', added(40))).toEqual([]);
	});

	it('is settled by making two of it', () => {
		const draft = added(44);
		const [query] = asked('dart-wide', draft, { base: without });
		const after = settled(draft, query);
		expect(asked('dart-wide', after, { base: without })).toEqual([]);
		expect(after.pieces[0].darts).toHaveLength(3);
	});
});
