import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { wornName } from './notes.ts';

/** What stands over the drawing of a fitting: its name, who and when, what is on the body, and what is worn under that. */
export function captionOf(page: GarmentPage, fitting: Fitting): readonly string[] {
	const { wearer, toiles } = page;
	const toile = toiles.find(({ id }) => id === fitting.toile);
	const version = (number: number) => (number === 0 ? 'the draft' : `version ${number}`);
	const stitched =
		toile &&
		(toile.stitchedTo === toile.cutFrom
			? `cut from ${version(toile.cutFrom)}`
			: `cut from ${version(toile.cutFrom)}, sewn to ${version(toile.stitchedTo)}`);
	const tried = {
		toile: 'Toile',
		'lining-basted': 'Lining, basted',
		'flat-lined-body': 'Flat-lined body, basted',
		finished: 'Finished garment'
	} as const;
	const worn = wornName(page, fitting);
	return [
		fittingName(fitting),
		fitting.kind === 'table'
			? dayWords(fitting.date, 'weekday')
			: `${wearer.name}, ${dayWords(fitting.date, 'weekday')}`,
		fitting.tried && fitting.tried !== 'toile'
			? `${tried[fitting.tried]}, on the lines of ${version(fitting.on)}`
			: toile
				? `Toile ${toile.number}, ${stitched}`
				: `On the lines of ${version(fitting.on)}`,
		...(worn ? [`Worn under it: ${worn}`] : [])
	];
}
