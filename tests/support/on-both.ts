import { expect } from 'vitest';
import { measured } from '../../src/lib/engine/geometry/accuracy.ts';
import { crossings } from '../../src/lib/engine/geometry/crossings.ts';
import { distance } from '../../src/lib/engine/geometry/point.ts';
import { pointAt } from '../../src/lib/engine/geometry/path.ts';
import type { Path } from '../../src/lib/engine/geometry/types.ts';

/** The crossings of two paths, each seen to lie on both of them, in order along the first. */
export function onBoth(a: Path, b: Path, accuracy = measured) {
	const found = crossings(a, b, accuracy);
	for (const { sa, sb, point } of found) {
		expect(distance(pointAt(a, sa), point)).toBeLessThan(accuracy + 2 * measured);
		expect(distance(pointAt(b, sb), point)).toBeLessThan(2 * accuracy + 2 * measured);
	}
	found.slice(1).forEach(({ sa }, i) => expect(sa).toBeGreaterThanOrEqual(found[i].sa));
	return found;
}
