/** The line that an edge is cut along: mouths of darts that are not trued yet are shaped as they will be pressed. */
import { cornersOf, pathLength, pointAt, portion, reversedPath, tangentAt } from '../geometry/path.ts';
import { angleBetween, cross, subtract } from '../geometry/point.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { dartLegs, type DartLegs } from '../draft/dart-legs.ts';
import { foldAtMouth, pressedMouth, pressedTowards } from '../draft/pressed-mouth.ts';
import type { Dart, Edge, Piece } from '../draft/types.ts';
import type { Path } from '../geometry/types.ts';

/** The edge's line for cutting: mouths that are not trued yet are shaped, all else is as drawn. The same path if nothing is. */
export function pressedEdge(piece: Piece, edge: Edge): Path {
	const mouths = piece.darts
		.filter((dart) => dart.edge === edge.id && dart.to - dart.from > joined)
		.sort((a, b) => a.from - b.from);
	let path: Path = [];
	let done = 0;
	let shaped = false;
	mouths.forEach((dart, i) => {
		const before = i === 0 ? 0 : mouths[i - 1].to;
		const after = i + 1 === mouths.length ? pathLength(edge.path) : mouths[i + 1].from;
		const mouth = shapedMouth(piece, edge, dart, before, after);
		if (!mouth || dart.from < done) return;
		if (dart.from - done > measured) path = [...path, ...portion(edge.path, done, dart.from)];
		path = [...path, ...mouth];
		done = dart.to;
		shaped = true;
	});
	if (!shaped) return edge.path;
	const length = pathLength(edge.path);
	return length - done > measured ? [...path, ...portion(edge.path, done, length)] : path;
}

/** A peak this near to the fold line, mm and as a share of the intake, is that of a trued mouth. */
const peakNear = 1;
const peakShare = 0.1;

/** Whether the mouth as drawn already has the peak that folding and cutting gives it. */
function isTrued(edge: Edge, dart: Dart, legs: DartLegs): boolean {
	const fold = foldAtMouth(legs);
	return cornersOf(edge.path).some((s) => {
		if (s <= dart.from + measured || s >= dart.to - measured) return false;
		const aside = Math.abs(cross(fold.into, subtract(pointAt(edge.path, s), fold.through)));
		const turn = angleBetween(tangentAt(edge.path, s, 'before'), tangentAt(edge.path, s, 'after'));
		return turn > 0 && aside <= Math.max(peakNear, peakShare * legs.intake);
	});
}

/** `before` and `after` bound the edge's own line on either side of the mouth: an end of the edge, or another mouth. */
function shapedMouth(piece: Piece, edge: Edge, dart: Dart, before: number, after: number): Path | undefined {
	const legs = dartLegs(piece, dart);
	if (isTrued(edge, dart, legs)) return undefined;
	const towards = pressedTowards(piece, dart, legs);
	const [from, to] = towards === 'to' ? [dart.to, after] : [before, dart.from];
	if (to - from <= joined) return undefined;
	const own = portion(edge.path, from, to);
	return pressedMouth(legs, towards, towards === 'to' ? own : reversedPath(own));
}
