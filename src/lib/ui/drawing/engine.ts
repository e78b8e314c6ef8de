/** What the drawing needs of the engine, through its one door. */
import { compare } from '../../engine/index.ts';

export {
	dartLegs,
	edgePairs,
	findEdge,
	findPiece,
	findPlace,
	flatten,
	foldDartLegs,
	levelSpan,
	movePath,
	movePoint,
	nearestOn,
	notchCounts,
	outlineOf,
	parsePathData,
	pathBox,
	pathLength,
	piecePairs,
	pointAt,
	portion,
	remembered,
	reversedPath,
	seamRun,
	sideOfName,
	tangentAt,
	undividedName
} from '../../engine/index.ts';
export type { Box, Draft, Edge, EdgePlace, Level, MarkKind, Motion, Path, Piece, Point } from '../../engine/index.ts';
export { compare };

/** A dart as `compare` measures it. */
export type DartSize = NonNullable<ReturnType<typeof compare>['darts'][number]['before']>;
