/**
 * The laws over ten thousand cases each (LAW_RUNS for another number), with a seed of the day unless LAW_SEED gives one. What
 * was tried is printed, so that a law that is kept by refusing everything would be seen.
 */
import { afterAll, describe, it } from 'vitest';
import { laws, type Cases } from '../support/laws.ts';
import { rigidLaws } from '../support/rigid-laws.ts';

const seed = Number(process.env.LAW_SEED ?? Math.floor(Date.now() / 86_400_000));
const numRuns = Number(process.env.LAW_RUNS ?? 10_000);

const times: string[] = [];
const applied = new Map<string, number>();
const refused = new Map<string, Map<string, number>>();

const tell: Cases['tell'] = (alterations, carried) => {
	const kindOf = new Map(alterations.map(({ id, kind }) => [id, kind]));
	for (const { alteration } of carried.applied) count(applied, kindOf.get(alteration)!);
	for (const { alteration, code } of carried.unplaced) {
		const kind = kindOf.get(alteration)!;
		if (!refused.has(kind)) refused.set(kind, new Map());
		count(refused.get(kind)!, code);
	}
};

function count(counts: Map<string, number>, name: string): void {
	counts.set(name, (counts.get(name) ?? 0) + 1);
}

describe(`${numRuns} cases of every law, seed ${seed}`, () => {
	for (const [i, law] of [...laws, ...rigidLaws].entries())
		it(law.name, { timeout: 3_600_000 }, () => {
			const start = performance.now();
			law.hold({ seed, numRuns, ...(i === 0 ? { tell } : {}) });
			times.push(`  ${((performance.now() - start) / 1000).toFixed(0).padStart(5)} s  ${law.name}`);
		});
});

afterAll(() => {
	const kinds = [...new Set([...applied.keys(), ...refused.keys()])].sort();
	const lines = kinds.map((kind) => {
		const reasons = [...(refused.get(kind) ?? [])].sort((a, b) => b[1] - a[1]);
		const turnedDown = reasons.reduce((sum, [, times]) => sum + times, 0);
		const named = reasons.map(([code, times]) => `${code} ${times}`).join(', ');
		return `  ${kind.padEnd(12)} ${String(applied.get(kind) ?? 0).padStart(7)} applied ${String(turnedDown).padStart(7)} refused  ${named}`;
	});
	console.log(
		[`${numRuns} cases each, seed ${seed}`, ...times, 'Of the histories of the first law:', ...lines].join('\n')
	);
});
