import { Bench } from 'tinybench';

/** A thing to be timed; `figure` is what it was found to be off by, or another word beside its time. */
export interface Timed {
	readonly name: string;
	readonly run: () => unknown;
	readonly figure?: string;
}

const time = (ms: number): string =>
	ms >= 1 ? `${ms.toFixed(2)} ms` : ms >= 1e-3 ? `${(ms * 1e3).toFixed(2)} µs` : `${(ms * 1e6).toFixed(0)} ns`;

/** Times things side by side in one run, each for at least a second, and prints their medians and 99th percentiles. */
export async function report(title: string, timed: readonly Timed[]): Promise<void> {
	const bench = new Bench({ time: 1000, warmupTime: 200 });
	for (const { name, run } of timed) bench.add(name, () => void run());
	await bench.run();
	console.log(`\n${title}\n`);
	const width = Math.max(...timed.map(({ name }) => name.length));
	for (const { name, figure = '' } of timed) {
		const { result } = bench.getTask(name)!;
		if (result.state !== 'completed') throw new Error(`${name} was not timed: ${result.state}.`);
		const { p50, p99 } = result.latency;
		console.log(
			`  ${name.padEnd(width)}  median ${time(p50).padStart(9)}  p99 ${time(p99).padStart(9)}  ${figure}`.trimEnd()
		);
	}
}
