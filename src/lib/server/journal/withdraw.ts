import { withdrawals } from '../database/schema/fittings.ts';
import { findAlteration } from './alterations.ts';
import { kept, refused, refusedFor, stale, unknown } from './answers.ts';
import { crossed } from './carry-to-paper.ts';
import { garmentOptions } from './engine-options.ts';
import { findFitting, fittingName } from './fittings.ts';
import { findGarment } from './garments.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { WithdrawalPreview } from './pages.ts';
import type { Alteration } from './records.ts';
import { checkWords, problemsOf } from './soundness.ts';
import { standingAlterations } from './standing.ts';
import type { Store } from './store.ts';
import { draftOf, findVersion, latestVersion, wholeVersion, writeVersion } from './versions.ts';

export function withdrawalActs(store: Store): Pick<Journal, 'previewWithdrawal' | 'withdraw' | 'leaveOutWaiting'> {
	const { db, now, writing } = store;
	return {
		previewWithdrawal: (id) =>
			store.reading(() => {
				const alteration = findAlteration(store, id);
				return alteration && without(store, alteration);
			}),

		withdraw: (id, drawnFrom, note = '') =>
			writing(() => {
				const alteration = findAlteration(store, id);
				if (!alteration) return unknown('alteration');
				const { garment, latest, after, steps, unplaced, queries, hindrances } = without(store, alteration);
				if (latest !== drawnFrom) return stale(wholeVersion(store, latestVersion(store, garment).id)!);
				const problems = problemsOf(checkWords('note', note));
				if (problems.length > 0) return refused(problems);
				if (hindrances.length > 0) return refusedFor(...hindrances);
				const previous = latestVersion(store, garment);
				const versionId = writeVersion(store, after, {
					garment,
					number: latest + 1,
					previous: previous.id,
					reason: 'withdrawn',
					withdrew: id,
					alterations: steps.map((step) => step.alteration),
					steps,
					unplaced,
					queries
				});
				db.insert(withdrawals).values({ alteration: id, version: versionId, note, at: now() }).run();
				const words = `${nameOf(store, alteration)} was taken back out: version ${latest + 1}.`;
				logEntry(store, 'withdrew', words, { garment });
				return kept(wholeVersion(store, versionId)!);
			}),

		leaveOutWaiting: (id, note = '') =>
			writing(() => {
				const alteration = findAlteration(store, id);
				if (!alteration) return unknown('alteration');
				const fitting = findFitting(store, alteration.fitting)!;
				if (!fitting.closedAt || alteration.state !== 'unplaced')
					return refusedFor(`Alteration ${alteration.number} does not wait for a place.`);
				const problems = problemsOf(checkWords('note', note));
				if (problems.length > 0) return refused(problems);
				db.insert(withdrawals).values({ alteration: id, note, at: now() }).run();
				logEntry(store, 'left-out', `${nameOf(store, alteration)} was left out.`, { garment: fitting.garment });
				return kept(findAlteration(store, id)!);
			})
	};
}

/** The garment with one alteration taken back out and everything else carried anew from the base draft. */
function without(store: Store, alteration: Alteration): WithdrawalPreview & { readonly garment: string } {
	const fitting = findFitting(store, alteration.fitting)!;
	const latest = latestVersion(store, fitting.garment);
	const before = draftOf(store, latest.id);
	const base = draftOf(store, findVersion(store, fitting.garment, 0)!.id);
	const others = standingAlterations(store, latest).filter(({ id }) => id !== alteration.id);
	const { draft, applied, unplaced, queries } = store.engine.carry(
		base,
		others.map(({ intent }) => intent),
		{ ...garmentOptions(store, findGarment(store, fitting.garment)!), base, before }
	);
	const hindrances = !fitting.closedAt
		? [`${fittingName(fitting)} is still open: leave alteration ${alteration.number} out there.`]
		: !latest.alterations.includes(alteration.id)
			? [`${nameOf(store, alteration)} does not stand in version ${latest.number}.`]
			: crossed(queries);
	return {
		...{ alteration, garment: fitting.garment, latest: latest.number, before },
		...{ after: draft, steps: applied, unplaced, queries, hindrances }
	};
}

const nameOf = (store: Store, { fitting, number }: Alteration) =>
	`Alteration ${number} of ${fittingName(findFitting(store, fitting)!).toLowerCase()}`;
