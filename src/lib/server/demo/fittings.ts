import { inch } from '../../measure/units.ts';
import type { Journal } from '../journal/journal.ts';
import type { Allowances, Foundation, Garment, Toile } from '../journal/records.ts';
import { armholeDartTrued, demoAlterations } from './alterations.ts';
import { done } from './done.ts';

/** Allowances of a fitting toile: 1″ on the seams, 1/4″ round the neck (Construction of Clothing, University of Wisconsin), 3/8″ round the armhole (The Dressmaker, c. 1916, for every seam that is no outlet). */
const allowances: Allowances = {
	'back/neck': inch / 4,
	'front/neck': inch / 4,
	'back/armhole': (3 * inch) / 8,
	'side-back/armhole': (3 * inch) / 8,
	'under-arm/armhole': (3 * inch) / 8,
	'front/armhole': (3 * inch) / 8,
	'front/front-edge': 1.5 * inch
};

const sleevesOff = ['top-sleeve', 'under-sleeve'];

/** Toile 1, fitting 1 on 28 January, and version 1 the day after. */
export function demoFirstFitting(journal: Journal, garment: Garment, foundation: Foundation): void {
	const toile = journal.asOf('2026-01-22T09:30:00.000Z', () =>
		done(journal.addToile(garment.id, { cutFrom: 0, cloth: 'calico, medium, washed', allowance: inch, allowances }))
	);
	journal.asOf('2026-01-27T16:00:00.000Z', () =>
		done(journal.moveToile(toile.id, toile.revision, { state: 'put-together', note: 'basted, front edges lapped' }))
	);
	const fitting = journal.asOf('2026-01-28T14:00:00.000Z', () =>
		done(
			journal.addFitting(garment.id, {
				...{ kind: 'fitting', date: '2026-01-28', from: '14:00', to: '14:50', tried: 'toile', toile: toile.id },
				...{ foundation: foundation.id, worn: 'outside', pinnedBy: 'M. Thorne', pinsIn: 31, pinsOut: 31 },
				stateOfToile: {
					piecesOff: sleevesOff,
					sewn: 'basted',
					closing: 'lapped',
					bones: false,
					waistTape: true,
					washed: true
				},
				checkMeasures: { bust: 38 * inch, waist: 25 * inch },
				...{ shoes: 'stage boots', heel: 1.5 * inch, bring: 'sleeves cut, not yet set in' }
			})
		)
	);
	journal.asOf('2026-01-28T14:20:00.000Z', () => {
		const loose = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'under-arm/side', side: 'both', words: 'both sides, above the waist' },
				what: 'Loose folds up and down at the waist',
				howBad: 3
			})
		);
		const hollow = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'back/centre-back', words: 'centre back, at the waist' },
				what: 'The cloth bridges over the hollow of the back without touching'
			})
		);
		const front = done(
			journal.addObservation(fitting.id, {
				where: { piece: 'front', point: [190, 330], words: 'front, below the bust line' },
				what: 'The cloth bridges over from the bust line to the waist without touching'
			})
		);
		for (const [alteration, answers] of [
			[demoAlterations.sideTakenIn, loose],
			[demoAlterations.centreBackTakenIn, hollow],
			[demoAlterations.frontDartWider, front]
		] as const)
			done(journal.addAlteration(fitting.id, { ...alteration, answers: answers.id }));
		done(journal.addAlteration(fitting.id, demoAlterations.bustPointMarked));
	});
	journal.asOf('2026-01-29T10:00:00.000Z', () => {
		carry(journal, fitting.id);
		takenApart(journal, toile);
	});
}

/** Toile 2 cut from version 1, fitting 2 on 10 March, and version 2 the day after. */
export function demoSecondFitting(journal: Journal, garment: Garment, foundation: Foundation): void {
	const [first] = journal.garment(garment.id)!.fittings;
	const toile = journal.asOf('2026-02-24T09:00:00.000Z', () =>
		done(journal.addToile(garment.id, { cutFrom: 1, cloth: 'calico, medium, washed', allowance: inch, allowances }))
	);
	journal.asOf('2026-03-06T17:00:00.000Z', () =>
		done(
			journal.moveToile(toile.id, toile.revision, { state: 'put-together', note: 'long stitch, front edges lapped' })
		)
	);
	const fitting = journal.asOf('2026-03-10T14:00:00.000Z', () =>
		done(
			journal.addFitting(garment.id, {
				...{ kind: 'fitting', date: '2026-03-10', from: '14:00', to: '14:40', tried: 'toile', toile: toile.id },
				...{ foundation: foundation.id, worn: 'outside', pinnedBy: 'M. Thorne', pinsIn: 26, pinsOut: 26 },
				stateOfToile: {
					piecesOff: sleevesOff,
					sewn: 'long-stitch',
					closing: 'lapped',
					bones: true,
					waistTape: true,
					washed: true
				},
				checkMeasures: { bust: 38.25 * inch, waist: 25 * inch },
				...{ shoes: 'stage boots', heel: 1.5 * inch, bring: 'sleeves, the tray, lining cotton' }
			})
		)
	);
	let newDart = '';
	journal.asOf('2026-03-10T14:10:00.000Z', () => {
		const became = ['solved', 'solved', 'better'] as const;
		first.observations.forEach(({ id }, index) =>
			done(journal.giveVerdict(id, { fitting: fitting.id, verdict: became[index] }))
		);
		const rides = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'back/side-back', side: 'both', words: 'back of the hip' },
				what: 'Folds across the back at the waist while the basque is tight below',
				howBad: 3
			})
		);
		const gapes = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'front/armhole', side: 'both', words: 'front of the armhole' },
				what: 'The armhole gapes in front'
			})
		);
		const high = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'front/neck', words: 'front of the neck' },
				what: 'The neck edge is tight or stands too high',
				howBad: 1,
				posture: 'seated'
			})
		);
		const leans = done(
			journal.addObservation(fitting.id, {
				where: { feature: 'under-arm/under-arm-back', side: 'both' },
				what: 'The under-arm seam swings back at the waist',
				howBad: 1
			})
		);
		done(
			journal.addObservation(fitting.id, {
				where: { words: 'back of the armhole, both sides' },
				what: 'Cannot lift the tray: sleeve or back?',
				howBad: 2,
				posture: 'reaching'
			})
		);
		for (const [alteration, answers] of [
			[demoAlterations.sideBackOpened, rides],
			[demoAlterations.armholeDart, gapes],
			[demoAlterations.neckLowered, high],
			[demoAlterations.underArmSeamMoved, leans]
		] as const) {
			const kept = done(journal.addAlteration(fitting.id, { ...alteration, answers: answers.id }));
			if (alteration === demoAlterations.armholeDart) newDart = kept.id;
		}
	});
	journal.asOf('2026-03-11T09:40:00.000Z', () => {
		done(journal.addAlteration(fitting.id, armholeDartTrued(newDart)));
		carry(journal, fitting.id, 'under-arm-back');
		done(
			journal.addNote({ garment: garment.id, feature: 'armhole', text: 'Set the sleeves in before the lining is cut.' })
		);
	});
}

/** Carries a fitting; the query about the length of one seam is left as it is, eased in. */
function carry(journal: Journal, fittingId: string, easedIn?: string): void {
	const { fitting, queries } = journal.previewFitting(fittingId)!;
	const left = queries
		.filter(({ code, where }) => code === 'seam-length' && where === easedIn)
		.map(({ code, where }) => ({ code, where, note: 'eased in between the notches' }));
	done(journal.carryToPaper(fittingId, fitting.wholeRevision, { left }));
}

function takenApart(journal: Journal, { id }: Toile): void {
	const note = 'pins traced through, left half only';
	const marked = done(journal.moveToile(id, journal.toile(id)!.revision, { state: 'marked', note }));
	done(journal.moveToile(id, marked.revision, { state: 'taken-apart' }));
}
