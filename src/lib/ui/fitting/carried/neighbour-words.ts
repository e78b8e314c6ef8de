import { seamRun, sideOfName, undividedName, walk } from '../../../engine/index.ts';
import type { Draft, Seam } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { seamOf, wholeName } from '../feature-names.ts';
import { layerNames } from '../words/seam.ts';
import type { CarriedOne } from './carry-each.ts';

/** Changes under 1/32 in are not told, mm. */
const told = 0.79;

interface Change {
	readonly seam: Seam;
	readonly a: number;
	readonly b: number;
}

/**
 * What alterations did to the seams that meet theirs: “The armhole is shorter by 1/4″; the sleeve head gathers that much more,
 * 3 1/8″ in all, not 2 1/2″.” Fullness in all is told against `version`, with whatever else was pinned so far.
 */
export function neighbourSentences(
	before: Draft,
	after: Draft,
	carried: readonly CarriedOne[],
	version: Draft,
	unit: Unit
): readonly string[] {
	return neighbourChanges(after, carried).flatMap(({ seam, a, b }) => {
		const say = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
		const limb = limbSide(after, seam);
		const side = sideOfName(seam.id) ? `${sideOfName(seam.id)} ` : '';
		const way = (mm: number) => (mm < 0 ? 'shorter' : 'longer');
		if (limb) {
			const [body, sleeve] = limb === 'b' ? [a, b] : [b, a];
			const sentences = [];
			if (Math.abs(body) >= told) {
				const name = inSentence(layerNames(after, seam.id)[limb === 'b' ? 0 : 1]);
				const more = body < 0 ? 'more' : 'less';
				sentences.push(
					`The ${side}${name} is ${way(body)} by ${say(body)}; the sleeve head gathers that much ${more}${inAll(after, version, seam, limb, say)}.`
				);
			}
			if (Math.abs(sleeve) >= told)
				sentences.push(
					`The ${side}sleeve head is ${way(sleeve)} by ${say(sleeve)}; it gathers that much ${sleeve < 0 ? 'less' : 'more'}${inAll(after, version, seam, limb, say)}.`
				);
			return sentences;
		}
		const name = `${side}${inSentence(wholeName(seam))}`;
		if (seam.b === 'mirror') return Math.abs(a) < told ? [] : [`The ${name} is ${way(a)} by ${say(a)}.`];
		if (Math.abs(a) >= told && Math.abs(a - b) < told / 2)
			return [`The ${name} is ${way(a)} by ${say(a)}, on both its pieces.`];
		return ([a, b] as const).flatMap((mm, i) =>
			Math.abs(mm) < told
				? []
				: [`The ${name} is ${way(mm)} by ${say(mm)} on the ${inSentence(layerNames(after, seam.id)[i])}.`]
		);
	});
}

/** The change of both sides of every neighbouring seam, over all the alterations; of two halves alike only one. */
function neighbourChanges(after: Draft, carried: readonly CarriedOne[]): readonly Change[] {
	const sums = new Map<string, { a: number; b: number }>();
	for (const { step } of carried)
		for (const { seam, side, change } of step?.neighbours ?? []) {
			const sum = sums.get(seam) ?? { a: 0, b: 0 };
			sum[side] += change;
			sums.set(seam, sum);
		}
	const changes = [...sums].flatMap(([id, { a, b }]): Change[] => {
		const seam = seamOf(after, id);
		return seam ? [{ seam, a, b }] : [];
	});
	return changes.filter(
		({ seam, a, b }, i) =>
			!changes
				.slice(0, i)
				.some(
					(one) =>
						undividedName(one.seam.id) === undividedName(seam.id) &&
						Math.abs(one.a - a) < told / 2 &&
						Math.abs(one.b - b) < told / 2
				)
	);
}

/** The side that is a limb's where the other is the body's: a sleeve head in its armhole. */
function limbSide(draft: Draft, seam: Seam): 'a' | 'b' | undefined {
	if (seam.b === 'mirror') return undefined;
	const [a, b] = (['a', 'b'] as const).map((side) => seamRun(draft, seam, side).every(({ piece }) => piece.limb));
	if (a === b) return undefined;
	return b ? 'b' : 'a';
}

/** “, 3 1/8″ in all, not 2 1/2″”: how much the sleeve head is longer than its armhole, now and on the version. */
function inAll(after: Draft, version: Draft, seam: Seam, limb: 'a' | 'b', say: (mm: number) => string): string {
	const fullness = (draft: Draft): number | undefined => {
		const found =
			walk(draft).find(({ seam: id }) => id === seam.id) ??
			walk(draft).find(({ seam: id }) => id === undividedName(seam.id));
		return found && (limb === 'b' ? found.b - found.a : found.a - found.b);
	};
	const [now, was] = [fullness(after), fullness(version)];
	if (now === undefined || was === undefined || Math.abs(now - was) < told) return '';
	if (now < 0) return `, and is then short by ${say(now)}`;
	return was < 0 ? `, ${say(now)} in all` : `, ${say(now)} in all, not ${say(was)}`;
}
