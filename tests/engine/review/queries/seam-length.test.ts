import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import type { CheckOptions } from '../../../../src/lib/engine/review/inquiry.ts';
import { carry } from '../../../../src/lib/engine/review/carry-and-check.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { draftFile, rectangleFile } from '../../../support/drafts.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';
import { walk } from '../../../../src/lib/engine/review/walk.ts';
import type { Query } from '../../../../src/lib/engine/review/types.ts';
import { altered, asked, settled } from '../altered.ts';

/** Two panels sewn along edges of the lengths given. */
const sewn = (a: number, b: number, seam: object = {}, pieces: readonly [object, object] = [{}, {}]) =>
	parseDraft(
		draftFile(
			[
				{ ...rectangleFile({ id: 'front', name: 'Front', height: a }), ...pieces[0] },
				{ ...rectangleFile({ id: 'back', name: 'Back', height: b }), ...pieces[1] }
			],
			[
				{
					id: 'side',
					name: 'Side seam',
					a: [{ edge: 'front/side' }],
					b: [{ edge: 'back/side' }],
					...seam
				}
			]
		)
	);
const ask = (draft: ReturnType<typeof sewn>, options?: CheckOptions) => asked('seam-length', draft, options);

describe('a seam whose sides differ', () => {
	it.each([
		[1.5, undefined],
		[25.4 / 16, undefined],
		[1.7, 'note'],
		[3.175, 'note'],
		[3.3, 'warning']
	])('by %d mm is told as %s', (difference, severity) => {
		for (const longer of [300 + difference, 300 - difference]) {
			const [query] = ask(sewn(300, longer));
			expect(query?.severity).toBe(severity);
		}
	});

	it('is said in sixteenths of an inch, the longer side first, with the exact figure beside it', () => {
		const [query] = ask(sewn(300, 303.175));
		expect(query).toMatchObject({ where: 'side', sentence: 'Side seam: the back is 1/8″ longer than the front.' });
		expect(query.figure).toBeCloseTo(3.175, 9);
		expect(ask(sewn(306.35, 300))[0].sentence).toBe('Side seam: the front is 1/4″ longer than the back.');
	});

	it('is held to the fullness that is meant', () => {
		expect(ask(sewn(300, 320, { ease: 20 }))).toEqual([]);
		expect(ask(sewn(300, 326.35, { ease: 20 }))[0].sentence).toBe(
			'Side seam: the back has 1/4″ more fullness on the front than the 13/16″ meant.'
		);
		expect(ask(sewn(300, 300, { ease: 20 }))[0].sentence).toMatch(/^Side seam: the back has 13\/16″ less fullness/);
	});

	it('in the base draft is meant, and so is anything on the way to where they match', () => {
		const base = sewn(300, 310);
		for (const b of [310, 305, 300]) expect(ask(sewn(300, b), { base })).toEqual([]);
		expect(ask(sewn(300, 314), { base })[0].severity).toBe('warning');
		expect(ask(sewn(300, 296), { base })[0].severity).toBe('warning');
	});

	it('to a piece that is not on this toile is a matter for later', () => {
		const [query] = ask(sewn(300, 320), { pieces: ['front'] });
		expect(query).toMatchObject({ severity: 'note', settle: [] });
		expect(query.sentence).toBe('Side seam: the front is now 11 13/16″; fit the back next.');
	});

	// A back shoulder 1/4 in longer than the front, eased in: Baldt, Clothing for Women (1916), tailored waist, part 2.
	it('by 1/4″ is eased in at a back shoulder, but not where the front is the longer', () => {
		const shoulder = { id: 'shoulder', name: 'Shoulder seam' };
		expect(ask(sewn(120, 126.35, shoulder))).toEqual([]);
		expect(ask(sewn(120, 126.5, shoulder))).toHaveLength(1);
		expect(ask(sewn(126.35, 120, shoulder))[0].severity).toBe('warning');
	});

	it('by 1/4″ is eased in at a curved side-back seam, into the rounder edge', () => {
		const rounded = (fuller: number) => ({
			edges: [
				{ id: 'top', kind: 'open', path: 'M 0 0 L 200 0' },
				{ id: 'side', kind: 'seam', path: `M 200 0 C ${200 + fuller} 100 ${200 + fuller} 200 200 300` },
				{ id: 'hem', kind: 'open', path: 'M 200 300 L 0 300' },
				{ id: 'centre', kind: 'seam', path: 'M 0 300 L 0 0' }
			]
		});
		const seam = { id: 'side-back', name: 'Side-back seam' };
		// The rounder edge is about 5 mm the longer.
		expect(ask(sewn(300, 300, seam, [{}, rounded(32)]))).toEqual([]);
		expect(ask(sewn(300, 300, { ...seam, id: 'princess', name: 'Princess seam' }, [{}, rounded(32)]))).toHaveLength(1);
		// The flat edge longer than the rounder one by as much is not meant.
		const flat = ask(sewn(310.2, 300, seam, [{}, rounded(32)]));
		expect(Math.abs(flat[0].figure!)).toBeGreaterThan(3.175);
		expect(Math.abs(flat[0].figure!)).toBeLessThan(6.35);
	});

	it('is reported when only one of them is altered, and not when both are alike', () => {
		const draft = sewn(300, 300);
		const taken = (a: number, b: number) =>
			parseAlteration({
				id: 'one',
				kind: 'seam',
				seam: 'side',
				pins: [
					{ at: { end: 'start' }, a: 0, b: 0 },
					{ at: { end: 'finish' }, a, b }
				]
			});
		const codes = (a: number, b: number) => carry(draft, [taken(a, b)]).queries.map(({ code }) => code);
		expect(codes(-60, 0)).toContain('seam-length');
		expect(codes(-60, -60)).not.toContain('seam-length');
	});
});

describe('its suggestions', () => {
	const uneven = () =>
		altered(plainBodice(), {
			id: 'one',
			kind: 'edge',
			edge: 'front/hem',
			pins: [
				{ at: { end: 'start' }, move: -12 },
				{ at: { end: 'finish' }, move: 0 }
			]
		});

	it('correct the shorter side, the longer, or share it; each settles it', () => {
		const draft = uneven();
		const [query] = ask(draft);
		expect(query.figure).toBeCloseTo(12, 2);
		expect(query.settle.map((one) => one.id)).toEqual([
			'settle-seam-length-side-a',
			'settle-seam-length-side-b',
			'settle-seam-length-side-half'
		]);
		for (const which of [0, 1, 2]) {
			const after = settled(draft, query, which);
			expect(ask(after)).toEqual([]);
			expect(walk(after).find(({ seam }) => seam === 'side')!.difference).toBeCloseTo(0, 3);
		}
	});

	it('are for the end at which the notches miss each other', () => {
		const ends = (query: Query) => query.settle.map((one) => (one as unknown as { end: string }).end);
		expect(new Set(ends(ask(uneven())[0]))).toEqual(new Set(['finish']));
		const file = structuredClone(plainBodiceFile);
		file.pieces[0].edges[1].path = 'M 160 0 C 150 60 150 130 250 162';
		file.pieces[0].edges[2].path = 'M 250 162 L 250 450';
		file.pieces[0].notches[0].at = 88;
		expect(new Set(ends(ask(parseDraft(file))[0]))).toEqual(new Set(['start']));
	});

	it('are for the side of the wearer that it is about', () => {
		const draft = altered(plainBodice(), {
			id: 'one',
			kind: 'edge',
			edge: 'front/hem',
			on: 'left',
			pins: [{ at: { end: 'start' }, move: -12 }]
		});
		const [query] = ask(draft);
		expect(query.where).toBe('side@left');
		expect(query.settle[0]).toMatchObject({ seam: 'side', on: 'left' });
		expect(ask(settled(draft, query))).toEqual([]);
	});
});

describe('bands for a sleeve head', () => {
	const head = (length: number, ease = 0) =>
		sewn(400, length, { id: 'armhole', name: 'Armhole seam', ease }, [
			{ name: 'Armhole' },
			{ name: 'Sleeve', limb: true }
		]);

	// Fullness of 1 in to 1 1/2 in in woven cloth, up to 2 in in wool (teaching notes, and from memory): bands, no equalities.
	it('ask whether its fullness is what the cloth takes', () => {
		const at = (fullness: number, bands: string) =>
			asked('ease-low', head(400 + fullness), { bands }).length -
			asked('ease-high', head(400 + fullness), { bands }).length;
		expect(at(30, 'usual sleeve')).toBe(0);
		expect(at(20, 'usual sleeve')).toBe(1);
		expect(at(45, 'usual sleeve')).toBe(-1);
		expect(at(45, 'wool sleeve')).toBe(0);
		expect(at(-5, 'close sleeve')).toBe(1);
		expect(ask(head(430), { bands: 'usual sleeve' })).toEqual([]);
		expect(ask(head(430))).toHaveLength(1);
	});
});
