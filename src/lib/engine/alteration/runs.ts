/** Runs of an edge that was cut apart and put together again: what was where on the old line, and is where on the new one. */
import { measured } from '../geometry/accuracy.ts';
import type { Fate } from './reassemble.ts';

/** A run of a rebuilt edge: where it lies on the new edge and where on the old (nowhere for a bridge). */
export interface Run {
	at: number;
	readonly length: number;
	readonly from: number;
	readonly to: number;
	readonly fate: Fate;
	readonly bridge: boolean;
}

/**
 * Where an old place of an edge lies on the new one, and on which run; undefined on what was cut away. At a cut it goes with what
 * comes after it or with what comes before.
 */
export function carriedOn(
	runs: readonly Run[],
	s: number,
	side: 'before' | 'after'
): { s: number; run: Run } | undefined {
	const holds = (run: Run) =>
		!run.bridge &&
		(side === 'after'
			? s >= run.from - measured && s < run.to - measured
			: s > run.from + measured && s <= run.to + measured);
	const run = runs.find(holds) ?? runs.find((one) => !one.bridge && s >= one.from - measured && s <= one.to + measured);
	return run && { s: Math.min(Math.max(run.at + s - run.from, 0), run.at + run.length), run };
}

/** Where the cloth begins again beyond a place that was cut away; the end of the edge if it does not. */
export function startBeyond(runs: readonly Run[], s: number): number {
	const next = runs.find((run) => !run.bridge && run.from >= s - measured);
	const last = runs[runs.length - 1];
	return next ? next.at : last.at + last.length;
}

/** Where the cloth ends short of a place that was cut away; the start of the edge if there is none. */
export function endShortOf(runs: readonly Run[], s: number): number {
	const before = [...runs].reverse().find((run) => !run.bridge && run.to <= s + measured);
	return before ? before.at + before.length : 0;
}
