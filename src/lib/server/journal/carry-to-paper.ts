import { eq } from 'drizzle-orm';
import { alterations } from '../database/schema/fittings.ts';
import type { AlterationBase, Query, Unplaced } from '../engine.ts';
import { alterationsOf } from './alterations.ts';
import type { Answer } from './answer.ts';
import { closed, kept, refusedFor, stale, unknown } from './answers.ts';
import type { CarryInput } from './changes.ts';
import { fittingOptions } from './engine-options.ts';
import { findFitting, fittingIsClosed, fittingName, shutFitting } from './fittings.ts';
import { findGarment } from './garments.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { InHand, Preview } from './pages.ts';
import type { Alteration, Fitting, Version } from './records.ts';
import { checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { draftOf, findVersion, isAbout, latestVersion, settle, wholeVersion, writeVersion } from './versions.ts';

export function carryActs(store: Store): Pick<Journal, 'previewFitting' | 'carryToPaper'> {
	return {
		previewFitting: (fittingId, inHand) =>
			store.reading(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return undefined;
				return fitting.closedAt ? asCarried(store, fitting) : carried(store, fitting, inHand);
			}),
		carryToPaper: (fittingId, wholeRevision, input = {}) =>
			store.writing<Version, Preview>(() => {
				const fitting = findFitting(store, fittingId);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (fitting.wholeRevision !== wholeRevision) return stale(carried(store, fitting));
				return carryToPaper(store, fitting, input);
			})
	};
}

/** What carrying an open fitting onto the latest version comes to; with one alteration as it is in the hand, not yet kept. */
function carried(store: Store, fitting: Fitting, pending?: InHand): Preview {
	const latest = latestVersion(store, fitting.garment);
	const before = draftOf(store, latest.id);
	const inHand = alterationsOf(store, fitting.id).filter(({ state }) => state !== 'withdrawn');
	const checks = fittingOptions(store, findGarment(store, fitting.garment)!, fitting, before);
	const { draft, applied, unplaced, queries } = store.engine.carry(before, withPending(inHand, pending), checks);
	return {
		fitting,
		onto: latest.number,
		before,
		after: draft,
		steps: applied,
		unplaced,
		queries,
		checks,
		hindrances: [...notRead(inHand, unplaced), ...nothingStands(fitting, applied.length, unplaced), ...crossed(queries)]
	};
}

/** The intents in the order of carrying: those in the hand in the place of the one that they change, else last. */
function withPending(kept: readonly Alteration[], pending: InHand | undefined): readonly AlterationBase[] {
	const intents: readonly AlterationBase[] = kept.map(({ intent }) => intent);
	if (!pending) return intents;
	const at = kept.findIndex(({ id }) => id === pending.insteadOf);
	return at < 0 ? [...intents, ...pending.intents] : intents.toSpliced(at, 1, ...pending.intents);
}

/** What a closed fitting came to, from its frozen version. */
function asCarried(store: Store, fitting: Fitting): Preview {
	const hindrances = [fittingIsClosed(fitting)];
	if (fitting.carriedInto === null) {
		const before = draftOf(store, findVersion(store, fitting.garment, fitting.on)!.id);
		return {
			fitting,
			onto: fitting.on,
			before,
			after: before,
			steps: [],
			unplaced: [],
			queries: [],
			checks: {},
			hindrances
		};
	}
	const { id } = findVersion(store, fitting.garment, fitting.carriedInto)!;
	const version = wholeVersion(store, id)!;
	const before = draftOf(store, version.previous!);
	const { draft: after, steps, unplaced, queries } = version;
	return { fitting, onto: version.number - 1, before, after, steps, unplaced, queries, checks: {}, hindrances };
}

function carryToPaper(
	store: Store,
	fitting: Fitting,
	{ left = [], waiting = [] }: CarryInput
): Answer<Version, Preview> {
	const { before: _, after, steps, unplaced, queries, hindrances } = carried(store, fitting);
	const problems = [
		...hindrances,
		...withoutPlace(store, fitting, unplaced, waiting),
		...left
			.filter((one) => !queries.some((query) => isAbout(one, query)))
			.map(({ code, where }) => noSuchQuery(code, where)),
		...problemsOf(...left.map(({ note }) => checkWords('left', note))).map(({ sentence }) => sentence)
	];
	if (problems.length > 0) return refusedFor(...problems);

	const latest = latestVersion(store, fitting.garment);
	const number = latest.number + 1;
	const versionId = writeVersion(store, after, {
		garment: fitting.garment,
		number,
		previous: latest.id,
		reason: 'carried',
		fitting: fitting.id,
		alterations: [...latest.alterations, ...steps.map(({ alteration }) => alteration)],
		steps,
		unplaced,
		queries
	});
	for (const { alteration, sentence } of unplaced)
		store.db
			.update(alterations)
			.set({ state: 'unplaced', reason: sentence })
			.where(eq(alterations.id, alteration))
			.run();
	for (const { code, where, note = '' } of left)
		settle(store, {
			...{ version: versionId, code, where, note, how: 'left', alteration: null },
			sentence: queries.find((query) => isAbout({ code, where }, query))!.sentence
		});
	for (const { id, settles, state, note } of alterationsOf(store, fitting.id))
		if (settles && state === 'standing')
			settle(store, { ...settles, version: versionId, how: 'altered', alteration: id, note });
	shutFitting(store, fitting, versionId);
	logEntry(store, 'carried', `${fittingName(fitting)} was carried to paper as version ${number}.`, {
		garment: fitting.garment
	});
	return kept(wholeVersion(store, versionId)!);
}

const notRead = (inHand: readonly Alteration[], unplaced: readonly Unplaced[]) =>
	unplaced
		.filter(({ why }) => why === 'not-read')
		.flatMap(({ alteration }) => inHand.filter(({ id }) => id === alteration))
		.map(({ number }) => `Alteration ${number} is not read yet: read it, or leave it out.`);

/** Only where nothing else is said: pins that are not read say it themselves. */
const nothingStands = (fitting: Fitting, applied: number, unplaced: readonly Unplaced[]) =>
	applied === 0 && !unplaced.some(({ why }) => why === 'not-read')
		? [`Nothing stands in ${fittingName(fitting).toLowerCase()} that changes the draft: close it without carrying.`]
		: [];

export const crossed = (queries: readonly Query[]) =>
	queries.filter(({ severity }) => severity === 'error').map(({ sentence }) => sentence);

function withoutPlace(store: Store, fitting: Fitting, unplaced: readonly Unplaced[], waiting: readonly string[]) {
	const numbers = new Map(alterationsOf(store, fitting.id).map(({ id, number }) => [id, number]));
	return unplaced
		.filter(({ alteration, why }) => why !== 'not-read' && !waiting.includes(alteration))
		.map(
			({ alteration, sentence }) =>
				`Alteration ${numbers.get(alteration)} is not placed. ${sentence} Place it again, leave it out, or let it wait.`
		);
}

const noSuchQuery = (code: string, where: string) =>
	`What was to be left as it is (${code}, ${where}) is not asked any more. Look at the queries again.`;
