import { clockWords } from '$lib/ui/clock-words.ts';
import { afterCommand } from '$lib/ui/fitting/commands.ts';
import { choosing } from '$lib/ui/fitting/choosing.ts';
import { inUnit } from '$lib/ui/fitting/form/in-unit.ts';
import { addressOf, field, type Typed } from '$lib/ui/fitting/typed.ts';
import { keptView } from '$lib/ui/fitting/view/kept-view.ts';
import { shorthandAsked } from '$lib/ui/fitting/view/shorthand-asked.ts';
import { fittingName } from '$lib/ui/garment/station-words.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { pinsMissing } from '$lib/measure/cautions.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { randomKey } from '$lib/ui/outbox/random-key.ts';
import { redirect } from '@sveltejs/kit';
import { closeFitting, countPins } from './close.ts';
import { foundFitting } from './found-fitting.ts';
import { groundOf } from './ground-of.ts';
import { handsAt } from './hands.ts';
import { keepAlteration } from './keep.ts';
import { answerable, askedAgain, listedToSee, seenRows } from './lists.ts';
import { fittingNotes, wornName } from './notes.ts';
import { giveVerdict, keepObservation } from './observe.ts';
import { leaveOut, move, takeUp } from './order.ts';
import { photosTold } from './photos-told.ts';
import { seenPlaces } from './seen-places.ts';
import { redoStep, stepsTold, undoStep } from './steps.ts';
import { saysNothing, viewAsked } from './view-asked.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { journal }, params, url, parent, cookies, isDataRequest }) => {
	const { unit } = await parent();
	const { page, contents } = foundFitting(journal, params);
	const { fitting } = contents;
	const asked = inUnit(typedIn(url), unit);
	const told = field(asked, 'do') !== '' ? afterCommand(asked, unit) : asked;
	// A form sent to be shown names every field: the address keeps those that say something.
	if (told !== asked || Object.values(asked).includes('')) redirect(303, url.pathname + addressOf(told));
	const preview = journal.previewFitting(fitting.id)!;
	const ground = groundOf(journal, page, contents, preview, unit);
	const kept = keptView(ground);
	const line = fitting.closedAt === null ? shorthandAsked(kept, asked) : undefined;
	if (line && 'typed' in line) redirect(303, url.pathname + addressOf(line.typed));
	const hands = handsAt(journal, fitting.id, cookies);
	const left = fitting.closedAt === null && saysNothing(asked) && hands.own ? inUnit(hands.own.typed, unit) : undefined;
	const view = viewAsked(kept, { asked: line ? choosing(asked) : asked, left, again: isDataRequest });
	const { side } = view;
	const name = fittingName(fitting);
	const here = `/garments/${page.garment.id}/fittings/${fitting.id}`;
	const sides = (['right', 'left'] as const).map((one) => ({
		name: one === 'right' ? 'Right' : 'Left',
		side: one,
		only: 'side',
		href: here + addressOf(view.typed, { side: one }),
		here: one === side
	}));
	const head: HeadData = {
		crumbs: [
			{ name: 'Workroom', href: '/' },
			{ name: page.garment.name, href: `/garments/${page.garment.id}` },
			{ name }
		],
		...(fitting.closedAt === null && { kept: keptWords(journal.lastKept(fitting.id)) }),
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
		caption: ground.caption.slice(1),
		worn: wornName(page, fitting),
		closed: fitting.closedAt === null ? undefined : { into: fitting.carriedInto },
		table: fitting.kind === 'table',
		revision: fitting.revision,
		wholeRevision: fitting.wholeRevision,
		drawn: randomKey(),
		notes: fittingNotes(page, fitting, journal.version(page.garment.id, fitting.on)!.draft, unit),
		steps: stepsTold(journal.steps(fitting.id), preview.before, unit),
		hands: hands.heard,
		held: hands.others.map(({ number, savedAt }) => ({ number, since: clockWords(new Date(savedAt)) })),
		ground,
		view,
		line,
		photos: fitting.kind === 'table' ? undefined : photosTold(journal, params, unit),
		seen: seenRows(contents, preview.before, side),
		listed: fitting.closedAt === null ? listedToSee() : [],
		seenPlaces: seenPlaces(preview.before),
		asked: askedAgain(page, contents, preview.before),
		answerable: answerable(page, contents),
		pins: { in: fitting.pinsIn, out: fitting.pinsOut, missing: missing(fitting) },
		bring: fitting.bring
	};
};

/** “Kept as you go, 2.32 pm”; while nothing has been kept yet, without a time. */
const keptWords = (at: string | null): string =>
	at === null ? 'Kept as you go' : `Kept as you go, ${clockWords(new Date(at))}`;

function missing({ pinsIn, pinsOut }: Fitting): string | undefined {
	return pinsIn === null || pinsOut === null ? undefined : pinsMissing(pinsIn, pinsOut);
}

/** What the address says; the name of an action is no field, nor is the key of the page that a form was on. */
function typedIn(url: URL): Typed {
	return Object.fromEntries([...url.searchParams].filter(([name]) => !name.startsWith('/') && name !== 'drawn'));
}

export const actions: Actions = {
	keep: keepAlteration,
	leaveOut,
	takeUp,
	move,
	undo: undoStep,
	redo: redoStep,
	observe: keepObservation,
	verdict: giveVerdict,
	pins: countPins,
	close: closeFitting
};
