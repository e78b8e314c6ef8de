import { expect, test } from 'vitest';
import { slowDown } from '../../../src/lib/server/access/slow-down.ts';

const address = '192.168.1.30';

function atHand() {
	const clock = { now: 1_000_000 };
	return { clock, slow: slowDown(() => clock.now) };
}

/** Guesses without a rest, waiting exactly as long as it is told; the instants of the tries that were let through. */
function guesses(count: number): number[] {
	const { clock, slow } = atHand();
	const tries: number[] = [];
	while (tries.length < count) {
		const wait = slow.ask(address);
		if (wait === 0) {
			tries.push(clock.now);
			slow.wrong(address);
		}
		clock.now += wait;
	}
	return tries;
}

test('each wrong try after the third doubles the wait, from two seconds to a quarter of an hour', () => {
	const tries = guesses(16);
	const waits = tries.slice(1).map((at, n) => (at - tries[n]!) / 1000);
	expect(waits.slice(0, 2)).toEqual([0, 0]);
	expect(waits.slice(2)).toEqual([2, 4, 8, 16, 32, 64, 128, 256, 512, 900, 900, 900, 900]);
});

test('a guesser who never rests has fewer than a hundred and twenty tries a day', () => {
	const tries = guesses(130);
	const day = 24 * 60 * 60 * 1000;
	expect(tries.filter((at) => at < tries[0]! + day).length).toBeLessThan(120);
});

test('tries that are not wrong are let through six at once, and one every twenty seconds after that', () => {
	const { clock, slow } = atHand();
	const let6 = Array.from({ length: 7 }, () => slow.ask(address));
	expect(let6).toEqual([0, 0, 0, 0, 0, 0, 20_000]);
	clock.now += 19_000;
	expect(slow.ask(address)).toBeCloseTo(1_000, 6);
	clock.now += 1_000;
	expect(slow.ask(address)).toBe(0);
	expect(slow.ask(address)).toBeCloseTo(20_000, 6);
});

test('a right one forgets the wrong ones before it, and so does an hour', () => {
	const { clock, slow } = atHand();
	for (let n = 0; n < 3; n++) slow.wrong(address);
	expect(slow.ask(address)).toBeGreaterThan(0);
	slow.right(address);
	expect(slow.ask(address)).toBe(0);
	for (let n = 0; n < 20; n++) slow.wrong(address);
	expect(slow.ask(address)).toBe(900_000);
	clock.now += 60 * 60_000 + 1;
	expect(slow.ask(address)).toBe(0);
});

test('no address slows another down, and of many only the latest are remembered', () => {
	const { slow } = atHand();
	for (let n = 0; n < 20; n++) slow.wrong(address);
	expect(slow.ask('192.168.1.31')).toBe(0);
	for (let n = 0; n < 5_001; n++) slow.ask(`10.0.${n >> 8}.${n & 255}`);
	expect(slow.ask(address), 'it was heard of longest ago').toBe(0);
});
