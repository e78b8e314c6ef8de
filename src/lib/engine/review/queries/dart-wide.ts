import { dartLegs } from '../../draft/dart-legs.ts';
import { edgeOf, nameOf } from '../../draft/find.ts';
import { edgeStitchedLength, toStitched } from '../../draft/length.ts';
import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { dartOf } from '../base-of.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { inSentence, isCalled } from '../words.ts';
import type { Bands } from '../bands.ts';
import type { Dart, Edge, Piece } from '../../draft/types.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query } from '../types.ts';

/** How far beside the first the second of two darts is offered, mm. */
const apart = 38.1;

/**
 * A dart that the base draft did not have takes more than one dart should: two are suggested. Figure: its width, mm, at its widest.
 * Without a base draft to tell the dressmaker's darts from the drafter's, nothing is asked.
 */
export const dartWide: Inquiry = (inspection) =>
	inspection.draft.pieces.flatMap((piece) => piece.darts.flatMap((dart) => ask(inspection, piece, dart)));

function ask({ options, bands }: Inspection, piece: Piece, dart: Dart): Query[] {
	const where = nameOf(piece, dart.id);
	const edge = edgeOf(piece, dart.edge);
	if (!edge || !options.base || dartOf(options.base, where)) return [];
	const limit = limitFor(bands, edge, dart);
	const { intake } = dartLegs(piece, dart);
	const width = Math.max(intake, ...dart.widths.map(({ left, right }) => left + right));
	if (limit === undefined || width <= limit + measured) return [];
	return [
		{
			code: 'dart-wide',
			severity: 'note',
			where,
			figure: width,
			sentence: `The ${inSentence(dart.name)} on the ${inSentence(piece.name)} takes ${inches(width)}; over ${inches(limit)}, two darts lie flatter than one.`,
			settle: settlings(piece, edge, dart)
		}
	];
}

/** By the edge that it opens on; a shaped dart that opens on another is widest at the waist. */
function limitFor(bands: Bands, edge: Edge, dart: Dart): number | undefined {
	for (const [word, limit] of Object.entries(bands.dartWide)) if (isCalled(edge, word)) return limit;
	return dart.widths.length > 0 ? bands.dartWide.waist : undefined;
}

/** Half of it opened again from the same point, on the side where the edge is longer. */
function settlings(piece: Piece, edge: Edge, dart: Dart): Settling[] {
	const where = nameOf(piece, dart.id);
	const { name, on } = asAltered(where);
	const whole = edgeStitchedLength(piece, edge);
	const before = toStitched(piece, edge, dart.from);
	const space = Math.max(before, whole - before);
	const step = Math.min(apart, space / 2);
	const at = before > whole - before ? before - step : before + step;
	const edgeName = asAltered(nameOf(piece, dart.edge)).name;
	return [
		{
			id: settleId('dart-wide', where),
			kind: 'dart-swing',
			on,
			dart: name,
			edge: edgeName,
			at: { fraction: at / whole },
			share: 0.5
		}
	];
}
