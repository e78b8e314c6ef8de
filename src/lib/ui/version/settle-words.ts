import type { Draft, Query } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { inSentence } from '../fitting/casing.ts';
import { alterationTitle } from '../fitting/words/alteration.ts';
import { layerNames } from '../fitting/words/seam.ts';

type Way = Query['settle'][number];

/**
 * What one of the ways to settle a query would do: “Shorten the under-arm by 1/16″”. `draft` is the version that the query is
 * about.
 */
export function settleWords(draft: Draft, query: Pick<Query, 'where' | 'figure'>, way: Way, unit: Unit): string {
	return isTrueSeam(way) && query.figure !== undefined
		? trueSeamWords(draft, query.where, query.figure, way.take, unit)
		: alterationTitle(draft, way, unit);
}

interface TrueSeam extends Way {
	readonly take: 'a' | 'b' | 'half';
}

const isTrueSeam = (way: Way): way is TrueSeam => way.kind === 'true-seam' && 'take' in way;

/** `longer`: by how much side b is longer than it is meant to be, mm. */
function trueSeamWords(draft: Draft, seam: string, longer: number, take: TrueSeam['take'], unit: Unit): string {
	const amount = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
	const [a, b] = layerNames(draft, seam).map((names) =>
		names
			.split(/(?<= and |, )/)
			.map(inSentence)
			.join('')
	);
	const [long, short] = longer > 0 ? [b, a] : [a, b];
	if (take === 'half') return `Share it: ${amount(longer / 2)} off the ${long}, onto the ${short}`;
	const side = take === 'a' ? a : b;
	return side === long ? `Shorten the ${long} by ${amount(longer)}` : `Lengthen the ${short} by ${amount(longer)}`;
}
