/** Widen, narrow, lengthen or shorten a dart; intake 0 takes it out. */
import { z } from 'zod';
import { cornersOf } from '../../geometry/joints.ts';
import { joinedPaths, pathLength, pointAt, portion, straight } from '../../geometry/path.ts';
import { joined } from '../../geometry/accuracy.ts';
import { distance } from '../../geometry/point.ts';
import { dartLegs } from '../../draft/dart-legs.ts';
import { findDart, findFoldDart } from '../../draft/find.ts';
import { findInnerPoint } from '../../draft/place.ts';
import { inches } from '../../draft/say.ts';
import type { Dart, Draft, FoldDart, InnerPoint, Piece } from '../../draft/types.ts';
import { sideOfName } from '../../draft/undivided-name.ts';
import { crossesOtherDart, mouthOfWidth } from '../dart-mouth.ts';
import { amount, feature, id, innerPoint, on } from '../fields.ts';
import { onSide } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredInnerPoint } from '../mirrored-place.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { dartIds, reachedFeatures } from '../sides.ts';
import type { AlterationBase, Outcome } from '../types.ts';

export interface DartSetAlteration extends AlterationBase {
	readonly kind: 'dart-set';
	readonly dart: string;
	/** The whole width it is to have, mm: between the leg ends, or at the widest of a fold dart. */
	readonly intake?: number;
	readonly point?: InnerPoint;
}

type Refused = Extract<Outcome, { refused: unknown }>;

/** The file form. */
export const dartSetSchema = (): z.ZodType<DartSetAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('dart-set'),
		on,
		dart: feature,
		intake: amount.min(0, 'is the width of the dart: it cannot be less than 0').optional(),
		point: innerPoint.optional()
	});

export const dartSet: Kind<DartSetAlteration> = {
	kind: 'dart-set',
	isRead: ({ intake, point }) => intake !== undefined || point !== undefined,
	// A width of 0 takes the dart out: that is something.
	isNothing: () => false,
	names: (alteration) => [alteration.dart],
	mirrored: (alteration) => ({ ...alteration, point: alteration.point && mirroredInnerPoint(alteration.point) }),
	carry(draft, alteration) {
		const reached = reachedFeatures(draft, alteration.dart, alteration.on, dartIds);
		if (isRefused(reached)) return reached;
		let result = reached.draft;
		const touched: { feature: string; greatestMove: number }[] = [];
		let changed = false;
		for (const name of reached.names) {
			const set = setDart(result, name, alteration);
			if (isRefused(set)) return set;
			changed ||= set.draft !== result;
			result = set.draft;
			touched.push(...set.touched);
		}
		return changed ? { draft: result, touched, remarks: [] } : { draft, touched: [], remarks: [] };
	}
};

function setDart(draft: Draft, name: string, alteration: DartSetAlteration): Outcome {
	if (alteration.intake && alteration.intake <= joined)
		return refused('dart-narrow', 'A dart so narrow cannot be drawn. Give it a width, or 0 to take it out.', [
			{ ...alteration, intake: 0 } as DartSetAlteration
		]);
	const fold = findFoldDart(draft, name);
	if (fold) return setFoldDart(draft, fold.piece, fold.foldDart, alteration);
	const { piece, dart, edge } = findDart(draft, name)!;
	let point = dart.point;
	if (alteration.point) {
		const inner = findInnerPoint(draft, piece.id, onSide(alteration.point, sideOfName(piece.id), sideOfName(edge.id)));
		if ('problem' in inner) return noPlace(inner.problem);
		point = inner.point;
	}
	const before = dartLegs(piece, dart).intake;
	const intake = alteration.intake ?? before;
	if (intake === 0) return without(draft, piece, dart);
	if (intake === before && distance(point, dart.point) === 0) return { draft, touched: [], remarks: [] };
	const mouth = intake === before ? dart : mouthOfWidth(edge.path, dart.point, dart.from, dart.to, intake);
	if (!mouth || mouth.to <= mouth.from)
		return refused(
			'dart-off-edge',
			`${dart.name} cannot be ${inches(intake)} wide: it would run off the end of ${edge.name.toLowerCase()}. Make it narrower, or give the rest to another seam.`
		);
	const half = (intake - before) / 2;
	const altered: Dart = {
		...dart,
		from: mouth.from,
		to: mouth.to,
		point,
		widths: dart.widths.map((width) => ({
			at: width.at,
			left: Math.max(0, width.left + half * (1 - width.at)),
			right: Math.max(0, width.right + half * (1 - width.at))
		}))
	};
	const other = crossesOtherDart(piece, altered);
	if (other) return refused('dart-crosses', `${dart.name} would then cross ${other.name}. Make it narrower.`);
	return replaced(draft, piece, { ...piece, darts: piece.darts.map((one) => (one === dart ? altered : one)) }, [
		{ feature: name, greatestMove: Math.max(Math.abs(half), distance(point, dart.point)) },
		{ feature: `${piece.id}/${edge.id}`, greatestMove: 0 }
	]);
}

/** Takes a dart out; a mouth that was cut to a shape is straightened, and what lies beyond it on the edge stays where it is. */
function without(draft: Draft, piece: Piece, dart: Dart): Outcome {
	const darts = piece.darts.filter((one) => one !== dart);
	const touched = [
		{ feature: `${piece.id}/${dart.id}`, greatestMove: dartLegs(piece, dart).intake / 2 },
		{ feature: `${piece.id}/${dart.edge}`, greatestMove: 0 }
	];
	const edge = piece.edges.find((one) => one.id === dart.edge)!;
	const length = pathLength(edge.path);
	const shaped = cornersOf(edge.path).some((s) => s > dart.from + 1e-6 && s < dart.to - 1e-6);
	if (!shaped) return replaced(draft, piece, { ...piece, darts }, touched);
	const parts = [
		...(dart.from > 0 ? [portion(edge.path, 0, dart.from)] : []),
		straight(pointAt(edge.path, dart.from), pointAt(edge.path, dart.to)),
		...(dart.to < length ? [portion(edge.path, dart.to, length)] : [])
	];
	const path = joinedPaths(...parts);
	const shift = pathLength(path) - length;
	const slid = (s: number) =>
		s >= dart.to
			? s + shift
			: s > dart.from
				? dart.from + ((s - dart.from) * (dart.to + shift - dart.from)) / (dart.to - dart.from)
				: s;
	return replaced(
		draft,
		piece,
		{
			...piece,
			edges: piece.edges.map((one) => (one === edge ? { ...edge, path } : one)),
			darts: darts.map((one) => (one.edge === edge.id ? { ...one, from: slid(one.from), to: slid(one.to) } : one)),
			notches: piece.notches.map((notch) => (notch.edge === edge.id ? { ...notch, at: slid(notch.at) } : notch)),
			pleats: piece.pleats.map((pleat) =>
				pleat.edge === edge.id ? { ...pleat, from: slid(pleat.from), to: slid(pleat.to) } : pleat
			)
		},
		touched
	);
}

function setFoldDart(draft: Draft, piece: Piece, foldDart: FoldDart, alteration: DartSetAlteration): Outcome | Refused {
	const before = foldDart.widest.intake;
	const intake = alteration.intake ?? before;
	const name = `${piece.id}/${foldDart.id}`;
	if (intake === 0)
		return replaced(draft, piece, { ...piece, foldDarts: piece.foldDarts.filter((one) => one !== foldDart) }, [
			{ feature: name, greatestMove: before / 2 }
		]);
	let ends = foldDart.ends;
	if (alteration.point) {
		const inner = findInnerPoint(draft, piece.id, onSide(alteration.point, sideOfName(piece.id), undefined));
		if ('problem' in inner) return noPlace(inner.problem);
		const nearer = distance(inner.point, ends[0]) < distance(inner.point, ends[1]) ? 0 : 1;
		ends = nearer === 0 ? [inner.point, ends[1]] : [ends[0], inner.point];
	}
	if (intake === before && ends === foldDart.ends) return { draft, touched: [], remarks: [] };
	const ratio = before > 0 ? intake / before : 1;
	const altered: FoldDart = {
		...foldDart,
		ends,
		widest: { ...foldDart.widest, intake },
		widths: foldDart.widths.map((width) => ({ at: width.at, left: width.left * ratio, right: width.right * ratio }))
	};
	return replaced(
		draft,
		piece,
		{ ...piece, foldDarts: piece.foldDarts.map((one) => (one === foldDart ? altered : one)) },
		[{ feature: name, greatestMove: Math.abs(intake - before) / 2 }]
	);
}

function replaced(
	draft: Draft,
	piece: Piece,
	by: Piece,
	touched: readonly { feature: string; greatestMove: number }[]
): Outcome {
	return { draft: { ...draft, pieces: draft.pieces.map((one) => (one === piece ? by : one)) }, touched, remarks: [] };
}
