import { describe, expect, test } from 'vitest';
import { easeTable, formatDraft, parseAlteration, parseDraft } from '../../src/lib/engine/index.ts';
import { begun, carriedOnce, contentOf, kept, pinnedOnly, rawDatabase, refusalOf, takenIn } from './support/journal.ts';
import { waistcoatFile } from './support/waistcoat.ts';

const inch = 25.4;

test('a quarter inch in on each layer at both side seams is one inch off the round of the waist', () => {
	// Plain arithmetic: x on each layer of a seam takes 2x from the round, the same on its pair 4x in all.
	const { journal, garment, version } = carriedOnce();
	expect(version.steps).toHaveLength(1);
	expect(version.steps[0].round).toEqual([{ level: 'waist', change: expect.closeTo(-inch, 6) }]);
	const round = (number: number) => easeTable(journal.version(garment.id, number)!.draft, {})[0].garment;
	expect(round(1) - round(0)).toBeCloseTo(-inch, 6);
});

test('the version says where it came from, the fitting is closed into it, and its toile is fitted', () => {
	const { journal, garment, fitting, alteration, version, toile } = carriedOnce();
	expect(version).toMatchObject({
		number: 1,
		reason: 'carried',
		fitting: fitting.id,
		alterations: [alteration.id],
		previous: journal.version(garment.id, 0)!.id
	});
	expect(journal.fitting(fitting.id)).toMatchObject({ carriedInto: 1, closedAt: expect.any(String) });
	expect(journal.toile(toile.id)!.states.map(({ state, date }) => [state, date])).toEqual([
		['cut', '2026-01-09'],
		['fitted', '2026-01-28']
	]);
	expect(journal.version(garment.id, 1)).toEqual(version);
});

test('the preview is what the version becomes, and writes nothing', () => {
	const { journal, fitting, file } = begun();
	kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
	const before = contentOf(rawDatabase(file));
	const preview = journal.previewFitting(fitting.id)!;
	expect(contentOf(rawDatabase(file))).toEqual(before);
	const version = kept(journal.carryToPaper(fitting.id, preview.fitting.wholeRevision));
	expect(version.draft).toEqual(preview.after);
	expect(version.steps).toEqual(preview.steps);
	expect(version.queries).toEqual(preview.queries);
	expect(preview.hindrances).toEqual([]);
});

test('an alteration in the hand is previewed as if it were kept, last or in the place of the one it changes', () => {
	const { journal, fitting, file } = begun();
	const first = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
	kept(journal.addAlteration(fitting.id, { intent: takenIn(3.175) }));
	const before = contentOf(rawDatabase(file));
	const inHand = parseAlteration({ ...takenIn(12.7), id: 'in-hand' });
	const added = journal.previewFitting(fitting.id, { intents: [inHand] })!;
	const changed = journal.previewFitting(fitting.id, { intents: [inHand], insteadOf: first.id })!;
	expect(contentOf(rawDatabase(file))).toEqual(before);
	// 4 layers of 1/4, 1/8 and 1/2 in; and of 1/2 and 1/8 in, changed first.
	const round = (preview: typeof added) => preview.steps.map(({ round: [{ change }] }) => change / inch);
	expect(round(added)).toEqual([1, 0.5, 2].map((x) => expect.closeTo(-x, 6)));
	expect(round(changed)).toEqual([2, 0.5].map((x) => expect.closeTo(-x, 6)));
	kept(journal.reviseAlteration(first.id, first.revision, { intent: takenIn(12.7) }));
	expect(journal.previewFitting(fitting.id)!.after).toEqual(changed.after);
});

test('a base draft comes back from the journal as it was brought in', () => {
	const { journal, garment } = begun();
	expect(journal.version(garment.id, 0)!.draft).toEqual(parseDraft(waistcoatFile()));
	expect(formatDraft(journal.version(garment.id, 0)!.draft)).toEqual(formatDraft(parseDraft(waistcoatFile())));
});

describe('carrying is refused, with nothing written,', () => {
	function refusedCarry(prepare: (all: ReturnType<typeof begun>) => void, input = {}) {
		const all = begun();
		prepare(all);
		const before = contentOf(rawDatabase(all.file));
		const { journal, fitting } = all;
		const { code, sentences } = refusalOf(
			journal.carryToPaper(fitting.id, journal.fitting(fitting.id)!.wholeRevision, input)
		);
		expect(contentOf(rawDatabase(all.file))).toEqual(before);
		expect(code).toBe('refused');
		return sentences;
	}

	test('while an alteration is pinned and not read, and says which', () => {
		const sentences = refusedCarry(({ journal, fitting }) => {
			kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			kept(journal.addAlteration(fitting.id, { intent: takenIn(3.175) }));
			expect(kept(journal.addAlteration(fitting.id, { intent: pinnedOnly })).state).toBe('not-read');
		});
		expect(sentences).toEqual(['Alteration 3 is not read yet: read it, or leave it out.']);
	});

	test('while an outline would cross itself', () => {
		const sentences = refusedCarry(({ journal, fitting }) => {
			kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			// The back is 165 mm wide at the waist and its centre does not move.
			kept(
				journal.addAlteration(fitting.id, {
					intent: {
						kind: 'edge',
						edge: 'back/side',
						pins: [
							{ at: { level: 'waist' }, move: -190 },
							{ at: { end: 'start' }, move: 0 },
							{ at: { end: 'finish' }, move: 0 }
						]
					}
				})
			);
		});
		expect(sentences).toHaveLength(1);
		expect(sentences[0]).toMatch(
			/^Alteration 2 is not placed\. The back could not be cut any more: its centre back would cross its side\./
		);
	});

	test('while an alteration that finds no place is neither answered nor told to wait', () => {
		const sentences = refusedCarry(({ journal, fitting }) => {
			kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			kept(journal.addAlteration(fitting.id, { intent: { ...takenIn(6.35), seam: 'sleeve' } }));
		});
		expect(sentences).toHaveLength(1);
		expect(sentences[0]).toMatch(/^Alteration 2 is not placed\. .* Place it again, leave it out, or let it wait\.$/);
	});

	test('while nothing stands', () => {
		const sentences = refusedCarry(({ journal, fitting }) => {
			const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
			kept(journal.leaveOut(id, revision));
		});
		expect(sentences).toEqual(['Nothing stands in fitting 1 that changes the draft: close it without carrying.']);
	});

	test('where a query is to be left that is not asked', () => {
		const sentences = refusedCarry(
			({ journal, fitting }) => kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) })),
			{ left: [{ code: 'seam-length', where: 'side' }] }
		);
		expect(sentences).toEqual([expect.stringContaining('is not asked any more')]);
	});
});

test('an alteration that is left out keeps its number and is not carried; taken up again it is', () => {
	const { journal, garment, fitting } = begun();
	const first = kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
	const out = kept(journal.leaveOut(first.id, first.revision));
	expect(out).toMatchObject({ number: 1, state: 'withdrawn' });
	expect(journal.previewFitting(fitting.id)!.steps).toEqual([]);
	kept(journal.takeUpAgain(first.id, out.revision));
	expect(kept(journal.addAlteration(fitting.id, { intent: takenIn(1) })).number).toBe(2);
	expect(journal.previewFitting(fitting.id)!.steps).toHaveLength(2);
	expect(journal.garment(garment.id)!.fittings[0].alterations.map(({ state }) => state)).toEqual([
		'standing',
		'standing'
	]);
});

test('alterations are carried in the order that they are put in', () => {
	const { journal, fitting } = begun();
	const [a, b, c] = [1, 2, 3].map((mm) => kept(journal.addAlteration(fitting.id, { intent: takenIn(mm) })));
	kept(journal.reorderAlteration(c.id, c.revision, 1));
	expect(journal.previewFitting(fitting.id)!.steps.map(({ alteration }) => alteration)).toEqual([c.id, a.id, b.id]);
	expect(refusalOf(journal.reorderAlteration(a.id, journal.alteration(a.id)!.revision, 4)).sentences).toEqual([
		'Choose a place in the order from 1 to 3.'
	]);
});

test('pins that were not read are read later, and stand', () => {
	const { journal, fitting } = begun();
	const pinned = kept(journal.addAlteration(fitting.id, { intent: pinnedOnly, note: 'right side, two pins' }));
	const read = kept(
		journal.reviseAlteration(pinned.id, pinned.revision, {
			intent: takenIn(6.35),
			measured: 'whole-fold',
			readings: { pinnedOn: 'right', sides: 'both', places: [{ at: { level: 'waist' }, rightA: -12.7 }] }
		})
	);
	expect(read).toMatchObject({ state: 'standing', number: 1, note: 'right side, two pins', measured: 'whole-fold' });
	expect(read.readings.places).toEqual([{ at: { level: 'waist' }, rightA: -12.7 }]);
	expect(read.intent.id).toBe(read.id);
});

describe('an alteration that finds no place', () => {
	function withOneWaiting() {
		const all = begun();
		const { journal, fitting } = all;
		kept(journal.addAlteration(fitting.id, { intent: takenIn(6.35) }));
		const lost = kept(journal.addAlteration(fitting.id, { intent: { ...takenIn(3.175), seam: 'sleeve' } }));
		const whole = journal.fitting(fitting.id)!.wholeRevision;
		const version = kept(journal.carryToPaper(fitting.id, whole, { waiting: [lost.id] }));
		return { ...all, lost, version };
	}

	test('waits, with the reason, and is neither carried nor dropped', () => {
		const { journal, garment, lost, version } = withOneWaiting();
		expect(version.alterations).not.toContain(lost.id);
		expect(journal.alteration(lost.id)).toMatchObject({ state: 'unplaced', reason: expect.stringMatching(/sleeve/) });
		const page = journal.garment(garment.id)!;
		expect(page.open.unplaced.map(({ id }) => id)).toEqual([lost.id]);
		expect(page.open.queries).toEqual([]);
		expect(page.waiting.map(({ what }) => what)).toContain('unplaced');
	});

	test('is answered by one that places it again', () => {
		const { journal, garment, lost } = withOneWaiting();
		const table = kept(journal.addFitting(garment.id, { kind: 'table', date: '2026-02-01' }));
		kept(journal.addAlteration(table.id, { intent: takenIn(3.175), replaces: lost.id }));
		expect(journal.garment(garment.id)!.open.unplaced).toEqual([]);
		expect(refusalOf(journal.addAlteration(table.id, { intent: takenIn(1), replaces: lost.id })).fields).toEqual([
			'replaces'
		]);
	});

	test('is answered by leaving it out', () => {
		const { journal, garment, lost } = withOneWaiting();
		const out = kept(journal.leaveOutWaiting(lost.id, 'no sleeve on this one'));
		expect(out).toMatchObject({ state: 'withdrawn', withdrawal: { version: null, note: 'no sleeve on this one' } });
		expect(journal.garment(garment.id)!.open.unplaced).toEqual([]);
		expect(journal.garment(garment.id)!.versions).toHaveLength(2);
	});
});

describe('queries', () => {
	/** Only the back's side is taken in, deep: the seam no longer walks. */
	const unlike = {
		kind: 'edge',
		edge: 'back/side',
		pins: [
			{ at: { end: 'start' }, move: 0 },
			{ at: { level: 'waist' }, move: -40 },
			{ at: { end: 'finish' }, move: 0 }
		]
	};

	function withQuery() {
		const all = begun();
		kept(all.journal.addAlteration(all.fitting.id, { intent: unlike }));
		const preview = all.journal.previewFitting(all.fitting.id)!;
		const query = preview.queries.find(({ code }) => code === 'seam-length')!;
		expect(query).toBeDefined();
		return { ...all, preview, query };
	}

	test('left as they are when the fitting is carried are settled with their sentence; the others stay open', () => {
		const { journal, garment, fitting, preview, query } = withQuery();
		const { code, where } = query;
		const version = kept(
			journal.carryToPaper(fitting.id, preview.fitting.wholeRevision, { left: [{ code, where, note: 'eased in' }] })
		);
		expect(version.settlements).toEqual([
			expect.objectContaining({ code, where, how: 'left', note: 'eased in', sentence: query.sentence })
		]);
		expect(version.unsettled).toEqual(version.queries.filter((one) => one.code !== code));
		expect(journal.garment(garment.id)!.settled).toEqual(version.settlements);
	});

	test('left open can be settled later, once', () => {
		const { journal, garment, fitting, preview, query } = withQuery();
		const version = kept(journal.carryToPaper(fitting.id, preview.fitting.wholeRevision));
		const { code, where } = query;
		expect(journal.garment(garment.id)!.open.queries).toContainEqual(query);
		kept(journal.settleQuery(version.id, { code, where }));
		expect(journal.garment(garment.id)!.open.queries).not.toContainEqual(query);
		expect(refusalOf(journal.settleQuery(version.id, { code, where })).sentences).toEqual([
			'This query is settled already.'
		]);
	});

	test('settled by an alteration are recorded with it', () => {
		const { journal, fitting, query } = withQuery();
		const { code, where, sentence } = query;
		const intent = {
			kind: 'edge',
			edge: 'front/side',
			pins: unlike.pins
		};
		const mend = kept(journal.addAlteration(fitting.id, { intent, settles: { code, where, sentence } }));
		const preview = journal.previewFitting(fitting.id)!;
		expect(preview.queries.map((one) => one.code)).not.toContain('seam-length');
		const version = kept(journal.carryToPaper(fitting.id, preview.fitting.wholeRevision));
		expect(version.settlements).toEqual([
			expect.objectContaining({ code, where, sentence, how: 'altered', alteration: mend.id })
		]);
	});
});

test('a let-out larger than the cloth of the toile is queried', () => {
	const { journal, fitting } = begun();
	kept(journal.addAlteration(fitting.id, { intent: takenIn(-22) }));
	// 1″ was left round the toile; 22 mm out leaves 3.4 mm, less than the 1/4″ that a seam needs.
	expect(journal.previewFitting(fitting.id)!.queries.map(({ code }) => code)).toContain('let-out-no-cloth');
});

test('fittings over different things, carried together, are queried', () => {
	const { journal, garment, wearer } = carriedOnce();
	const bare = kept(journal.addFoundation(wearer.id, { name: 'shift only' }));
	const second = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24', foundation: bare.id }));
	kept(journal.addAlteration(second.id, { intent: takenIn(1) }));
	const query = journal.previewFitting(second.id)!.queries.find(({ code }) => code === 'foundation-differs')!;
	expect(query.sentence).toContain('chemise and corset');
	expect(query.sentence).toContain('shift only');
});

test('a seam that goes the other way than at an earlier fitting is queried, with what was worn and who pinned', () => {
	const { journal, garment } = carriedOnce();
	const second = kept(journal.addFitting(garment.id, { kind: 'fitting', date: '2026-02-24', pinnedBy: 'M. Thorne' }));
	const asked = () => journal.previewFitting(second.id)!.queries.filter(({ code }) => code === 'fittings-disagree');
	const first = kept(journal.addAlteration(second.id, { intent: takenIn(3) }));
	expect(asked()).toEqual([]);
	kept(journal.leaveOut(first.id, first.revision));
	kept(journal.addAlteration(second.id, { intent: takenIn(-3.175) }));
	const [query] = asked();
	expect(query.sentence).toMatch(
		/fitting 1 in .* \(over chemise and corset.*\), fitting 2 out 1\/8″ \(.*pinned by M\. Thorne\)/
	);
	const { code, where, sentence, settle } = query;
	kept(journal.addAlteration(second.id, { intent: { ...settle[0] }, settles: { code, where, sentence } }));
	expect(asked()).toEqual([]);
});

test('a fitting that changes nothing is closed without a version, and only then', () => {
	const { journal, garment, fitting } = begun();
	const { id, revision } = kept(journal.addAlteration(fitting.id, { intent: pinnedOnly }));
	const whole = () => journal.fitting(fitting.id)!.wholeRevision;
	expect(refusalOf(journal.closeFitting(fitting.id, whole())).sentences).toEqual([
		'Alteration 1 is to be carried to paper: carry it, or leave it out.'
	]);
	kept(journal.leaveOut(id, revision));
	expect(kept(journal.closeFitting(fitting.id, whole()))).toMatchObject({ carriedInto: null });
	expect(journal.garment(garment.id)!.versions).toHaveLength(1);
	expect(journal.previewFitting(fitting.id)).toMatchObject({
		steps: [],
		hindrances: [expect.stringContaining('closed')]
	});
});
