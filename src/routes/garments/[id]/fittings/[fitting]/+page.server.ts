import { dayWords } from '$lib/ui/day-words.ts';
import { afterCommand } from '$lib/ui/fitting/commands.ts';
import type { Problems } from '$lib/ui/fitting/form-parts.ts';
import { readShorthandLine } from '$lib/ui/fitting/shorthand-line.ts';
import { targetsFor } from '$lib/ui/fitting/targets.ts';
import { addressOf, field, type Typed } from '$lib/ui/fitting/typed.ts';
import { carryEach } from '$lib/ui/fitting/carry-each.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { pinsMissing } from '$lib/measure/cautions.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { redirect } from '@sveltejs/kit';
import { closeFitting, countPins } from './close.ts';
import { foundFitting } from './found-fitting.ts';
import { baseOf, inHand } from './in-hand.ts';
import { keepAlteration } from './keep.ts';
import { answerable, askedAgain, pinnedRows, seenRows } from './lists.ts';
import { fittingNotes, wornName } from './notes.ts';
import { giveVerdict, keepObservation } from './observe.ts';
import { leaveOut, move, takeUp } from './order.ts';
import { choosing, closeScene, edgeLinks, sideShown, tableScene } from './scenes.ts';
import { seenPlaces } from './seen-places.ts';
import { toldOf } from './told.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent }) => {
	const { unit } = await parent();
	const { page, contents } = foundFitting(journal, params);
	const { fitting } = contents;
	const asked = typedIn(url);
	const told = field(asked, 'do') !== '' ? afterCommand(asked, unit) : asked;
	// A form sent to be shown names every field: the address keeps those that say something.
	if (told !== asked || Object.values(asked).includes('')) redirect(303, url.pathname + addressOf(told));
	const line = readLine();
	const held = inHand(journal, page, contents, line ? choosing(asked) : asked, unit);
	const { preview, hand, carried } = held;
	const side = sideShown(held.typed);
	const name = fittingName(fitting);
	const here = `/garments/${page.garment.id}/fittings/${fitting.id}`;
	const sides = (['right', 'left'] as const).map((one) => ({
		name: one === 'right' ? 'Right' : 'Left',
		href: here + addressOf(held.typed, { side: one }),
		here: one === side
	}));
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${page.garment.id}` },
			{ name }
		],
		...(fitting.closedAt === null && { kept: 'Kept as you go' }),
		sides,
		dim: true
	};
	return {
		head,
		here,
		name,
		side,
		sidesNamed: sides.map((one) => ({ ...one, name: `${one.name} side` })),
		garment: page.garment.id,
		caption: captionOf(page, fitting),
		worn: wornName(page, fitting),
		closed: fitting.closedAt === null ? undefined : { into: fitting.carriedInto },
		table: fitting.kind === 'table',
		revision: fitting.revision,
		wholeRevision: fitting.wholeRevision,
		notes: fittingNotes(page, fitting, journal.version(page.garment.id, fitting.on)!.draft, unit),
		scene: tableScene(journal, page, fitting, held, side, unit),
		close: closeScene(journal, page, fitting, held, side, unit),
		links: fitting.closedAt === null ? edgeLinks(preview.before, held) : {},
		typed: held.typed,
		hand,
		number: held.number,
		editing: held.editing && { id: held.editing.id, revision: held.editing.revision },
		fixed: held.fixed,
		problems: held.read && 'problems' in held.read ? whileTyping(held.read.problems, held.typed) : {},
		line,
		seamsFirst: (['seam', 'edge', 'dart'] as const).map((to) => targetsFor(preview.after, to)),
		told: toldOf(journal, page, fitting, held, unit),
		kept: field(asked, 'kept'),
		pinned: pinnedRows(contents, carried, preview.before, unit),
		seen: seenRows(contents, preview.before),
		seenPlaces: seenPlaces(preview.before),
		asked: askedAgain(page, contents, preview.before),
		answerable: answerable(page, contents),
		pins: { in: fitting.pinsIn, out: fitting.pinsOut, missing: missing(fitting) },
		bring: fitting.bring
	};

	/** A line of shorthand becomes the fields of the form; the address then says those. */
	function readLine() {
		const text = field(asked, 'line');
		if (text === '' || fitting.closedAt !== null) return undefined;
		const kept = contents.alterations.filter(({ state }) => state !== 'withdrawn');
		const base = baseOf(journal, page, contents);
		const each = carryEach(
			base,
			kept.map(({ intent }) => intent)
		);
		const read = readShorthandLine(each[each.length - 1]?.after ?? base, text, unit);
		if ('typed' in read)
			redirect(303, url.pathname + addressOf({ ...choosing(asked), ...read.typed, shorthand: text }));
		return { text, problem: read.problem };
	}
};

/** What is wrong so far: of fields that are still empty nothing is said before the form is sent. */
function whileTyping(problems: Problems, typed: Typed): Problems {
	return Object.fromEntries(
		Object.entries(problems).filter(([name]) => field(typed, name) !== '' && name !== 'places')
	);
}

function missing({ pinsIn, pinsOut }: Fitting): string | undefined {
	return pinsIn === null || pinsOut === null ? undefined : pinsMissing(pinsIn, pinsOut);
}

/** What the address says; the name of an action is no field. */
function typedIn(url: URL): Typed {
	return Object.fromEntries([...url.searchParams].filter(([name]) => !name.startsWith('/')));
}

function captionOf({ wearer, toiles }: GarmentPage, fitting: Fitting): readonly string[] {
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
	return [
		fitting.kind === 'table'
			? dayWords(fitting.date, 'weekday')
			: `${wearer.name}, ${dayWords(fitting.date, 'weekday')}`,
		fitting.tried && fitting.tried !== 'toile'
			? `${tried[fitting.tried]}, on the lines of ${version(fitting.on)}`
			: toile
				? `Toile ${toile.number}, ${stitched}`
				: `On the lines of ${version(fitting.on)}`
	];
}

export const actions: Actions = {
	keep: keepAlteration,
	leaveOut,
	takeUp,
	move,
	observe: keepObservation,
	verdict: giveVerdict,
	pins: countPins,
	close: closeFitting
};
