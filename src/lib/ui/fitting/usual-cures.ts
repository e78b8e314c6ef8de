import type { Draft } from '../../engine/index.ts';
import { observations, type Primitive, type Remedy, type RemedyKind } from '../../measure/observations.ts';
import { findAct } from './acts.ts';
import { atStart } from './casing.ts';
import { targetsFor } from './targets.ts';
import { addressOf } from './typed.ts';

/** What usually lies behind something that is seen, and what usually cures it. */
export interface UsualCures {
	readonly causes: readonly string[];
	readonly ways: readonly UsualCure[];
}

export interface UsualCure {
	/** “Lengthen: the centre front”. */
	readonly words: string;
	/** The act in the hand, with no amount yet, as an answer to what was seen; absent where the pattern stays as it is. */
	readonly href?: string;
}

/** What was seen, as it was written down. */
export interface SeenThing {
	readonly id: string;
	readonly what: string;
	/** The seam, edge or dart that it was seen at, by its whole name. */
	readonly feature?: string | undefined;
}

/** The act that records a remedy of each kind, and which other where it is for one of its primitives. */
const recordedBy: Readonly<Record<RemedyKind, Partial<Record<Primitive, string>> & { readonly usually: string }>> = {
	seam: { usually: 'took-in', 'let out': 'let-out' },
	edge: { usually: 'chalked', 'let out': 'open-edge' },
	dart: { usually: 'new-dart' },
	'fold-dart': { usually: 'new-dart' },
	'dart-set': { usually: 'changed-dart' },
	'dart-swing': { usually: 'changed-dart' },
	spread: { usually: 'slashed', shorten: 'folded-across', lap: 'folded-across' },
	'bust-spread': { usually: 'slashed' },
	mark: { usually: 'marked' }
};

function actOf({ kind, op }: Remedy): string | undefined {
	return kind && (recordedBy[kind][op] ?? recordedBy[kind].usually);
}

/**
 * The usual causes and cures of something that was chosen from the list of what is seen; undefined for what was said in other
 * words. Each cure leads to its act, at the place where it was seen if that act is done there, and says no amount: nothing is
 * done by itself.
 */
export function usualCures(draft: Draft, seen: SeenThing, side: string): UsualCures | undefined {
	const listed = observations.find(({ what }) => what === seen.what);
	return listed && { causes: listed.causes, ways: listed.remedies.map((remedy) => cure(draft, remedy, seen, side)) };
}

function cure(draft: Draft, remedy: Remedy, seen: SeenThing, side: string): UsualCure {
	const words = remedy.op === 'off the pattern' ? atStart(remedy.at) : `${atStart(remedy.op)}: ${remedy.at}`;
	const act = findAct(actOf(remedy));
	if (!act) return { words };
	const there = targetsFor(draft, act.to).find(({ id }) => id === seen.feature);
	return { words, href: addressOf({ side, act: act.key, ...(there && { [there.of]: there.id }), answers: seen.id }) };
}
