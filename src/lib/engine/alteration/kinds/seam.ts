/** Take in, let out, or move a seam: each of its two sides by its own amounts, at pins along it. */
import { z } from 'zod';
import { findPlaceOnSeam } from '../../draft/place.ts';
import { seamRun } from '../../draft/seam.ts';
import type { Draft, Place } from '../../draft/types.ts';
import { amount, id, on, place } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { moveAlong, type RunAmount } from '../move-along.ts';
import { amountAlong, type PinnedAmount } from '../pins.ts';
import { isRefused, noPlace, refused } from '../refusal.ts';
import { reachedSeams, type ReachedSeam } from '../sides.ts';
import type { AlterationBase, Outcome, SeamPin } from '../types.ts';

export interface SeamAlteration extends AlterationBase {
	readonly kind: 'seam';
	readonly seam: string;
	readonly pins: readonly SeamPin[];
	readonly shape?: 'smooth' | 'straight';
}

type Refused = Extract<Outcome, { refused: unknown }>;

/** The file form. */
export const seamSchema = (): z.ZodType<SeamAlteration> =>
	z.strictObject({
		id,
		kind: z.literal('seam'),
		on,
		seam: z.string().min(1),
		pins: z.array(z.strictObject({ at: place, a: amount.optional(), b: amount.optional() })).min(1),
		shape: z.enum(['smooth', 'straight']).optional()
	});

export const seam: Kind<SeamAlteration> = {
	kind: 'seam',
	isRead: ({ pins }) => pins.some((pin) => pin.a !== undefined || pin.b !== undefined),
	isNothing: ({ pins }) => pins.every((pin) => !pin.a && !pin.b),
	names: (alteration) => [alteration.seam],
	scaled: (alteration, factor) => ({
		...alteration,
		pins: alteration.pins.map((pin) => ({
			...pin,
			...(pin.a === undefined ? {} : { a: pin.a * factor }),
			...(pin.b === undefined ? {} : { b: pin.b * factor })
		}))
	}),
	movesAt: ({ pins }) => pins.map(({ at, a = 0, b = 0 }) => ({ at, layers: [a, b] })),
	mirrored: (alteration) => alteration,
	carry(draft, alteration) {
		const whole = reachedSeams(draft, alteration.seam, 'both');
		if (isRefused(whole)) return whole;
		if (seam.isNothing(alteration)) {
			const problem = placeProblem(whole.draft, whole.seams, alteration);
			return problem ?? { draft, touched: [], remarks: [] };
		}
		const reached = alteration.on === 'both' ? whole : reachedSeams(draft, alteration.seam, alteration.on);
		if (isRefused(reached)) return reached;
		const runs: RunAmount[] = [];
		for (const one of reached.seams) {
			for (const side of ['a', 'b'] as const) {
				const source = one[side];
				if (!source || alteration.pins.every((pin) => !pin[source])) continue;
				const pins = pinsOn(reached.draft, one, side, source, alteration);
				if (isRefused(pins)) return pins;
				const along = amountAlong(pins, alteration.shape);
				if (!along)
					return refused('same-place', 'Two pins of this alteration are at one place. Give that place one amount.');
				runs.push({ run: seamRun(reached.draft, one.seam, side), along });
			}
		}
		return moveAlong(reached.draft, runs, alteration, seam, (end) => zeroAt(alteration, end));
	}
};

function pinsOn(
	draft: Draft,
	reached: ReachedSeam,
	side: 'a' | 'b',
	source: 'a' | 'b',
	alteration: SeamAlteration
): PinnedAmount[] | Refused {
	const pins: PinnedAmount[] = [];
	for (const pin of alteration.pins) {
		const found = findPlaceOnSeam(draft, reached.seam.id, side, pin.at);
		if ('problem' in found) return noPlace(found.problem, pin.at);
		pins.push({ at: found.stitchedOnSeam, amount: pin[source] ?? 0 });
	}
	return pins;
}

function placeProblem(draft: Draft, seams: readonly ReachedSeam[], alteration: SeamAlteration): Refused | undefined {
	for (const one of seams)
		for (const side of ['a', 'b'] as const) {
			if (!one[side]) continue;
			const pins = pinsOn(draft, one, side, 'a', alteration);
			if (isRefused(pins)) return pins;
		}
	return undefined;
}

/** The same alteration with nothing moved at one end of the seam. */
function zeroAt(alteration: SeamAlteration, end: 'start' | 'finish'): SeamAlteration {
	const at: Place = { end };
	const others = alteration.pins.filter((pin) => !('end' in pin.at && pin.at.end === end && !pin.at.offset));
	return { ...alteration, pins: [...others, { at, a: 0, b: 0 }] };
}
