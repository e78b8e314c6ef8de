import { seamRun } from '../../../engine/index.ts';
import type { Alteration, Draft } from '../../../engine/index.ts';
import { actDone, directionOf } from '../../../measure/directions.ts';
import { inSentence } from '../casing.ts';
import { isLimbSeam, listed, seamName, seamOf, wholeName } from '../feature-names.ts';
import type { Unit } from '../../../measure/units.ts';
import { layerWords, listPins, sayLength, sayPins, type SaidPin } from './along.ts';
import { sidesInWords, type Teller } from './told.ts';

type SeamIntent = Extract<Alteration, { kind: 'seam' }>;

/** Took in, let out or moved a seam. */
export const seamWords: Teller<SeamIntent> = (draft, { seam: id, on, pins }, unit) => {
	const seam = seamOf(draft, id);
	const along = { of: 'seam', id } as const;
	const mirror = seam?.b === 'mirror';
	const read = pins.some(({ a, b }) => a !== undefined || b !== undefined);
	const names = layerNames(draft, id);
	const said = pins.map(({ at, a = 0, b = 0 }): SaidPin => ({ at, ...sayLayers(a, mirror ? a : b, names, unit) }));
	const sides = seam && mirror && on === 'both' ? undefined : sidesInWords(on, seam && isLimbSeam(draft, seam));
	return {
		subject: seamName(draft, id),
		...(read && { done: sayPins(draft, along, said, unit) }),
		...(sides && { sides }),
		amounts: read ? listPins(draft, along, said, unit) : []
	};
};

/** What the two layers of a seam are called: by the piece that each belongs to. */
export function layerNames(draft: Draft, id: string): readonly [a: string, b: string] {
	const seam = seamOf(draft, id);
	if (!seam) return ['one layer', 'the other'];
	if (seam.b === 'mirror') return ['right', 'left'];
	const called = (side: 'a' | 'b') => {
		const run = seamRun(draft, seam, side);
		const pieces = [...new Set(run.map(({ piece }) => wholeName(piece)))];
		const edges = [...new Set(run.map(({ edge }) => wholeName(edge)))];
		return pieces.length > 1 && edges.length === 1 ? edges[0] : listed(pieces);
	};
	return [called('a'), called('b')];
}

function sayLayers(a: number, b: number, [nameA, nameB]: readonly [string, string], unit: Unit): Omit<SaidPin, 'at'> {
	const size = Math.max(Math.abs(a), Math.abs(b));
	if (size === 0) return { size, verb: '', after: '', amount: { mm: 0, word: 'not moved' } };
	const sum = a + b;
	if (Math.abs(sum) < 1e-9) {
		const word = `towards the ${inSentence(a > 0 ? nameB : nameA)}`;
		return { size, verb: 'moved', after: word, amount: { mm: a, other: b, word } };
	}
	const way = sum < 0 ? 'in' : 'out';
	const amount = { mm: a, ...(Math.abs(a - b) > 1e-9 && { other: b }), way, word: directionOf('seam', sum) } as const;
	if (amount.other === undefined) return { size, verb: actDone('seam', sum), after: '', amount };
	const layers = [
		{ mm: a, piece: nameA },
		{ mm: b, piece: nameB }
	];
	const [most, least] = Math.abs(a) >= Math.abs(b) ? layers : [...layers].reverse();
	const first = layerWords(most.mm, most.piece);
	const after =
		least.mm === 0
			? `${first} alone`
			: `${first} and ${sayLength(least.mm, unit)} ${layerWords(least.mm, least.piece)}`;
	return { size, verb: actDone('seam', sum), after, amount };
}
