import { carry } from '../../../engine/index.ts';
import type { AlterationBase, Draft, Query } from '../../../engine/index.ts';
import { carryEach, carryInHand, type CarriedOne } from '../carried/carry-each.ts';
import { formOfAlteration } from '../form/form-of-alteration.ts';
import { asAlterations, readAlteration, type FormRead } from '../form/read-alteration.ts';
import type { GroundAlteration } from '../ground.ts';
import { handOf, targetTyped, withPlaces, type Hand } from '../hand.ts';
import { isThere, notThere } from '../targets.ts';
import { field, type Typed } from '../typed.ts';
import { alterationTitle } from '../words/alteration.ts';
import type { KeptView } from './kept-view.ts';

/** The alteration in the hand: its form as typed so far, and everything carried with it as if it were kept. */
export interface InHand {
	readonly kept: KeptView;
	readonly typed: Typed;
	readonly hand: Hand;
	/** The draft that it is carried to. */
	readonly onto: Draft;
	/** The kept alteration that is changed. */
	readonly editing?: GroundAlteration;
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
	readonly after: Draft;
	readonly queries: () => readonly Query[];
}

/** What the fields name is not there: a sentence that says what is. */
export interface NotThere {
	readonly notThere: string;
}

/** The hand from the fields; `asked` may name an alteration or a target that is not there. */
export function inHand(kept: KeptView, asked: Typed): InHand | NotThere {
	const { ground, alterations, each } = kept;
	const { base, unit } = ground;
	const editing = alterations.find(({ id }) => id === field(asked, 'alteration'));
	if (!editing && field(asked, 'alteration') !== '') return { notThere: noSuchAlteration };
	const onto = draftBefore(kept, editing?.id);
	const form = editing && formOfAlteration(onto, editing, unit);
	const typed = withPlaces(onto, editing && field(asked, 'act') === '' ? { ...form, ...asked } : asked, unit);
	const target = targetTyped(typed);
	if (target && !isThere(onto, target)) return { notThere: notThere(onto, target) };
	const fixed = editing && !form ? alterationTitle(onto, editing.intent, unit, editing.act) : undefined;
	const hand = handOf(onto, fixed === undefined ? typed : {}, unit);
	const read = hand.target && hand.act && anythingTyped(typed) ? readAlteration(onto, typed, unit) : undefined;
	const pending = read && 'read' in read ? asAlterations(read.read.intents) : [];
	const carried =
		pending.length === 0
			? each
			: editing
				? carryEach(base, instead(kept, pending, editing))
				: [...each, ...carryInHand(onto, pending)];
	const number = editing?.number ?? Math.max(0, ...alterations.map((one) => one.number)) + 1;
	const numbers = new Map(alterations.map((one) => [one.id, one.number]));
	const focusIds = pending.length > 0 ? pending.map(({ id }) => id) : focusOf(alterations, editing, asked);
	return {
		kept,
		typed,
		hand,
		onto,
		...(editing && { editing }),
		...(fixed !== undefined && { fixed }),
		number,
		...(read && { read }),
		carried,
		numberOf: (id) => numbers.get(id) ?? number,
		focus: carried.filter(({ alteration }) => focusIds.includes(alteration.id)),
		after: pending.length > 0 ? carried[carried.length - 1].after : kept.after,
		queries: () => queriesOf(kept, pending, editing)
	};
}

const noSuchAlteration = 'There is no alteration by that name in this fitting. It may have been pinned at another one.';

/** The draft that the alteration in the hand is carried to: a new one comes last, a changed one keeps its place. */
export function draftBefore({ ground, alterations, standing, each }: KeptView, changed: string | undefined): Draft {
	const position = alterations.find(({ id }) => id === changed)?.position ?? Infinity;
	const at = standing.findIndex((one) => one.position >= position);
	return at >= 0 ? each[at].before : (each[each.length - 1]?.after ?? ground.base);
}

/** Fields that say an amount or a place; the others only choose. */
const saying: ReadonlySet<string> = new Set(
	'width length short by first last at firstAt place up aside mark'.split(' ')
);

const anythingTyped = (typed: Typed) =>
	Object.entries(typed).some(([name, text]) => text.trim() !== '' && (name.includes('.') || saying.has(name)));

/** All that stands, with those in the hand in the place of the one that they change. */
function instead(
	{ standing }: KeptView,
	pending: readonly AlterationBase[],
	editing: GroundAlteration
): readonly AlterationBase[] {
	const intents = standing.map(({ intent }) => intent);
	const at = standing.findIndex(({ id }) => id === editing.id);
	return at < 0 ? [...intents, ...pending] : intents.toSpliced(at, 1, ...pending);
}

/** What came of carrying one alteration by itself, a remark or a refusal: asked still, whatever is carried after it. */
const ofCarrying: ReadonlySet<string> = new Set(
	'bridge notch-lost extension-short gap-short unplaced no-join too-tight'.split(' ')
);

function queriesOf(
	kept: KeptView,
	pending: readonly AlterationBase[],
	editing: GroundAlteration | undefined
): readonly Query[] {
	const { base, checks } = kept.ground;
	if (pending.length === 0) return kept.queries();
	if (editing) return carry(base, instead(kept, pending, editing), checks).queries;
	// A new one comes last: what stands already need not be carried again to ask what comes of it.
	const asked = carry(kept.after, pending, {
		...checks,
		base: checks.base ?? base,
		before: checks.before ?? base
	}).queries;
	const again = (one: Query) => asked.some(({ code, where }) => code === one.code && where === one.where);
	return [...asked, ...kept.queries().filter((one) => ofCarrying.has(one.code) && !again(one))];
}

/** The alteration that is changed, or was just kept, with the other side of it. */
function focusOf(
	alterations: readonly GroundAlteration[],
	editing: GroundAlteration | undefined,
	asked: Typed
): readonly string[] {
	const one = editing ?? alterations.find(({ id }) => id === field(asked, 'kept'));
	if (!one) return [];
	if (editing) return [one.id];
	return [one.id, ...alterations.filter(({ pairedWith }) => pairedWith === one.id).map(({ id }) => id)];
}
