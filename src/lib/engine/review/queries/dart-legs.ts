import { dartLegs as legsOf } from '../../draft/dart-legs.ts';
import { foldDartLegs } from '../../draft/dart-legs.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { nameOf } from '../../draft/find.ts';
import { pathLength } from '../../geometry/path.ts';
import { dartOf, foldDartOf } from '../base-of.ts';
import { beyondMeant } from '../beyond-meant.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { inSentence } from '../words.ts';
import type { Dart, FoldDart, Piece } from '../../draft/types.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query } from '../types.ts';

/** How far beyond the mouth's ends the edge is redrawn when a dart is trued, mm. */
const usualReach = 25.4;

/** The two legs of a dart are not alike. Figure: how much longer the second leg is than the first, mm. */
export const dartLegs: Inquiry = (inspection) =>
	inspection.draft.pieces.flatMap((piece) => [
		...piece.darts.flatMap((dart) => {
			const before = dartOf(inspection.options.base, nameOf(piece, dart.id));
			const was = before ? difference(before.piece, before.dart) : 0;
			return ask(inspection, piece, dart, difference(piece, dart), was, true);
		}),
		...piece.foldDarts.flatMap((dart) => {
			const before = foldDartOf(inspection.options.base, nameOf(piece, dart.id));
			return ask(inspection, piece, dart, foldDifference(dart), before ? foldDifference(before.foldDart) : 0, false);
		})
	]);

function difference(piece: Piece, dart: Dart): number {
	const legs = legsOf(piece, dart);
	return pathLength(legs.to) - pathLength(legs.from);
}

function foldDifference(dart: FoldDart): number {
	const { left, right } = foldDartLegs(dart);
	return pathLength(left) - pathLength(right);
}

function ask(
	{ bands }: Inspection,
	piece: Piece,
	dart: Dart | FoldDart,
	figure: number,
	meant: number,
	trueable: boolean
): Query[] {
	if (Math.abs(beyondMeant(figure, 0, meant)) <= bands.dartLegs.silent + measured) return [];
	const where = nameOf(piece, dart.id);
	const { name, on } = asAltered(where);
	const settle: Settling[] = trueable
		? [{ id: settleId('dart-legs', where), kind: 'true-dart', on, dart: name, reach: usualReach }]
		: [];
	return [
		{
			code: 'dart-legs',
			severity: 'note',
			where,
			figure,
			sentence: `One leg of the ${inSentence(dart.name)} on the ${inSentence(piece.name)} is ${inches(figure)} longer than the other.`,
			settle
		}
	];
}
