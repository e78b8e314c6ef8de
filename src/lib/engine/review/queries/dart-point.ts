import { cross, dot, subtract, unit } from '../../geometry/point.ts';
import { dartLegs } from '../../draft/dart-legs.ts';
import { edgeOf, nameOf } from '../../draft/find.ts';
import { edgeStitchedLength, toStitched } from '../../draft/length.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { inSentence } from '../words.ts';
import type { Dart, Mark, Piece } from '../../draft/types.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query, Severity } from '../types.ts';

/** Where a dart that misses is brought to: this far short of the bust point, mm. */
const usualShort = 25.4;

/**
 * A dart that is aimed at a marked bust point runs past it, or ends closer to it or farther from it than is usual. Figure: how far
 * short of the bust point it ends, mm along its fold line; negative past it.
 */
export const dartPoint: Inquiry = (inspection) =>
	inspection.draft.pieces.flatMap((piece) =>
		piece.marks
			.filter(({ kind }) => kind === 'bust-point')
			.flatMap((mark) => piece.darts.flatMap((dart) => ask(inspection, piece, dart, mark)))
	);

function ask({ bands }: Inspection, piece: Piece, dart: Dart, mark: Mark): Query[] {
	const { aimed, usual, farthest } = bands.dartPoint;
	const { foldAt } = dartLegs(piece, dart);
	const along = unit(subtract(dart.point, foldAt));
	const toBust = subtract(mark.at, foldAt);
	if (dot(toBust, along) <= 0 || Math.abs(cross(along, toBust)) > aimed) return [];
	const short = dot(subtract(mark.at, dart.point), along);
	if (short >= usual.least - measured && short <= usual.most + measured) return [];
	const severity: Severity = short < 0 || short > farthest + measured ? 'warning' : 'note';
	const where = nameOf(piece, dart.id);
	const name = `The ${inSentence(dart.name)} on the ${inSentence(piece.name)}`;
	const sentence =
		short < 0
			? `${name} runs ${inches(short)} past the bust point.`
			: `${name} ends ${inches(short)} short of the bust point; ${inches(usual.least)} to ${inches(usual.most)} is usual.`;
	return [{ code: 'dart-point', severity, where, figure: short, sentence, settle: settlings(piece, dart, mark) }];
}

function settlings(piece: Piece, dart: Dart, mark: Mark): Settling[] {
	const edge = edgeOf(piece, dart.edge);
	if (!edge) return [];
	const where = nameOf(piece, dart.id);
	const { name, on } = asAltered(where);
	const fraction = toStitched(piece, edge, dart.from) / edgeStitchedLength(piece, edge);
	const toward = { edge: asAltered(nameOf(piece, dart.edge)).name, fraction: Math.min(1, Math.max(0, fraction)) };
	const point = { mark: mark.id, toward, short: usualShort };
	return [{ id: settleId('dart-point', where), kind: 'dart-set', on, dart: name, point }];
}
