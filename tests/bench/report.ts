import { Bench } from 'tinybench';

/** A thing to be timed; `figure` is what it was found to be off by, or another word beside its time. */
export interface Timed {
	readonly name: string;
	readonly run: () => unknown;
	readonly figure?: string;
	/** Another library doing what the first thing of the table does: how its time stands to that one's is printed. */
	readonly peer?: boolean;
}

const time = (ms: number): string =>
	ms >= 1 ? `${ms.toFixed(2)} ms` : ms >= 1e-3 ? `${(ms * 1e3).toFixed(2)} µs` : `${(ms * 1e6).toFixed(0)} ns`;

/**
 * Times things side by side in one run, a little of each in turn so that a busy moment of the machine falls on all of them,
 * for a second each, and prints their medians and 99th percentiles.
 */
export async function report(title: string, timed: readonly Timed[]): Promise<void> {
	const samples = timed.map((): number[] => []);
	for (let turn = 0; turn < turns; turn++) {
		const bench = new Bench({
			time: 1000 / turns,
			iterations: 4,
			warmupTime: turn === 0 ? 200 : 20,
			warmupIterations: turn === 0 ? 4 : 1,
			retainSamples: true
		});
		for (const { name, run } of timed) bench.add(name, () => void run());
		await bench.run();
		timed.forEach(({ name }, i) => {
			const { result } = bench.getTask(name)!;
			if (result.state !== 'completed') throw new Error(`${name} was not timed: ${result.state}.`);
			for (const sample of result.latency.samples ?? []) samples[i].push(sample);
		});
	}
	console.log(`\n${title}\n`);
	const width = Math.max(...timed.map(({ name }) => name.length));
	const medians = samples.map((all) => quantile(all, 0.5));
	timed.forEach(({ name, figure = '', peer }, i) => {
		const ratio = peer ? `ours : peer = 1 : ${(medians[i] / medians[0]).toFixed(2)}` : '';
		const times = `median ${time(medians[i]).padStart(9)}  p99 ${time(quantile(samples[i], 0.99)).padStart(9)}`;
		console.log(`  ${name.padEnd(width)}  ${times}  ${[ratio, figure].filter(Boolean).join('  ')}`.trimEnd());
	});
}

const turns = 5;

function quantile(samples: readonly number[], share: number): number {
	const sorted = [...samples].sort((a, b) => a - b);
	return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
