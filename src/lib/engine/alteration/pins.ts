import { monotoneCubic, type Interpolant } from '../geometry/interpolate.ts';

export interface PinnedAmount {
	/** Position along the stitched line, mm. */
	readonly at: number;
	readonly amount: number;
}

/** The amount along a line, mm, and its slope, at stitched positions, as the pins along it say. */
export interface AmountAlong extends Interpolant {
	readonly positions: readonly number[];
	readonly even: boolean;
	/** The greatest amount between two stitched positions, mm, without sign. */
	greatestBetween(from: number, to: number): number;
}

/** Pins nearer than this are at one place, mm. */
const samePlace = 1;
/** An amount smaller than this is no amount, mm. */
const nothing = 1e-9;

/**
 * The amount between pins by the monotone cubic of Fritsch and Carlson (1980) with level ends; beyond the outermost pins it
 * stays what it was there, and one pin moves the whole line evenly. Two pins at one place give undefined.
 */
export function amountAlong(
	pins: readonly PinnedAmount[],
	shape: 'smooth' | 'straight' = 'smooth'
): AmountAlong | undefined {
	const ordered = isOrdered(pins) ? pins : [...pins].sort((a, b) => a.at - b.at);
	for (let i = 0; i + 1 < ordered.length; i++) if (ordered[i + 1].at - ordered[i].at < samePlace) return undefined;
	const positions = ordered.map((pin) => pin.at);
	const amounts = ordered.map((pin) => (Math.abs(pin.amount) < nothing ? 0 : pin.amount));
	const even = amounts.every((amount) => amount === amounts[0]);
	const curve = monotoneCubic(positions, amounts, { shape });
	return {
		value: curve.value,
		slope: curve.slope,
		positions,
		even,
		// The curve is monotone between pins, so its greatest values are at the pins and at the two ends.
		greatestBetween(from: number, to: number) {
			let greatest = Math.max(Math.abs(curve.value(from)), Math.abs(curve.value(to)));
			for (let i = 0; i < positions.length; i++)
				if (positions[i] > from && positions[i] < to) greatest = Math.max(greatest, Math.abs(amounts[i]));
			return greatest;
		}
	};
}

function isOrdered(pins: readonly PinnedAmount[]): boolean {
	for (let i = 0; i + 1 < pins.length; i++) if (pins[i].at > pins[i + 1].at) return false;
	return true;
}
