import { demoFirstFitting, demoSecondFitting } from './demo/fittings.ts';
import { demoMeasuredAgain, demoWearer } from './demo/wearer.ts';
import { done } from './demo/done.ts';
import type { Journal } from './journal/journal.ts';
import type { Garment } from './journal/records.ts';

/**
 * Fills an empty journal with the demo, through the same functions as the pages: an invented wearer with the textbook's
 * figures for a close-fitting waist, one garment of an invented play, two toiles, two fittings, versions 0 to 2, dated as if
 * they had been written down in January to March 2026. All of it is kept, or nothing.
 *
 * `draft` is the file of the demo's base draft. A journal that holds anything is left alone, with `undefined`. Anything that
 * the journal refuses is our own mistake and is thrown.
 */
export function fillDemo(journal: Journal, draft: unknown): Garment | undefined {
	if (journal.entries({ limit: 1 }).length > 0) return undefined;
	return done(
		journal.together(() => {
			const { wearer, foundation } = demoWearer(journal);
			const { garment } = journal.asOf('2026-01-18T10:20:00.000Z', () =>
				done(
					journal.addGarment({
						name: 'Governess jacket',
						wearer: wearer.id,
						madeFor: 'Snow at Nethermoor',
						neededOn: '2026-04-02',
						cloth: 'grey-green wool serge, cotton lining',
						easePreset: 'close-over-stays',
						draft,
						source: 'demo',
						sourceName: 'Drawn for the demo'
					})
				)
			);
			demoFirstFitting(journal, garment, foundation);
			demoMeasuredAgain(journal, { wearer, foundation });
			demoSecondFitting(journal, garment, foundation);
			return { ok: true, value: garment } as const;
		})
	);
}
