import { inch } from '../../measure/units.ts';
import type { Journal } from '../journal/journal.ts';
import type { Foundation, Measures, Wearer } from '../journal/records.ts';
import { done } from './done.ts';

/**
 * Neck 13, bust 38, front 21 1/2, chest 14, width of back 13 1/2, length of back 15, depth 7, armhole 15, waist 25 inches:
 * Woman's Institute, text on close-fitting patterns, § 30 (c. 1915–20). The hip and the arm are invented.
 */
const textbook = {
	neck: 13,
	bust: 38,
	'front-waist-length': 21.5,
	'chest-width': 14,
	'back-width': 13.5,
	'back-waist-length': 15,
	'scye-depth': 7,
	armscye: 15,
	waist: 25,
	hip: 37,
	'upper-arm': 11.25,
	wrist: 6.25
};

export interface DemoWearer {
	readonly wearer: Wearer;
	readonly foundation: Foundation;
}

/** An invented wearer, measured over what she will wear. */
export function demoWearer(journal: Journal): DemoWearer {
	return journal.asOf('2026-01-09T15:10:00.000Z', () => {
		const wearer = done(journal.addWearer({ name: 'Ines Varrow', note: 'Carries a tray in Act II.' }));
		const foundation = done(
			journal.addFoundation(wearer.id, {
				name: 'chemise, corset laced to 25″, petticoat band',
				note: 'The corset is her own; she laces it herself.'
			})
		);
		const sheet = { date: '2026-01-09', foundation: foundation.id, takenBy: 'M. Thorne', measures: inInches(textbook) };
		done(journal.addSheet(wearer.id, sheet));
		return { wearer, foundation };
	});
}

/** The same wearer two months on, over the same things. */
export function demoMeasuredAgain(journal: Journal, { wearer, foundation }: DemoWearer): void {
	journal.asOf('2026-03-02T11:00:00.000Z', () =>
		done(
			journal.addSheet(wearer.id, {
				date: '2026-03-02',
				foundation: foundation.id,
				takenBy: 'M. Thorne',
				note: 'After three weeks of rehearsal.',
				measures: inInches({ ...textbook, bust: 38.25, hip: 37.25 })
			})
		)
	);
}

const inInches = (measures: Readonly<Record<string, number>>): Measures =>
	Object.fromEntries(Object.entries(measures).map(([name, inches]) => [name, inches * inch]));
