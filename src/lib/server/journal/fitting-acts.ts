import { and, eq, max } from 'drizzle-orm';
import { fittings } from '../database/schema/fittings.ts';
import { closed, kept, refused, refusedFor, stale, unknown } from './answers.ts';
import type { Change, FittingFields } from './changes.ts';
import { findGarment } from './garments.ts';
import { fittingProblems } from './fitting-problems.ts';
import { findFitting, fittingIsClosed, fittingName, shutFitting } from './fittings.ts';
import type { Journal } from './journal.ts';
import { logEntry } from './log.ts';
import type { Garment } from './records.ts';
import { checkOneOf, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findToile, toileRow } from './toiles.ts';
import { findVersion, latestVersion } from './versions.ts';
import { alterationsOf } from './alterations.ts';

export function fittingActs(store: Store): Pick<Journal, 'fitting' | 'addFitting' | 'reviseFitting' | 'closeFitting'> {
	const { db, newId, now, writing } = store;
	return {
		fitting: (id) => store.reading(() => findFitting(store, id)),

		addFitting: (garmentId, { kind, on, ...fields }) =>
			writing(() => {
				const garment = findGarment(store, garmentId);
				if (!garment) return unknown('garment');
				const onBody = versionOn(store, garment, fields.toile, on);
				const problems = problemsOf(
					checkOneOf('kind', kind, ['fitting', 'table']),
					fittingProblems(store, garment, fields),
					onBody ? undefined : { field: 'on', sentence: 'Choose one of this garment’s versions.' }
				);
				if (problems.length > 0 || !onBody) return refused(problems);
				const last = db
					.select({ last: max(fittings.number) })
					.from(fittings)
					.where(and(eq(fittings.garment, garmentId), eq(fittings.kind, kind)))
					.get();
				const id = newId();
				db.insert(fittings)
					.values({
						...fieldsOf(fields),
						...{ id, garment: garmentId, kind, number: (last?.last ?? 0) + 1, on: onBody.id, addedAt: now() },
						date: fields.date,
						stateOfToile: fields.stateOfToile ?? {},
						asSewn: fields.asSewn ?? {},
						checkMeasures: fields.checkMeasures ?? {}
					})
					.run();
				const fitting = findFitting(store, id)!;
				logEntry(store, 'fitting-begun', `${fittingName(fitting)} was begun.`, { garment: garmentId });
				return kept(fitting);
			}),

		reviseFitting: (id, revision, change) =>
			writing(() => {
				const fitting = findFitting(store, id);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (fitting.revision !== revision) return stale(fitting);
				const garment = findGarment(store, fitting.garment)!;
				const problems = fittingProblems(store, garment, { ...fitting, ...change });
				if (problems.length > 0) return refused(problems);
				// Another toile on the body is another version on the body.
				const onBody = change.toile ? toileRow(store, change.toile)!.stitchedTo : undefined;
				db.update(fittings)
					.set({ ...fieldsOf(change), on: onBody, revision: revision + 1, wholeRevision: fitting.wholeRevision + 1 })
					.where(eq(fittings.id, id))
					.run();
				return kept(findFitting(store, id)!);
			}),

		closeFitting: (id, wholeRevision) =>
			writing(() => {
				const fitting = findFitting(store, id);
				if (!fitting) return unknown('fitting');
				if (fitting.closedAt) return closed(fittingIsClosed(fitting));
				if (fitting.wholeRevision !== wholeRevision) return stale(fitting);
				const waiting = alterationsOf(store, id).filter(({ state }) => state !== 'withdrawn');
				if (waiting.length > 0)
					return refusedFor(
						...waiting.map(({ number }) => `Alteration ${number} is to be carried to paper: carry it, or leave it out.`)
					);
				shutFitting(store, fitting, null);
				const words = `${fittingName(fitting)} was closed; nothing was carried to paper.`;
				logEntry(store, 'closed', words, { garment: fitting.garment });
				return kept(findFitting(store, id)!);
			})
	};
}

/** The version on the body: the one asked for, else what the toile is sewn to, else the latest. */
function versionOn(store: Store, garment: Garment, toileId: string | null | undefined, on: number | undefined) {
	if (on !== undefined) return findVersion(store, garment.id, on);
	const toile = toileId ? findToile(store, toileId) : undefined;
	return toile?.garment === garment.id
		? findVersion(store, garment.id, toile.stitchedTo)
		: latestVersion(store, garment.id);
}

const fieldsOf = (change: Change<FittingFields>) => ({
	date: change.date,
	from: change.from,
	to: change.to,
	tried: change.tried,
	toile: change.toile,
	foundation: change.foundation,
	worn: change.worn,
	stateOfToile: change.stateOfToile,
	asSewn: change.asSewn,
	checkMeasures: change.checkMeasures,
	shoes: change.shoes,
	heel: change.heel,
	pinnedBy: change.pinnedBy,
	note: change.note,
	bring: change.bring,
	pinsIn: change.pinsIn,
	pinsOut: change.pinsOut
});
