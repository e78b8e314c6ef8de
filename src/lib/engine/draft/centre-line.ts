import { fitted } from '../geometry/accuracy.ts';
import { along } from '../geometry/meet.ts';
import { moveOutline, type MovedEdge } from '../geometry/move-outline.ts';
import { endTangent, pathEnd, pathStart, startTangent, straight } from '../geometry/path.ts';
import { outward } from '../geometry/point.ts';
import { remembered } from '../geometry/memo.ts';
import type { Edge } from './types.ts';

/**
 * The line that an open edge closes on: it lies the edge's lap inside the edge and runs the same way, from square in at the
 * edge's start to square in at its finish, with where each place of the edge comes to lie on it. At a corner of the edge its
 * two parts are trimmed or run on to meet. Undefined where the edge bends round it too sharply.
 */
export const centreLine: (edge: Edge) => MovedEdge | undefined = remembered(({ path, lap }: Edge) => {
	if (lap === 0) return { path, carried: (s: number) => s };
	// Between two lines square to its ends the edge moves as in any outline, and ends on them.
	const far = 4 * lap;
	const start = pathStart(path);
	const end = pathEnd(path);
	const startFar = along(start, outward(startTangent(path)), -far);
	const endFar = along(end, outward(endTangent(path)), -far);
	const moved = moveOutline(
		[path, straight(end, endFar), straight(endFar, startFar), straight(startFar, start)],
		[{ amount: -lap, breaks: [], greatest: Math.abs(lap) }, undefined, undefined, undefined],
		fitted / 10
	);
	return 'refused' in moved ? undefined : moved.edges[0];
});
