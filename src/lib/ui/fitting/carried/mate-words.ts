import { undividedName, walk } from '../../../engine/index.ts';
import type { Draft } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { seamOf } from '../feature-names.ts';
import type { Intent } from '../words/alteration.ts';
import { layerNames } from '../words/seam.ts';

/** A change under 1/32 in is none to the eye and the hand, mm. */
const alike = 0.79;

/** What an alteration of a seam did to its two layers against each other: whether they still meet, and which is longer now. */
export function mateSentences(before: Draft, after: Draft, intent: Intent, unit: Unit): readonly string[] {
	const { seam: id } = intent as { seam?: unknown };
	if (typeof id !== 'string') return [];
	const seam = seamOf(after, id);
	if (!seam) return [];
	if (seam.b === 'mirror') return ['Its two layers are mirror images of one another, and move alike.'];
	const was = differences(before, id);
	const [nameA, nameB] = layerNames(after, id).map(inSentence);
	const told = walk(after)
		.filter((one) => undividedName(one.seam) === undividedName(id))
		.map(({ difference, seam: name }) => ({
			difference,
			change: difference - (was.get(name) ?? was.get(undividedName(name)) ?? difference)
		}));
	const most = told.reduce((greatest, one) => (Math.abs(one.change) > Math.abs(greatest.change) ? one : greatest));
	if (Math.abs(most.change) < alike)
		return [`The ${nameA} and the ${nameB} keep their lengths to each other: the seam walks as it did.`];
	const by = formatLength(most.change, unit, { denominator: 16, sign: 'never' }).text;
	const [longer, shorter] = most.change > 0 ? [nameB, nameA] : [nameA, nameB];
	return [`The ${longer} gets ${by} longer along this seam against the ${shorter}.`];
}

/** b − a − fullness of each seam of that undivided name, mm. */
function differences(draft: Draft, id: string): ReadonlyMap<string, number> {
	return new Map(
		walk(draft)
			.filter((one) => undividedName(one.seam) === undividedName(id))
			.map(({ seam, difference }) => [seam, difference])
	);
}
