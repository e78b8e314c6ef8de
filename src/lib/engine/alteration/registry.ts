/** The kinds of alteration. Adding one is a file in kinds/ and a line here. */
import { bustSpread } from './kinds/bust-spread.ts';
import { dart } from './kinds/dart.ts';
import { dartSet } from './kinds/dart-set.ts';
import { dartSwing } from './kinds/dart-swing.ts';
import { edge } from './kinds/edge.ts';
import { foldDart } from './kinds/fold-dart.ts';
import { mark } from './kinds/mark.ts';
import { seam } from './kinds/seam.ts';
import { smooth } from './kinds/smooth.ts';
import { spread } from './kinds/spread.ts';
import { trueDart } from './kinds/true-dart.ts';
import { trueSeam } from './kinds/true-seam.ts';
import type { Kind } from './kind.ts';
import type { AlterationBase } from './types.ts';

const kinds = [
	seam,
	edge,
	dart,
	dartSet,
	dartSwing,
	foldDart,
	bustSpread,
	mark,
	smooth,
	spread,
	trueDart,
	trueSeam
] as const;

/** Any alteration, as one of the kinds writes it. */
export type Alteration = (typeof kinds)[number] extends Kind<infer A> ? A : never;

const byName = new Map<string, Kind<AlterationBase>>(
	kinds.map((kind) => [kind.kind, kind as unknown as Kind<AlterationBase>])
);

export function kindNamed(name: string): Kind<AlterationBase> | undefined {
	return byName.get(name);
}

/** The kind of an alteration that has been parsed. Thrown: a kind that is not in the registry, which is our own mistake. */
export function kindOf(alteration: AlterationBase): Kind<AlterationBase> {
	const kind = byName.get(alteration.kind);
	if (!kind) throw new Error(`There is no kind of alteration called ${alteration.kind}.`);
	return kind;
}

export function kindNames(): readonly string[] {
	return [...byName.keys()];
}
