import fc from 'fast-check';

/**
 * A number from `min` to `max`, mostly evenly spread; one in eight as the computer spaces its numbers, which is often as near to
 * nothing as it can write.
 */
export function number(min: number, max: number): fc.Arbitrary<number> {
	const steps = 1e6;
	return fc.oneof(
		{ weight: 7, arbitrary: fc.nat(steps).map((step) => min + ((max - min) * step) / steps) },
		{ weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) }
	);
}
