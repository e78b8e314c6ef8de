/** Takes a corner off: where an edge meets its neighbour, across a seam when the pieces are laid together, or inside the edge. */
import { z } from 'zod';
import { divide } from '../../draft/divide.ts';
import { findEdge, findPiece, nameOf } from '../../draft/find.ts';
import { findPlace } from '../../draft/place.ts';
import { sideOfName } from '../../draft/undivided-name.ts';
import type { Draft, Edge, Piece, Place } from '../../draft/types.ts';
import type { MovedEdge } from '../../geometry/move-outline.ts';
import { joined } from '../../geometry/accuracy.ts';
import { pathLength } from '../../geometry/path.ts';
import { feature, id, on, place } from '../fields.ts';
import { placeOnPart, runsBack } from '../inner-point-on-side.ts';
import { turnsAt, type Turn } from '../joint.ts';
import type { Kind } from '../kind.ts';
import { mirroredPlace } from '../mirrored-place.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { edgeInWords, rideEdges } from '../ride-edges.ts';
import { edgeIds, reachedFeatures } from '../sides.ts';
import { greatestTurned, smoothedInside, tooHollow } from '../smooth-inside.ts';
import { smoothReach, turnedEnd } from '../turn-end.ts';
import type { AlterationBase, Outcome, Remark } from '../types.ts';

export interface SmoothAlteration extends AlterationBase {
	readonly kind: 'smooth';
	readonly edge: string;
	/** Where the edge meets its neighbour, or the edge across the seam that ends there; or … */
	readonly end?: 'start' | 'finish';
	/** … a corner or a bridge inside the edge. */
	readonly at?: Place;
	/** Over how much of the edge, on either side, mm. */
	readonly reach: number;
}

type Refused = Extract<Outcome, { refused: unknown }>;
type Carried = Exclude<Outcome, { refused: unknown }>;

/** A turn smaller than this is none, radians. */
const noTurn = 1e-7;

/** Each line turns by no more than this, radians: a sharper corner is one that is meant, or a mistake. */
const sharpest = Math.PI / 3;

/** The file form. */
export const smoothSchema = (): z.ZodType<SmoothAlteration> =>
	z
		.strictObject({
			id,
			kind: z.literal('smooth'),
			on,
			edge: feature,
			end: z.enum(['start', 'finish']).optional(),
			at: place.optional(),
			reach: z.number().min(1, 'is how far the edge is redrawn on either side: at least 1 mm').max(1000)
		})
		.refine(({ end, at }) => (end === undefined) !== (at === undefined), {
			path: ['end'],
			message: 'says where: either an end of the edge, or "at" with a place along it'
		});

export const smooth: Kind<SmoothAlteration> = {
	kind: 'smooth',
	isRead: () => true,
	// Whether there is a corner is the draft's to say.
	isNothing: () => false,
	names: (alteration) => [alteration.edge],
	mirrored: ({ end, at, ...alteration }) => ({
		...alteration,
		...(end && { end: opposite(end) }),
		...(at && { at: mirroredPlace(at) })
	}),
	carry(draft, alteration) {
		const smoothed = alteration.at
			? inside(draft, alteration, alteration.at)
			: atEnd(draft, alteration, alteration.end!);
		if (isRefused(smoothed)) return smoothed;
		return smoothed.touched.length > 0 ? smoothed : { draft, touched: [], remarks: [] };
	}
};

function opposite(end: 'start' | 'finish'): 'start' | 'finish' {
	return end === 'start' ? 'finish' : 'start';
}

function inside(draft: Draft, alteration: SmoothAlteration, at: Place): Outcome {
	const reached = reachedFeatures(draft, alteration.edge, alteration.on, edgeIds);
	if (isRefused(reached)) return reached;
	let result: Carried = { draft: reached.draft, touched: [], remarks: [] };
	for (const name of reached.names) {
		const found = findPlace(result.draft, name, placeOnPart(name, at));
		if ('problem' in found) return noPlace(found.problem, at);
		const { piece, edge } = findEdge(result.draft, name)!;
		const line = smoothedInside(piece, edge, found.s, alteration.reach);
		if (isRefused(line)) return line;
		const drawn = redrawn(result, piece, edge, line, line.greatestMove);
		if (isRefused(drawn)) return drawn;
		result = drawn;
	}
	return result;
}

function atEnd(draft: Draft, alteration: SmoothAlteration, end: 'start' | 'finish'): Outcome {
	const gathered = gatherTurns(draft, alteration, end);
	if (isRefused(gathered)) return gathered;
	let result: Carried = { draft: gathered.draft, touched: [], remarks: [] };
	for (const turn of gathered.turns) {
		if (Math.abs(turn.angle) <= noTurn) continue;
		const turned = turnOne(result, turn, alteration.reach);
		if (isRefused(turned)) return turned;
		result = turned;
	}
	return result;
}

/** Dividing can make others want dividing; there are never more rounds than this. */
const mostRounds = 8;

/**
 * Every end that turns, all measured on the draft before anything is turned. A piece that is still whole is divided first if it
 * would turn for one side of the wearer only, or for its two sides unlike.
 */
function gatherTurns(
	draft: Draft,
	alteration: SmoothAlteration,
	end: 'start' | 'finish'
): { readonly draft: Draft; readonly turns: readonly Turn[] } | Refused {
	for (let round = 0; ; round++) {
		const reached = reachedFeatures(draft, alteration.edge, alteration.on, edgeIds);
		if (isRefused(reached)) return reached;
		const turns = new Map<string, Turn>();
		const divided = new Set<string>();
		for (const name of reached.names) {
			const { piece, edge } = findEdge(reached.draft, name)!;
			if (edge.kind === 'fold')
				return refused(
					'fold-fixed',
					`${edge.name} of ${piece.name} is cut on the fold and stays straight. Smooth the edge that meets it.`
				);
			const own = runsBack(name) ? opposite(end) : end;
			for (const turn of turnsAt(reached.draft, name, own)) {
				const key = `${nameOf(turn.piece, turn.edge.id)} ${turn.end}`;
				const before = turns.get(key);
				turns.set(key, turn);
				const whole = !sideOfName(turn.piece.id) && turn.piece.cut !== 'single';
				if (whole && ((before && Math.abs(before.angle - turn.angle) > noTurn) || alteration.on !== 'both'))
					divided.add(turn.piece.id);
			}
		}
		const anyTurn = [...turns.values()].some(({ angle }) => Math.abs(angle) > noTurn);
		if (divided.size === 0 || !anyTurn || round === mostRounds)
			return { draft: reached.draft, turns: [...turns.values()] };
		draft = divide(reached.draft, [...divided]);
	}
}

function turnOne(before: Carried, turn: Turn, asked: number): Outcome {
	const piece = findPiece(before.draft, turn.piece.id)!;
	const edge = piece.edges.find(({ id }) => id === turn.edge.id)!;
	if (Math.abs(turn.angle) > sharpest)
		return refused(
			'corner-sharp',
			`There is a corner of ${Math.round((2 * Math.abs(turn.angle) * 180) / Math.PI)}° at that end of ${edgeInWords(piece, edge.id)}: too sharp to be smoothed away. Draw the edges nearer to one line first.`
		);
	const from = turn.end === 'start' ? 0 : pathLength(edge.path);
	const mouth = piece.darts.find(
		(dart) => dart.edge === edge.id && Math.abs((turn.end === 'start' ? dart.from : dart.to) - from) <= joined
	);
	if (mouth)
		return refused(
			'mouth-at-corner',
			`${mouth.name} opens right at that end of ${edgeInWords(piece, edge.id)}: there is no line there to smooth. Move the dart first.`
		);
	const reach = smoothReach(piece, edge, from, turn.end === 'start' ? 'on' : 'back', asked);
	const line = turnedEnd(edge.path, turn.end, turn.angle, reach);
	if (!line) return tooHollow(piece, edge);
	return redrawn(before, piece, edge, line, greatestTurned(turn.angle, reach));
}

function redrawn(before: Carried, piece: Piece, edge: Edge, line: MovedEdge, greatestMove: number): Carried | Refused {
	const lines = piece.edges.map((one): MovedEdge => (one === edge ? line : { path: one.path, carried: (s) => s }));
	const ridden = rideEdges(
		piece,
		lines,
		piece.edges.map((one) => one === edge)
	);
	if (isRefused(ridden)) return ridden;
	const remarks: readonly Remark[] = [...before.remarks, ...ridden.remarks];
	return {
		draft: { ...before.draft, pieces: before.draft.pieces.map((one) => (one === piece ? ridden.piece : one)) },
		touched: [...before.touched, { feature: nameOf(piece, edge.id), greatestMove }],
		remarks
	};
}
