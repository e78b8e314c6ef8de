import { cornerAngle } from './accuracy.ts';
import { remembered } from './memo.ts';
import { segmentStarts } from './path.ts';
import { angleBetween } from './point.ts';
import { tangentOn } from './segment.ts';
import type { Path, Point } from './types.ts';

/** A joint inside a path at which its direction jumps. */
export interface Joint {
	/** Arc length, mm. */
	readonly s: number;
	/** By how much, radians, without sign. */
	readonly turn: number;
	/** How long the shorter of the two segments is that it joins, mm. */
	readonly shorter: number;
}

/** Less is rounding, radians. */
const leastTurn = 1e-9;

/** The joints inside the path at which its direction jumps, rising. Segments of no length are passed over. */
export const jointsOf: (path: Path) => readonly Joint[] = remembered((path: Path) => {
	const starts = segmentStarts(path);
	const joints: Joint[] = [];
	let before: Point = [0, 0];
	let lengthBefore = 0;
	for (let i = 0; i < path.length; i++) {
		const length = starts[i + 1] - starts[i];
		if (!(length > 0)) continue;
		const after = tangentOn(path[i], 0);
		if (before[0] !== 0 || before[1] !== 0) {
			const turn = Math.abs(angleBetween(before, after));
			if (turn > leastTurn) joints.push({ s: starts[i], turn, shorter: Math.min(lengthBefore, length) });
		}
		before = tangentOn(path[i], 1);
		lengthBefore = length;
	}
	return joints;
});

/** Where inside the path its direction jumps by more than `cornerAngle`: arc lengths, rising. */
export const cornersOf: (path: Path) => readonly number[] = remembered((path: Path) =>
	jointsOf(path)
		.filter(({ turn }) => turn > cornerAngle)
		.map(({ s }) => s)
);
