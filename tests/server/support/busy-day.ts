import type { Journal } from '../../../src/lib/server/journal/journal.ts';
import { kept, takenIn } from './plain.ts';
import { waistcoatFile } from './waistcoat.ts';

/**
 * A workroom's busy day as a list of steps, each one act of the journal that writes many rows or few; the same rows each time,
 * since clock and ids count. Carrying to paper, which writes into the most tables, is every fifth of them.
 */
export function busyDay(journal: Journal, fittings: number, done: () => void): void {
	const step = <T>(value: T): T => {
		done();
		return value;
	};
	const wearer = step(kept(journal.addWearer({ name: 'Ines Varrow' })));
	const foundation = step(kept(journal.addFoundation(wearer.id, { name: 'chemise and corset' })));
	const sheet = { date: '2026-01-09', foundation: foundation.id, measures: { bust: 965.2, waist: 635, hip: 939.8 } };
	step(kept(journal.addSheet(wearer.id, sheet)));
	const { garment } = step(
		kept(journal.addGarment({ name: 'Waistcoat', wearer: wearer.id, draft: waistcoatFile(), source: 'file' }))
	);
	const toile = step(kept(journal.addToile(garment.id, { cutFrom: 0 })));
	for (let n = 0; n < fittings; n++) {
		const toTry = { kind: 'fitting', date: '2026-01-28', tried: 'toile', toile: toile.id } as const;
		const fitting = step(kept(journal.addFitting(garment.id, toTry)));
		const observation = step(kept(journal.addObservation(fitting.id, { what: 'Loose folds at the waist' })));
		const intent = takenIn(n % 2 ? -1 : 1);
		step(kept(journal.addAlteration(fitting.id, { intent, answers: observation.id })));
		const lost = step(kept(journal.addAlteration(fitting.id, { intent: { ...intent, seam: 'sleeve' } })));
		const whole = journal.fitting(fitting.id)!.wholeRevision;
		step(kept(journal.carryToPaper(fitting.id, whole, { waiting: [lost.id] })));
	}
}
