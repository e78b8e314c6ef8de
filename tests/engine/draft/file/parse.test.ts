import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DraftError, type FileProblem } from '../../../../src/lib/engine/draft/file/draft-error.ts';
import { parseDraft, parseDraftText } from '../../../../src/lib/engine/draft/file/parse.ts';
import { pathEnd, pathStart, pointAt } from '../../../../src/lib/engine/geometry/path.ts';
import { distance } from '../../../../src/lib/engine/geometry/point.ts';
import { pieceArea } from '../../../../src/lib/engine/draft/outline.ts';
import { stitchedLength } from '../../../../src/lib/engine/draft/length.ts';
import { bodiceFile, draftFile, rectangleFile } from '../../../support/drafts.ts';

function problemsOf(read: () => unknown): readonly FileProblem[] {
	try {
		read();
	} catch (error) {
		if (error instanceof DraftError) return error.problems;
		throw error;
	}
	return [];
}

const refused = (file: unknown) => problemsOf(() => parseDraft(file));

/** The only problem of a one-piece file with some of the rectangle's fields replaced. */
function onePiece(fields: Readonly<Record<string, unknown>>): FileProblem {
	const problems = refused(draftFile([rectangleFile(fields)]));
	expect(problems).toHaveLength(1);
	return problems[0];
}

function edges(change: Readonly<Record<string, Readonly<Record<string, unknown>>>>) {
	return rectangleFile().edges.map((edge) => ({ ...edge, ...change[edge.id] }));
}

describe('what a file need not say', () => {
	const draft = parseDraft({
		format: 'pin-to-paper/draft@1',
		pieces: [rectangleFile({ id: 'side-back' })],
		seams: [{ id: 'centre-seam', a: [{ edge: 'side-back/centre' }], b: 'mirror' }]
	});

	it('is filled in', () => {
		expect(draft.name).toBe('Draft');
		expect(draft.pieces[0]).toMatchObject({
			name: 'Side back',
			side: 'both',
			limb: false,
			darts: [],
			foldDarts: [],
			notches: [],
			levels: [],
			marks: [],
			pleats: []
		});
		expect(draft.pieces[0].edges[0]).toMatchObject({ name: 'Top', lap: 0, turn: false });
		expect(draft.seams[0]).toMatchObject({ name: 'Centre seam', ease: 0, a: [{ reversed: false }] });
		expect('grain' in draft.pieces[0]).toBe(false);
	});

	it('may be the seams, and the ids of pleats', () => {
		const pleat = { edge: 'hem', from: 10, to: 20, turned: 5 };
		const mark = { id: 'pleat-1', kind: 'point', at: [5, 5] };
		const file = draftFile([rectangleFile({ pleats: [pleat, { ...pleat, from: 40, to: 60 }], marks: [mark] })]);
		expect(parseDraft(file).pieces[0].pleats.map(({ id }) => id)).toEqual(['pleat-2', 'pleat-3']);
	});

	it('does not change the file', () => {
		const file = structuredClone(bodiceFile);
		parseDraft(file);
		expect(file).toEqual(bodiceFile);
	});
});

describe('corners', () => {
	it('that meet within 0.0001 mm become one to the bit', () => {
		const file = draftFile([
			rectangleFile({ edges: edges({ side: { path: 'M 200.00005 0.00004 L 200 299.99995' } }) })
		]);
		const [top, side, hem] = parseDraft(file).pieces[0].edges;
		expect(pathStart(side.path)).toEqual(pathEnd(top.path));
		expect(pathStart(hem.path)).toEqual(pathEnd(side.path));
		expect(pathEnd(side.path)).toEqual([200, 299.99995]);
	});

	it('that do not meet are named with their gap, every one', () => {
		const problems = refused(draftFile([rectangleFile({ edges: edges({ side: { path: 'M 201 0 L 200 299.5' } }) })]));
		expect(problems).toEqual([
			{
				path: 'pieces[0].edges[1].path',
				message:
					'The outline does not close: top ends at (200, 0), side starts at (201, 0), a gap of 1 mm. They should meet.'
			},
			{
				path: 'pieces[0].edges[2].path',
				message:
					'The outline does not close: side ends at (200, 299.5), hem starts at (200, 300), a gap of 0.5 mm. They should meet.'
			}
		]);
	});
});

describe('an outline drawn anticlockwise', () => {
	// The rectangle of 200 by 300 the other way round: centre down, hem right, side up, top left.
	const turned = parseDraft(
		draftFile(
			[
				{
					id: 'panel',
					cut: 'pair',
					edges: [
						{ id: 'centre', kind: 'seam', path: 'M 0 0 L 0 300' },
						{ id: 'hem', kind: 'open', path: 'M 0 300 L 200 300' },
						{ id: 'side', kind: 'seam', path: 'M 200 300 L 200 0' },
						{ id: 'top', kind: 'open', path: 'M 200 0 L 0 0' }
					],
					darts: [{ id: 'd', edge: 'hem', from: 30, to: 50, point: [40, 200], press: 'from' }],
					notches: [{ id: 'n', edge: 'side', at: 100 }],
					pleats: [{ id: 'p', edge: 'top', from: 20, to: 50, turned: 10 }]
				},
				rectangleFile({ id: 'other' })
			],
			[
				{ id: 's', a: [{ edge: 'panel/side', reversed: true }], b: [{ edge: 'other/side' }] },
				{ id: 'c', a: [{ edge: 'panel/centre' }], b: [{ edge: 'other/centre', reversed: true }] }
			]
		)
	);
	const [panel, other] = turned.pieces;

	it('is turned clockwise: edges in reverse order, each the other way', () => {
		expect(pieceArea(turned, 'panel')).toBeCloseTo(60_000, 6);
		expect(panel.edges.map(({ id }) => id)).toEqual(['top', 'side', 'hem', 'centre']);
		expect(panel.edges.map(({ path }) => path)).toEqual(other.edges.map(({ path }) => path));
	});

	it('keeps darts, notches and pleats where they lie', () => {
		expect(panel.darts[0]).toMatchObject({ from: 150, to: 170, press: 'to' });
		expect(panel.notches[0].at).toBe(200);
		expect(panel.pleats[0]).toMatchObject({ from: 150, to: 180 });
		expect(pointAt(panel.edges[1].path, 200)).toEqual([200, 200]);
	});

	it('has its seams walked as the file says: only the flags of its own edges turn', () => {
		expect(turned.seams.map(({ a, b }) => [a, b])).toEqual([
			[[{ edge: 'panel/side', reversed: false }], [{ edge: 'other/side', reversed: false }]],
			[[{ edge: 'panel/centre', reversed: true }], [{ edge: 'other/centre', reversed: true }]]
		]);
	});

	it('gives, for any outline turned round by hand, the same lengths', () => {
		const bodice = parseDraft(bodiceFile);
		const flip = (path: string) => {
			const numbers = path.match(/[\d.]+/g)!.map(Number);
			const letters = path.match(/[MLC]/g)!.slice(1).reverse();
			const points: number[][] = [];
			for (let i = 0; i < numbers.length; i += 2) points.unshift([numbers[i], numbers[i + 1]]);
			let text = `M ${points.shift()!.join(' ')}`;
			for (const letter of letters)
				text += ` ${letter} ${points
					.splice(0, letter === 'C' ? 3 : 1)
					.flat()
					.join(' ')}`;
			return text;
		};
		const back = bodiceFile.pieces[0];
		const lengths = Object.fromEntries(back.edges.map(({ id }) => [id, stitchedLength(bodice, `back/${id}`)]));
		const file = {
			...back,
			edges: back.edges.map((edge) => ({ ...edge, path: flip(edge.path) })).reverse(),
			darts: back.darts!.map((dart) => ({ ...dart, from: 195 - dart.to, to: 195 - dart.from })),
			notches: []
		};
		const draft = parseDraft(draftFile([file]));
		for (const { id } of back.edges) expect(stitchedLength(draft, `back/${id}`)).toBeCloseTo(lengths[id], 9);
		draft.pieces[0].edges.forEach((edge, i) => {
			const before = bodice.pieces[0].edges[i];
			expect(edge.id).toBe(before.id);
			expect(distance(pathStart(edge.path), pathStart(before.path))).toBe(0);
		});
	});
});

describe('a file is refused', () => {
	const dart = { id: 'd', edge: 'hem', from: 40, to: 60, point: [150, 200] };
	const tuck = {
		id: 'f',
		ends: [
			[50, 50],
			[50, 150]
		],
		widest: { at: 0.5, intake: 8 }
	};

	it.each<[string, Readonly<Record<string, unknown>>, string, RegExp]>([
		['a cut nobody knows', { cut: 'bias' }, 'cut', /"cut" should be "pair" or "fold" or "single", not "bias"/],
		['an id with a space', { id: 'side back' }, 'id', /"side back" is no id: use letters/],
		['an id with a slash', { id: 'a/b' }, 'id', /no id/],
		['an id with a side of its own making', { id: 'a@middle' }, 'id', /no id/],
		['an id without end', { id: 'a'.repeat(201) }, 'id', /no id/],
		['a name without end', { name: 'a'.repeat(201) }, 'name', /most is 200 letters/],
		['a name that is no text', { name: 7 }, 'name', /"name" should be text, not 7/],
		['a field nobody knows', { seamAllowance: 10 }, '', /knows no field "seamAllowance" here/],
		['a side for a pair', { side: 'left' }, 'side', /left side alone is cut "single", not "pair"/],
		[
			'a grain of no length',
			{
				grain: [
					[1, 2],
					[1, 2]
				]
			},
			'grain',
			/should lie apart/
		],
		['half a grain line', { grain: [[1, 2]] }, 'grain', /Two are needed/],
		['an edge without a kind', { edges: edges({ top: { kind: undefined } }) }, 'edges[0].kind', /"kind" is missing/],
		[
			'an edge of no length',
			{
				edges: [...edges({}), { id: 'nothing', kind: 'open', path: 'M 0 0 L 0 0' }]
			},
			'edges[4].path',
			/nothing has no length/
		],
		[
			'relative path data',
			{ edges: edges({ top: { path: 'M 0 0 l 200 0' } }) },
			'edges[0].path',
			/absolute commands M, L and C/
		],
		[
			'path data with 1e400',
			{ edges: edges({ top: { path: 'M 0 0 L 1e400 0' } }) },
			'edges[0].path',
			/finite|too large/
		],
		[
			'path data off the table',
			{
				edges: edges({ top: { path: 'M 0 0 L 3e5 0 L 200 0' } })
			},
			'edges[0].path',
			/nothing lies farther out than 100000 mm/
		],
		['a lap on a seam', { edges: edges({ side: { lap: 5 } }) }, 'edges[1].lap', /Only an open edge laps/],
		[
			'a fold on a pair piece',
			{ edges: edges({ centre: { kind: 'fold' } }) },
			'edges[3].kind',
			/centre is a fold, but the piece is cut "pair"/
		],
		[
			'a piece on the fold without one',
			{ cut: 'fold' },
			'edges',
			/needs one edge of the kind "fold"; this one has none/
		],
		[
			'two folds',
			{
				cut: 'fold',
				edges: edges({ centre: { kind: 'fold' }, side: { kind: 'fold' } })
			},
			'edges',
			/has one edge of the kind "fold"; this one has 2/
		],
		[
			'a fold that bends',
			{
				cut: 'fold',
				edges: edges({ centre: { kind: 'fold', path: 'M 0 300 C 3 200 0 100 0 0' } })
			},
			'edges[3].path',
			/A fold is straight; centre bends/
		],
		[
			'a dart on an edge that is not there',
			{ darts: [{ ...dart, edge: 'waist' }] },
			'darts[0].edge',
			/no edge "waist" on this piece\. It has top, side, hem, centre/
		],
		[
			'a mouth that ends before it begins',
			{ darts: [{ ...dart, from: 60, to: 40 }] },
			'darts[0].to',
			/"to" should lie beyond "from"/
		],
		[
			'a mouth off its edge',
			{ darts: [{ ...dart, to: 260 }] },
			'darts[0].to',
			/260 mm is not on hem, which runs from 0 to 200 mm/
		],
		['a mouth before its edge', { darts: [{ ...dart, from: -1 }] }, 'darts[0].from', /-1 mm is not on hem/],
		[
			'a dart pointing out of the piece',
			{ darts: [{ ...dart, point: [150, 320] }] },
			'darts[0].point',
			/outside the piece/
		],
		[
			'two mouths in one another',
			{ darts: [dart, { ...dart, id: 'e', from: 50, to: 70 }] },
			'darts[1]',
			/overlaps pieces\[0\]\.darts\[0\], which reaches 60 mm along hem/
		],
		[
			'a pleat in a mouth',
			{ darts: [dart], pleats: [{ edge: 'hem', from: 55, to: 90, turned: 4 }] },
			'pleats[0]',
			/overlaps/
		],
		[
			'a pleat of more cloth than there is',
			{ pleats: [{ edge: 'hem', from: 55, to: 90, turned: 35 }] },
			'pleats[0].turned',
			/less than the 35 mm/
		],
		[
			'widths out of order',
			{
				darts: [
					{
						...dart,
						widths: [
							{ at: 0.5, left: 1, right: 1 },
							{ at: 0.3, left: 1, right: 1 }
						]
					}
				]
			},
			'darts[0].widths[1].at',
			/each fraction above the one before/
		],
		[
			'a width at the point',
			{ darts: [{ ...dart, widths: [{ at: 1, left: 1, right: 1 }] }] },
			'darts[0].widths[0].at',
			/above 0 and below 1/
		],
		[
			'a half-width below nothing',
			{ foldDarts: [{ ...tuck, widths: [{ at: 0.5, left: -1, right: 1 }] }] },
			'foldDarts[0].widths[0].left',
			/0 or more/
		],
		[
			'a fold dart of one point',
			{
				foldDarts: [
					{
						...tuck,
						ends: [
							[1, 1],
							[1, 1]
						]
					}
				]
			},
			'foldDarts[0].ends',
			/lie apart/
		],
		[
			'a fold dart that takes nothing',
			{ foldDarts: [{ ...tuck, widest: { at: 0.5, intake: 0 } }] },
			'foldDarts[0].widest.intake',
			/more than 0/
		],
		[
			'a fold dart widest at its end',
			{ foldDarts: [{ ...tuck, widest: { at: 0, intake: 8 } }] },
			'foldDarts[0].widest.at',
			/between its ends/
		],
		[
			'a notch off its edge',
			{ notches: [{ id: 'n', edge: 'top', at: 200.01 }] },
			'notches[0].at',
			/200\.01 mm is not on top, which runs from 0 to 200 mm/
		],
		[
			'a notch on an edge that is not there',
			{ notches: [{ id: 'n', edge: 'brim', at: 1 }] },
			'notches[0].edge',
			/no edge "brim"/
		],
		[
			'a notch that meets none',
			{ notches: [{ id: 'n', edge: 'top', at: 1, mate: 'panel/m' }] },
			'notches[0].mate',
			/no notch "m" on panel\. It has n/
		],
		[
			'a notch that meets a piece that is not there',
			{ notches: [{ id: 'n', edge: 'top', at: 1, mate: 'hood/m' }] },
			'notches[0].mate',
			/no piece "hood"/
		],
		[
			'a mate without its piece',
			{ notches: [{ id: 'n', edge: 'top', at: 1, mate: 'm' }] },
			'notches[0].mate',
			/"m" should name piece and id with a slash/
		],
		[
			'a level on an edge that is not there',
			{ levels: [{ level: 'waist', edge: 'waist' }] },
			'levels[0].edge',
			/no edge "waist"/
		],
		[
			'a level that is both',
			{
				levels: [
					{
						level: 'waist',
						edge: 'hem',
						line: [
							[0, 0],
							[9, 9]
						]
					}
				]
			},
			'levels[0]',
			/one of the two/
		],
		['a level that is neither', { levels: [{ level: 'waist' }] }, 'levels[0]', /one of the two/],
		['a level of one point', { levels: [{ level: 'waist', line: [[0, 0]] }] }, 'levels[0].line', /two points or more/],
		[
			'a level that stands still',
			{
				levels: [
					{
						level: 'waist',
						line: [
							[0, 0],
							[0, 0]
						]
					}
				]
			},
			'levels[0].line[1]',
			/the one before it again/
		],
		[
			'a level twice on an edge',
			{
				levels: [
					{ level: 'w', edge: 'hem' },
					{ level: 'w', edge: 'hem' }
				]
			},
			'levels[1]',
			/already on hem/
		],
		[
			'a mark nobody knows',
			{ marks: [{ id: 'm', kind: 'star', at: [1, 1] }] },
			'marks[0].kind',
			/"bust-point" or "button"/
		],
		[
			'a mark at no number',
			{ marks: [{ id: 'm', kind: 'point', at: [1, NaN] }] },
			'marks[0].at[1]',
			/a finite number, not NaN/
		],
		[
			'a mark at an infinite number',
			{ marks: [{ id: 'm', kind: 'point', at: [1, Infinity] }] },
			'marks[0].at[1]',
			/a finite number, not Infinity/
		],
		[
			'a mark in three dimensions',
			{ marks: [{ id: 'm', kind: 'point', at: [1, 2, 3] }] },
			'marks[0].at',
			/two numbers/
		],
		[
			'one id for two things',
			{ marks: [{ id: 'hem', kind: 'point', at: [1, 2] }] },
			'marks[0].id',
			/"hem" is already the id of pieces\[0\]\.edges\[2\]/
		],
		['a list that is none', { darts: {} }, 'darts', /"darts" should be a list, not an object/],
		['a list without end', { marks: Array(201).fill(0) }, 'marks', /too long: the most is 200/],
		[
			'an outline round no cloth',
			{
				edges: [
					{ id: 'there', kind: 'open', path: 'M 0 0 L 100 0' },
					{ id: 'back', kind: 'open', path: 'M 100 0 L 0 0' }
				]
			},
			'edges',
			/encloses no cloth/
		],
		['no edges', { edges: [] }, 'edges', /needs edges/]
	])('for %s', (_, fields, path, sentence) => {
		const problem = onePiece(fields);
		expect(problem.path).toBe(path === '' ? 'pieces[0]' : `pieces[0].${path}`);
		expect(problem.message).toMatch(sentence);
	});

	it.each<[string, readonly unknown[], string, RegExp]>([
		[
			'an unknown piece',
			[{ id: 's', a: [{ edge: 'hood/side' }], b: 'mirror' }],
			'seams[0].a[0].edge',
			/no piece "hood"\. The draft has panel, collar/
		],
		[
			'an unknown edge',
			[{ id: 's', a: [{ edge: 'panel/brim' }], b: 'mirror' }],
			'seams[0].a[0].edge',
			/no edge "brim" on panel/
		],
		['an edge without its piece', [{ id: 's', a: [{ edge: 'side' }], b: 'mirror' }], 'seams[0].a[0].edge', /slash/],
		[
			'a fold',
			[{ id: 's', a: [{ edge: 'collar/centre' }], b: [{ edge: 'panel/side' }] }],
			'seams[0].a[0].edge',
			/is a fold: it is not sewn/
		],
		[
			'a mirror seam on the fold',
			[{ id: 's', a: [{ edge: 'collar/side' }], b: 'mirror' }],
			'seams[0].a[0].edge',
			/collar is cut on the fold/
		],
		['an empty side', [{ id: 's', a: [], b: [{ edge: 'panel/side' }] }], 'seams[0].a', /at least one edge/],
		[
			'an edge on both sides',
			[{ id: 's', a: [{ edge: 'panel/side' }], b: [{ edge: 'panel/side' }] }],
			'seams[0].b[0].edge',
			/already on side a.*"mirror"/
		],
		[
			'an edge twice in a run',
			[{ id: 's', a: [{ edge: 'panel/side' }, { edge: 'panel/side' }], b: 'mirror' }],
			'seams[0].a[1].edge',
			/already in this run/
		],
		[
			'a run that jumps',
			[{ id: 's', a: [{ edge: 'panel/side' }, { edge: 'panel/hem', reversed: true }], b: 'mirror' }],
			'seams[0].a[1].edge',
			/not where the seam passes.*"reversed"/
		],
		[
			'a side b that is neither',
			[{ id: 's', a: [{ edge: 'panel/side' }], b: 'fold' }],
			'seams[0].b',
			/list of edges, or "mirror"/
		],
		[
			'a side b without the edge',
			[{ id: 's', a: [{ edge: 'panel/side' }], b: [{}] }],
			'seams[0].b[0].edge',
			/"edge" is missing/
		],
		[
			'one id for two seams',
			[
				{ id: 's', a: [{ edge: 'panel/side' }], b: 'mirror' },
				{ id: 's', a: [{ edge: 'panel/centre' }], b: 'mirror' }
			],
			'seams[1].id',
			/already the id of seams\[0\]/
		],
		[
			'ease that is no number',
			[{ id: 's', a: [{ edge: 'panel/side' }], b: 'mirror', ease: '3' }],
			'seams[0].ease',
			/a finite number, not "3"/
		]
	])('for a seam with %s', (_, seams, path, sentence) => {
		const collar = rectangleFile({ id: 'collar', cut: 'fold', edges: edges({ centre: { kind: 'fold' } }) });
		const problems = refused(draftFile([rectangleFile(), collar], seams));
		expect(problems).toEqual([{ path, message: expect.stringMatching(sentence) }]);
	});

	it('for two pieces of one id, and for a side of a piece that is there whole', () => {
		expect(refused(draftFile([rectangleFile(), rectangleFile()]))).toEqual([
			{ path: 'pieces[1].id', message: expect.stringMatching(/"panel" is already the id of pieces\[0\]/) }
		]);
		const half = rectangleFile({ id: 'panel@left', cut: 'single', side: 'left' });
		expect(refused(draftFile([rectangleFile(), half]))).toEqual([
			{ path: 'pieces[1].id', message: expect.stringMatching(/a side of "panel", which is here whole/) }
		]);
	});

	it('for a notch that meets one on a fold, or itself where no mirror seam can be', () => {
		const collar = rectangleFile({
			id: 'collar',
			cut: 'fold',
			edges: edges({ centre: { kind: 'fold' } }),
			notches: [
				{ id: 'middle', edge: 'centre', at: 10 },
				{ id: 'n', edge: 'side', at: 10, mate: 'collar/middle' },
				{ id: 'm', edge: 'side', at: 30, mate: 'collar/m' }
			]
		});
		expect(refused(draftFile([collar]))).toEqual([
			{ path: 'pieces[0].notches[1].mate', message: expect.stringMatching(/the fold is not sewn/) },
			{ path: 'pieces[0].notches[2].mate', message: expect.stringMatching(/not itself/) }
		]);
	});

	it('for a draft of no pieces, and for pieces that are none', () => {
		expect(refused(draftFile([]))).toEqual([{ path: 'pieces', message: 'A draft needs at least one piece.' }]);
		expect(refused(draftFile([7, null]))).toEqual([
			{ path: 'pieces[0]', message: 'This should be an object with named fields, not 7.' },
			{ path: 'pieces[1]', message: 'This should be an object with named fields, not null.' }
		]);
		expect(refused({ format: 'pin-to-paper/draft@1' })).toEqual([
			{ path: 'pieces', message: '"pieces" is missing: it is a list.' }
		]);
	});

	it('for too many pieces and too many lines', () => {
		expect(refused(draftFile(Array(101).fill({})))).toEqual([
			{ path: 'pieces', message: 'This list is too long: the most is 100.' }
		]);
		const zigzag = `M 0 0 ${'L 100 0 L 100 -50 L 0 -50 L 0 0 '.repeat(5001)}L 200 0`;
		expect(onePiece({ edges: edges({ top: { path: zigzag } }) })).toEqual({
			path: 'pieces[0].edges[0].path',
			message: 'The draft has too many lines and curves: the most is 20000.'
		});
	});

	it('with every problem at once, wherever they are', () => {
		const problems = refused({
			format: 'pin-to-paper/draft@1',
			colour: 'red',
			pieces: [
				rectangleFile({
					cut: 'bias',
					edges: edges({ side: { path: 'M 205 0 L 200 300' } }),
					darts: [
						{ ...dart, from: 'x' },
						{ ...dart, id: 'e', to: 900 }
					],
					notches: [{ id: 'n', edge: 'brim', at: 2 }]
				}),
				rectangleFile({ id: 'back', edges: edges({ hem: { path: 'M 200 300 Q 1 1 0 300' } }) })
			],
			seams: [
				{ id: 's', a: [{ edge: 'back/side' }], b: [{ edge: 'front/side' }] },
				{ id: 't', a: [{ edge: 'back/hem' }], b: 'mirrored' }
			]
		});
		expect(problems.map(({ path }) => path).sort()).toEqual([
			'',
			'pieces[0].cut',
			'pieces[0].darts[0].from',
			'pieces[0].darts[1].to',
			'pieces[0].edges[1].path',
			'pieces[0].notches[0].edge',
			'pieces[1].edges[2].path',
			'seams[0].b[0].edge',
			'seams[1].b'
		]);
	});

	it('never with any other error, whatever is in it', () => {
		const keys = [
			'id',
			'name',
			'cut',
			'edges',
			'path',
			'kind',
			'darts',
			'edge',
			'from',
			'to',
			'point',
			'notches',
			'at',
			'mate',
			'levels',
			'line',
			'level',
			'pieces',
			'seams',
			'a',
			'b',
			'pleats',
			'marks',
			'grain',
			'widths'
		];
		const { value } = fc.letrec((tie) => ({
			value: fc.oneof(
				{ depthSize: 'small', withCrossShrink: true },
				fc.constantFrom<unknown>(
					'panel',
					'side',
					'panel/side',
					'M 0 0 L 1 1',
					0,
					-1,
					5,
					NaN,
					null,
					true,
					[1, 2],
					'mirror',
					'pair',
					'fold'
				),
				fc.array(tie('value'), { maxLength: 3 }),
				fc.dictionary(fc.constantFrom(...keys), tie('value'), { maxKeys: 5 })
			)
		}));
		const paths = [
			'pieces',
			'seams',
			'pieces.0',
			'pieces.1.edges',
			'pieces.1.edges.2',
			'pieces.0.darts.0',
			'pieces.1.levels',
			'pieces.0.notches',
			'pieces.1.marks.0',
			'seams.1.a',
			'seams.2.b',
			'seams.3.a.0',
			'pieces.2.edges.0.path',
			'pieces.3.cut'
		];
		fc.assert(
			fc.property(fc.array(fc.tuple(fc.constantFrom(...paths), value), { minLength: 1, maxLength: 3 }), (changes) => {
				const file = structuredClone(bodiceFile) as unknown as Record<string, unknown>;
				for (const [path, put] of changes) {
					const steps = path.split('.');
					const last = steps.pop()!;
					const holder = steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | null)?.[step], file);
					if (typeof holder === 'object' && holder !== null) (holder as Record<string, unknown>)[last] = put;
				}
				for (const { path, message } of refused(file)) {
					expect(message).toMatch(/[.?]$/);
					expect(message).not.toMatch(/undefined|\[object/);
					expect(path).toMatch(/^$|^[a-zA-Z]/);
				}
			}),
			{ seed: 20_008, numRuns: 500 }
		);
	});
});

describe('text', () => {
	it('is read as JSON, with or without a byte order mark', () => {
		const text = JSON.stringify(bodiceFile);
		expect(parseDraftText(text)).toEqual(parseDraft(bodiceFile));
		expect(parseDraftText(`\uFEFF${text}`)).toEqual(parseDraft(bodiceFile));
		expect(parseDraft(text)).toEqual(parseDraft(bodiceFile));
	});

	it('that is not JSON is refused with line and column', () => {
		expect(problemsOf(() => parseDraftText('{\n"format": "pin-to-paper/draft@1",\n"pieces": [}'))).toEqual([
			{ path: '', message: 'This is not JSON. At line 3, column 12 a value or ] is wanted, but there is "}".' }
		]);
		expect(problemsOf(() => parseDraftText(''))[0].message).toMatch(/a value is wanted, but the file ends/);
	});

	it('with 1e400 for a coordinate is refused where it stands', () => {
		const text = JSON.stringify(bodiceFile).replace('[167.5,245]', '[167.5,1e400]');
		expect(problemsOf(() => parseDraftText(text))).toEqual([
			{ path: 'pieces[1].marks[0].at[1]', message: expect.stringMatching(/finite number, not Infinity/) }
		]);
	});

	it('of more than 5 MB is refused unread', () => {
		const text = `"${'a'.repeat(5 * 1024 * 1024)}"`;
		expect(problemsOf(() => parseDraftText(text))[0].message).toMatch(/larger than 5 MB/);
	});

	it('that holds another text, a number or a list is no draft', () => {
		for (const text of ['"{}"', '12', '[]', 'null']) {
			expect(problemsOf(() => parseDraftText(text))).toHaveLength(1);
		}
	});

	it('of 5 MB of nonsense is refused in good time and without a flood', () => {
		const text = `{"format":"pin-to-paper/draft@1","pieces":[${'[],'.repeat(1_700_000)}[]]}`;
		expect(problemsOf(() => parseDraftText(text))).toHaveLength(1);
	});
});
