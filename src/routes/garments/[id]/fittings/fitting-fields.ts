import type { Draft } from '$lib/engine/index.ts';
import { undividedName } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { pieceName } from '$lib/ui/fitting/feature-names.ts';
import { lengthTyped, type Typed } from '$lib/ui/fitting/typed.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import { checked, sewn, ticks } from './read-fitting.ts';

/** What the fields offer: this garment's toiles, this wearer's things worn under it, the pieces of the draft. */
export function offeredFields(page: GarmentPage, draft: Draft, last: Fitting | undefined) {
	const version = (number: number) => (number === 0 ? 'the draft' : `version ${number}`);
	return {
		toiles: [
			{ value: '', label: page.toiles.length === 0 ? 'none has been cut' : 'none' },
			...page.toiles
				.map(({ id, number, stitchedTo, state }) => ({
					value: id,
					label: `Toile ${number}, sewn to ${version(stitchedTo)}${state === 'scrap' ? ', done with' : ''}`
				}))
				.reverse()
		],
		foundations: [
			{ value: '', label: 'not noted' },
			...page.foundations.map(({ id, name }) => ({ value: id, label: name }))
		],
		foundationHint: foundationHint(page, last),
		pieces: [...new Set(draft.pieces.map(({ id }) => undividedName(id)))].map((id) => ({
			id,
			name: pieceName(draft, id)
		}))
	};
}

/** What was worn before, and what ease is reckoned over: said beside the field, for a fit holds only over its foundation. */
function foundationHint({ foundations, sheet }: GarmentPage, last: Fitting | undefined): string {
	const nameOf = (id: string | null) => foundations.find((one) => one.id === id)?.name;
	const [before, measured] = [nameOf(last?.foundation ?? null), nameOf(sheet?.foundation ?? null)];
	const parts = [
		last && before && `At ${fittingName(last).toLowerCase()}: ${before}.`,
		sheet && measured && `Ease is reckoned over: ${measured}, measured on ${dayWords(sheet.date)}.`
	];
	return parts.filter(Boolean).join(' ');
}

/** What a new fitting begins with: what mostly stays from one to the next. */
export function freshFields(
	page: GarmentPage,
	last: Fitting | undefined,
	draft: Draft,
	asked: { readonly kind: 'fitting' | 'table'; readonly toile: string; readonly date: string; readonly from: string }
): Typed {
	const toile = page.toiles.some(({ id }) => id === asked.toile) ? asked.toile : (page.toiles.at(-1)?.id ?? '');
	const off = last?.stateOfToile.piecesOff ?? [];
	return {
		kind: asked.kind,
		date: asked.date,
		from: asked.from,
		tried: 'toile',
		toile,
		foundation: last?.foundation ?? page.sheet?.foundation ?? '',
		worn: last?.worn ?? 'outside',
		pinnedBy: last?.pinnedBy ?? '',
		shoes: last?.shoes ?? '',
		sewnHow: last?.stateOfToile.sewn ?? '',
		closing: last?.stateOfToile.closing ?? '',
		...piecesOn(draft, off)
	};
}

/** A fitting as its form shows it. */
export function fieldsOfFitting(fitting: Fitting, draft: Draft, unit: Unit): Typed {
	const { stateOfToile: state, asSewn, checkMeasures, heel } = fitting;
	const length = (mm: number | null | undefined) => (mm === null || mm === undefined ? '' : lengthTyped(mm, unit));
	return {
		kind: fitting.kind,
		date: fitting.date,
		from: fitting.from ?? '',
		to: fitting.to ?? '',
		tried: fitting.tried ?? '',
		toile: fitting.toile ?? '',
		foundation: fitting.foundation ?? '',
		worn: fitting.worn ?? '',
		sewnHow: state.sewn ?? '',
		closing: state.closing ?? '',
		closingWidth: length(state.closingWidth),
		give: state.give ?? '',
		...Object.fromEntries(ticks.map((name) => [name, state[name] ? 'yes' : ''])),
		...piecesOn(draft, state.piecesOff ?? []),
		...Object.fromEntries(checked.map((name) => [`check.${name}`, length(checkMeasures[name])])),
		...Object.fromEntries(sewn.map((name) => [`asSewn.${name}`, length(asSewn[name])])),
		readFrom: asSewn.readFrom ?? '',
		shoes: fitting.shoes,
		heel: length(heel),
		pinnedBy: fitting.pinnedBy,
		note: fitting.note,
		bring: fitting.bring
	};
}

function piecesOn(draft: Draft, off: readonly string[]): Typed {
	const all = [...new Set(draft.pieces.map(({ id }) => undividedName(id)))];
	return Object.fromEntries(all.map((id) => [`on.${id}`, off.includes(id) ? '' : 'yes']));
}
