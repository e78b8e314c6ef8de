import { movePath, movePoint, pathBox } from './engine.ts';
import type { Box, Motion, Path, Point } from './engine.ts';

/** Turned, and scaled to px, with its origin left where it is: pieces lie as drafted, mirrored for the left half, or a quarter turn over. */
export function lieOf(scale: number, lie: 'upright' | 'mirrored' | 'along' | 'along-mirrored'): Motion {
	switch (lie) {
		case 'upright':
			return [scale, 0, 0, scale, 0, 0];
		case 'mirrored':
			return [-scale, 0, 0, scale, 0, 0];
		case 'along':
			return [0, -scale, scale, 0, 0, 0];
		case 'along-mirrored':
			return [0, scale, scale, 0, 0, 0];
	}
}

export function shifted(motion: Motion, x: number, y: number): Motion {
	return [motion[0], motion[1], motion[2], motion[3], motion[4] + x, motion[5] + y];
}

export function boxOf(motion: Motion, paths: readonly Path[]): Box {
	return paths.map((path) => pathBox(movePath(motion, path))).reduce(unionOf);
}

function unionOf(a: Box, b: Box): Box {
	return {
		left: Math.min(a.left, b.left),
		top: Math.min(a.top, b.top),
		right: Math.max(a.right, b.right),
		bottom: Math.max(a.bottom, b.bottom)
	};
}

export const moved = (motion: Motion, points: readonly Point[]): Point[] => points.map((p) => movePoint(motion, p));
