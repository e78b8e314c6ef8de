import type { Draft, Query } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import { inch } from '../../measure/units.ts';
import type { Unit } from '../../measure/units.ts';
import { inSentence } from '../fitting/casing.ts';
import { listed } from '../fitting/feature-names.ts';

/** What was looked at besides the seams: that it holds, or how many queries say otherwise. */
export interface CheckRow {
	readonly what: string;
	readonly words: string;
	readonly asked: number;
}

/** Legs that differ by more are asked about, mm. */
const alike = inch / 16;

type Asked = Pick<Query, 'code' | 'where'>;

/** Darts true and corners smooth, as the queries of a version have it. A draft without darts has no row for them. */
export function checkRows(draft: Draft, queries: readonly Asked[], unit: Unit): readonly CheckRow[] {
	const count = (code: string) => queries.filter((query) => query.code === code).length;
	const darts = draft.pieces.flatMap((piece) => piece.darts.map(({ name }) => inSentence(name.replace(/ dart$/i, ''))));
	const [legs, corners] = [count('dart-legs'), count('seam-corner')];
	return [
		...(darts.length > 0
			? [
					{
						what: legs === 0 ? 'Darts true' : 'Darts',
						words:
							legs === 0
								? `${dartWords(darts)}: legs alike to ${formatLength(alike, unit, { denominator: 16 }).text}`
								: 'the legs of some differ, see below',
						asked: legs
					}
				]
			: []),
		{
			what: corners === 0 ? 'Corners smooth' : 'Corners',
			words: corners === 0 ? 'every edge runs on across its seams' : 'some edges turn where they are sewn, see below',
			asked: corners
		}
	];
}

/** `front, second and armhole dart` */
function dartWords(names: readonly string[]): string {
	const each = [...new Set(names)];
	return `${listed(each)} ${each.length === 1 ? 'dart' : 'darts'}`;
}
