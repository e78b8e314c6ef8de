/** Chalk a new line; add or take off at an open edge: one edge, by amounts at pins along it. */
import { z } from 'zod';
import { findPlace } from '../../draft/place.ts';
import { findEdge } from '../../draft/find.ts';
import { edgeStitchedLength } from '../../draft/length.ts';
import type { Draft, Place } from '../../draft/types.ts';
import { amount, feature, id, on, place } from '../fields.ts';
import { placeOnPart, runsBack } from '../inner-point-on-side.ts';
import type { Kind } from '../kind.ts';
import { mirroredPlace } from '../mirrored-place.ts';
import { moveAlong, type RunAmount } from '../move-along.ts';
import { amountAlong, type PinnedAmount } from '../pins.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { edgeIds, reachedFeatures } from '../sides.ts';
import type { AlterationBase, EdgePin, Outcome } from '../types.ts';

export interface EdgeAlteration extends AlterationBase {
	readonly kind: 'edge';
	readonly edge: string;
	readonly pins: readonly EdgePin[];
	readonly shape?: 'smooth' | 'straight';
}

type Refused = Extract<Outcome, { refused: unknown }>;

/** The file form. */
export const edgeSchema = (): z.ZodType<EdgeAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('edge'),
		on,
		edge: feature,
		pins: z.array(z.strictObject({ at: place, move: amount.optional() })).min(1),
		shape: z.enum(['smooth', 'straight']).optional()
	});

export const edge: Kind<EdgeAlteration> = {
	kind: 'edge',
	isRead: ({ pins }) => pins.some((pin) => pin.move !== undefined),
	isNothing: ({ pins }) => pins.every((pin) => !pin.move),
	names: (alteration) => [alteration.edge],
	scaled: (alteration, factor) => ({
		...alteration,
		pins: alteration.pins.map((pin) => ({ ...pin, ...(pin.move === undefined ? {} : { move: pin.move * factor }) }))
	}),
	movesAt: ({ pins }) => pins.map(({ at, move = 0 }) => ({ at, layers: [move] })),
	mirrored: (alteration) => ({
		...alteration,
		pins: alteration.pins.map((pin) => ({ ...pin, at: mirroredPlace(pin.at) }))
	}),
	carry(draft, alteration) {
		const nothing = edge.isNothing(alteration);
		const reached = reachedFeatures(draft, alteration.edge, nothing ? 'both' : alteration.on, edgeIds);
		if (isRefused(reached)) return reached;
		const runs: RunAmount[] = [];
		for (const name of reached.names) {
			const pins = pinsOn(reached.draft, name, alteration);
			if (isRefused(pins)) return pins;
			const along = amountAlong(pins, alteration.shape);
			if (!along)
				return refused('same-place', 'Two pins of this alteration are at one place. Give that place one amount.');
			const { piece, edge: found } = findEdge(reached.draft, name)!;
			runs.push({
				run: [{ piece, edge: found, reversed: runsBack(name), startsAt: 0, length: edgeStitchedLength(piece, found) }],
				along
			});
		}
		if (nothing) return { draft, touched: [], remarks: [] };
		return moveAlong(reached.draft, runs, alteration, edge, (end) => zeroAt(alteration, end));
	}
};

/** The pins in mm along the undivided edge. */
function pinsOn(draft: Draft, name: string, alteration: EdgeAlteration): PinnedAmount[] | Refused {
	const pins: PinnedAmount[] = [];
	const { piece, edge: found } = findEdge(draft, name)!;
	const length = edgeStitchedLength(piece, found);
	const back = runsBack(name);
	for (const pin of alteration.pins) {
		const at = findPlace(draft, name, placeOnPart(name, pin.at));
		if ('problem' in at) return noPlace(at.problem, pin.at);
		pins.push({ at: back ? length - at.stitched : at.stitched, amount: pin.move ?? 0 });
	}
	return pins;
}

/** The same alteration with nothing moved at one end of the edge. */
function zeroAt(alteration: EdgeAlteration, end: 'start' | 'finish'): EdgeAlteration {
	const at: Place = { end };
	const others = alteration.pins.filter((pin) => !('end' in pin.at && pin.at.end === end && !pin.at.offset));
	return { ...alteration, pins: [...others, { at, move: 0 }] };
}
