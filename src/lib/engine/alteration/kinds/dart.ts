/** Pin out a new dart on an edge: its place, the straight width of its mouth, and its point. */
import { z } from 'zod';
import { nearestOn } from '../../geometry/nearest.ts';
import { joined, measured } from '../../geometry/accuracy.ts';
import { findEdge } from '../../draft/find.ts';
import { freeId } from '../../draft/free-id.ts';
import { findInnerPoint, findPlace } from '../../draft/place.ts';
import { outlineOf } from '../../draft/outline.ts';
import { inches } from '../../draft/say.ts';
import type { Dart, Draft, InnerPoint, Place } from '../../draft/types.ts';
import { contains } from '../../geometry/contains.ts';
import { sideOfName } from '../../draft/undivided-name.ts';
import { crossesOtherDart, mouthOfWidth } from '../dart-mouth.ts';
import { amount, feature, id, innerPoint, on, place } from '../fields.ts';
import { onSide, placeOnPart } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredInnerPoint, mirroredPlace } from '../mirrored-place.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { edgeIds, reachedFeatures } from '../sides.ts';
import type { AlterationBase, Outcome } from '../types.ts';

export interface DartAlteration extends AlterationBase {
	readonly kind: 'dart';
	readonly edge: string;
	readonly at: Place;
	/** Straight width between the leg ends, mm. */
	readonly intake?: number;
	readonly point?: InnerPoint;
}

/** The file form. */
export const dartSchema = (): z.ZodType<DartAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('dart'),
		on,
		edge: feature,
		at: place,
		intake: amount.min(0, 'is the width of the dart: it cannot be less than 0').optional(),
		point: innerPoint.optional()
	});

export const dart: Kind<DartAlteration> = {
	kind: 'dart',
	isRead: ({ intake, point }) => intake !== undefined && (point !== undefined || intake === 0),
	isNothing: ({ intake }) => intake === 0,
	names: (alteration) => [alteration.edge],
	scaled: (alteration, factor) => ({ ...alteration, intake: (alteration.intake ?? 0) * factor }),
	mirrored: (alteration) => ({
		...alteration,
		at: mirroredPlace(alteration.at),
		point: alteration.point && mirroredInnerPoint(alteration.point)
	}),
	carry(draft, alteration) {
		const nothing = dart.isNothing(alteration);
		const reached = reachedFeatures(draft, alteration.edge, nothing ? 'both' : alteration.on, edgeIds);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		for (const name of reached.names) {
			const added = addDart(result, name, alteration);
			if (isRefused(added)) return added;
			if (nothing) continue;
			result = added.draft;
			touched.push(...added.touched);
		}
		return nothing ? { draft, touched: [], remarks: [] } : { draft: result, touched, remarks: [] };
	}
};

function addDart(draft: Draft, edgeName: string, alteration: DartAlteration): Outcome {
	const { piece, edge } = findEdge(draft, edgeName)!;
	if (edge.kind === 'fold') return refused('dart-on-fold', onFold(piece.name));
	const at = findPlace(draft, edgeName, placeOnPart(edgeName, alteration.at));
	if ('problem' in at) return noPlace(at.problem, alteration.at);
	if (dart.isNothing(alteration)) return { draft, touched: [], remarks: [] };
	const inner = findInnerPoint(draft, piece.id, onSide(alteration.point!, sideOfName(piece.id), sideOfName(edge.id)));
	if ('problem' in inner) return noPlace(inner.problem);
	const outline = outlineOf(piece);
	if (!contains(outline, inner.point) || nearestOn(outline, inner.point, measured).distance < 1)
		return refused(
			'dart-point-outside',
			`The dart’s point lies on the edge of ${piece.name} or beyond it. Place it inside the piece.`
		);
	const intake = alteration.intake!;
	if (intake <= joined)
		return refused('dart-narrow', 'A dart so narrow cannot be drawn. Give it a width, or leave it out.');
	const mouth = mouthOfWidth(edge.path, inner.point, at.s, at.s, intake);
	if (!mouth || mouth.to <= mouth.from)
		return refused(
			'dart-off-edge',
			`A dart ${inches(intake)} wide there would run off the end of ${edge.name.toLowerCase()}. Make it narrower, or place it farther from the end.`
		);
	const side = sideOfName(edge.id);
	const added: Dart = {
		id: freeId(piece, side ? `${alteration.id}@${side}` : alteration.id),
		name: `${edge.name} dart`,
		edge: edge.id,
		from: mouth.from,
		to: mouth.to,
		point: inner.point,
		widths: []
	};
	const other = crossesOtherDart(piece, added);
	if (other)
		return refused('dart-crosses', `This dart would cross ${other.name}. Place it farther away, or make it shorter.`);
	const altered = { ...piece, darts: [...piece.darts, added] };
	return {
		draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? altered : one)) },
		touched: [
			{ feature: `${piece.id}/${added.id}`, greatestMove: intake / 2 },
			{ feature: `${piece.id}/${edge.id}`, greatestMove: 0 }
		],
		remarks: []
	};
}

/** Why no dart opens on a fold. */
export function onFold(pieceName: string): string {
	return `A dart cannot open on the fold of ${pieceName}: half of it would be on the other side. Open it on another edge, or shape a centre seam there.`;
}
