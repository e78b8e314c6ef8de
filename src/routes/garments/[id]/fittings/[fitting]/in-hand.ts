import type { Journal } from '$lib/server/journal/journal.ts';
import type { FittingWithContents, GarmentPage, Preview } from '$lib/server/journal/pages.ts';
import type { Alteration } from '$lib/server/journal/records.ts';
import type { AlterationBase, Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import { alterationTitle } from '$lib/ui/fitting/alteration-words.ts';
import { carryEach, type CarriedOne } from '$lib/ui/fitting/carry-each.ts';
import { formOfAlteration } from '$lib/ui/fitting/form-of-alteration.ts';
import { handOf, targetTyped, withPlaces, type Hand } from '$lib/ui/fitting/hand.ts';
import { asAlterations, readAlteration, type FormRead } from '$lib/ui/fitting/read-alteration.ts';
import { isThere, notThere } from '$lib/ui/fitting/targets.ts';
import { field, type Typed } from '$lib/ui/fitting/typed.ts';
import { error } from '@sveltejs/kit';

/** The alteration in the hand: its form as typed so far, and everything carried with it as if it were kept. */
export interface InHand {
	readonly typed: Typed;
	readonly hand: Hand;
	/** The kept alteration that is changed. */
	readonly editing?: Alteration;
	/** Said of one that has no form. */
	readonly fixed?: string;
	readonly number: number;
	/** What the form says, if it says enough. */
	readonly read?: FormRead;
	/** Every alteration in the order of carrying, the one in the hand in its place. */
	readonly carried: readonly CarriedOne[];
	readonly numberOf: (alteration: string) => number;
	/** The one in the hand, or just kept: one or two of `carried`. */
	readonly focus: readonly CarriedOne[];
	readonly preview: Preview;
}

export function inHand(
	journal: Journal,
	page: GarmentPage,
	contents: FittingWithContents,
	asked: Typed,
	unit: Unit
): InHand {
	const { fitting, alterations } = contents;
	const kept = alterations.filter(({ state }) => state !== 'withdrawn');
	const base = baseOf(journal, page, contents);
	const each = carryEach(
		base,
		kept.map(({ intent }) => intent)
	);
	const editing = editedOf(alterations, asked);
	const before = draftBefore(base, kept, each, editing);
	const form = editing && formOfAlteration(before, editing, unit);
	const typed = withPlaces(before, editing && field(asked, 'act') === '' ? { ...form, ...asked } : asked, unit);
	const target = targetTyped(typed);
	if (target && !isThere(before, target)) error(404, notThere(before, target));
	const fixed = editing && !form ? alterationTitle(before, editing.intent, unit, editing.act) : undefined;
	const hand = handOf(before, fixed === undefined ? typed : {}, unit);
	const read = hand.target && hand.act && anythingTyped(typed) ? readAlteration(before, typed, unit) : undefined;
	const pending = read && 'read' in read ? asAlterations(read.read.intents) : [];
	const carried = pending.length > 0 ? carryEach(base, withPending(kept, pending, editing)) : each;
	const number = editing?.number ?? Math.max(0, ...alterations.map((one) => one.number)) + 1;
	const numbers = new Map(alterations.map((one) => [one.id, one.number]));
	const focusIds = pending.length > 0 ? pending.map(({ id }) => id) : focusOf(alterations, editing, asked);
	return {
		typed,
		hand,
		...(editing && { editing }),
		...(fixed !== undefined && { fixed }),
		number,
		...(read && { read }),
		carried,
		numberOf: (id) => numbers.get(id) ?? number,
		focus: carried.filter(({ alteration }) => focusIds.includes(alteration.id)),
		preview: journal.previewFitting(
			fitting.id,
			pending.length > 0 ? { intents: pending, ...(editing && { insteadOf: editing.id }) } : undefined
		)!
	};
}

/** The draft that the fitting is carried onto: the latest version; of a closed one, that which it was carried onto. */
export function baseOf(journal: Journal, page: GarmentPage, { fitting }: FittingWithContents): Draft {
	if (fitting.closedAt !== null) return journal.previewFitting(fitting.id)!.before;
	return journal.version(page.garment.id, page.versions[page.versions.length - 1]!.number)!.draft;
}

function editedOf(alterations: readonly Alteration[], asked: Typed): Alteration | undefined {
	const id = field(asked, 'alteration');
	if (id === '') return undefined;
	const found = alterations.find((one) => one.id === id);
	if (!found)
		error(404, 'There is no alteration by that name in this fitting. It may have been pinned at another one.');
	return found;
}

/** The draft that the alteration in the hand is carried to: a new one comes last, a changed one keeps its place. */
export function draftBefore(
	base: Draft,
	kept: readonly Alteration[],
	each: readonly CarriedOne[],
	editing: Alteration | undefined
): Draft {
	const at = editing ? kept.findIndex(({ position }) => position >= editing.position) : -1;
	return at >= 0 ? each[at]!.before : (each[each.length - 1]?.after ?? base);
}

const anythingTyped = (typed: Typed) =>
	Object.entries(typed).some(
		([name, text]) => text.trim() !== '' && (name.includes('.') || ['width', 'length', 'short', 'by'].includes(name))
	);

function withPending(
	kept: readonly Alteration[],
	pending: readonly AlterationBase[],
	editing: Alteration | undefined
): readonly AlterationBase[] {
	const intents: readonly AlterationBase[] = kept.map(({ intent }) => intent);
	const at = kept.findIndex(({ id }) => id === editing?.id);
	return at < 0 ? [...intents, ...pending] : intents.toSpliced(at, 1, ...pending);
}

/** The alteration that is changed, or was just kept, with the other side of it. */
function focusOf(alterations: readonly Alteration[], editing: Alteration | undefined, asked: Typed): readonly string[] {
	const one = editing ?? alterations.find(({ id }) => id === field(asked, 'kept'));
	if (!one) return [];
	if (editing) return [one.id];
	return [one.id, ...alterations.filter(({ pairedWith }) => pairedWith === one.id).map(({ id }) => id)];
}
