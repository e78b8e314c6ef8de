import type { Draft } from '../../../engine/index.ts';
import { parseLength } from '../../../measure/parse-length.ts';
import type { Unit } from '../../../measure/units.ts';
import type { Act } from '../acts.ts';
import { atStart } from '../casing.ts';
import { wholeName } from '../feature-names.ts';
import { field, lengthTyped, type Typed } from '../typed.ts';
import { canBeWedge, endsInSentence, usuallyStays, usualOff, type Staying } from './cuts-across.ts';
import { depthHere, type DepthHere } from './depth-here.ts';
import { crossedBy, findLine } from './lines-across.ts';

/** Cloth folded or slashed across, as its form shows it. */
export interface AcrossInHand {
	/** A fold takes cloth away; a slash adds it. */
	readonly fold: boolean;
	/** How far from its line, as typed or as usual; absent where the line itself is the place. */
	readonly off?: string;
	/** Pieces that the line crosses there. */
	readonly pieces: readonly { readonly id: string; readonly name: string; readonly ticked: boolean }[];
	/** “Centre-back seam”, “Front edge”: of the pieces that are ticked. */
	readonly ends: readonly [string, string];
	readonly canBeWedge: boolean;
	readonly depth: DepthHere;
	/** What stays if nothing else is said, and why. */
	readonly stays: Staying;
	readonly staysWhy: string;
}

/** The form of an act across, from its fields as far as they can be read. The line is one of the draft's. */
export function acrossInHand(draft: Draft, act: Act, id: string, typed: Typed, unit: Unit): AcrossInHand {
	const line = findLine(draft, id)!;
	const fresh = field(typed, 'ticked') === '';
	const usual = usualOff(line, unit);
	const off = fresh && field(typed, 'off') === '' ? lengthTyped(usual, unit) : (typed.off ?? '');
	const read = parseLength(off, unit);
	const height = ('mm' in read ? read.mm : usual) * (field(typed, 'offWay') === 'below' ? -1 : 1);
	const there = crossedBy(line, height);
	const crossed = there.length > 0 ? there : crossedBy(line, 0);
	const isTicked = (piece: string) => fresh || field(typed, `piece.${piece}`) !== '';
	const ticked = crossed.filter((one) => isTicked(one.id));
	const shown = ticked.length > 0 ? ticked : crossed;
	const [first, last] = endsInSentence(draft, line, shown).map((name) => atStart(name.replace(/^the /, '')));
	const stays = usuallyStays(shown, line);
	const grained = shown.some(({ piece }) => piece.grain !== undefined);
	return {
		fold: act.way === 'in',
		...(!line.fixed && { off }),
		pieces: crossed.map((one) => ({ id: one.id, name: wholeName(one.piece), ticked: isTicked(one.id) })),
		ends: [first, last],
		canBeWedge: canBeWedge(line, shown),
		depth: depthHere(typed, unit),
		stays,
		staysWhy: `${grained ? 'The grain lines are' : 'The bigger part is'} ${stays} the line: that part stays if you say nothing else.`
	};
}
