import { expect, test } from 'vitest';
import { pathLength } from '../../../src/lib/engine/index.ts';
import type { Motion } from '../../../src/lib/engine/index.ts';
import { drawMark } from '../../../src/lib/output/marks/mark.ts';
import { printedInput } from '../support/printed-input.ts';

const piece = printedInput.draft.pieces[0];
/** Turned over and laid elsewhere, as the left half is. */
const turnedOver: Motion = [-1, 0, 0, 1, 300, 12];

test('a buttonhole is drawn as long as it is cut, from end to end, also turned over', () => {
	// A 5/8″ button, 3/16″ thick, wants 13/16″ (common practice, no source): 20.6375 mm.
	const drawn = drawMark(
		piece,
		{ id: 'h', kind: 'buttonhole', at: [186, 290], to: [186 - 20.6375, 290 + 3] },
		turnedOver
	);
	const [slit, ...bars] = drawn.parts.flatMap((part) =>
		part.kind === 'group' ? part.parts.flatMap((one) => (one.kind === 'line' ? [one.path] : [])) : []
	);
	expect(pathLength(slit)).toBeCloseTo(Math.hypot(20.6375, 3), 9);
	expect([slit[0].from, slit[0].to]).toEqual([
		[114, 302],
		[114 + 20.6375, 305]
	]);
	expect(bars).toHaveLength(2);
	expect(drawn.reach).toBeCloseTo(Math.hypot(20.6375, 3) / 2, 9);
});
