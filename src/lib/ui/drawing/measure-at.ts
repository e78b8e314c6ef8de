import type { Measure } from './scene.ts';

/** The measure of a drawing that is looked at closer: its ticks stay true inches of what is seen. */
export function measureAt(
	measure: Measure,
	{ closer, x }: { readonly closer: number; readonly x: number },
	width: number
): Measure {
	if (closer === 1) return measure;
	const ticks = measure.ticks
		.map((tick) => ({ ...tick, x: tick.x * closer + x }))
		.filter((tick) => tick.x >= 0 && tick.x <= width);
	return { ...measure, ticks };
}
