import { pathLength, tangentAt } from '../../engine/index.ts';
import type { Edge, Path, Piece, Point } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { tacks } from '../pens.ts';
import { besideEdge, stepped, through } from '../plane.ts';
import { isInside } from '../polygon.ts';
import { asLine } from '../words.ts';
import { nothing } from './drawn.ts';
import type { Drawn } from './drawn.ts';

/** mm between the points that the line is drawn through: a chord of a curve of radius 100 mm is off by 0.005 mm. */
const step = 2;

/**
 * The centre line of an edge that laps over it: tacks at the width of the lap inside the edge, as far as the cloth goes. A
 * lacing gap has its centre line off the cloth, and nothing is drawn.
 */
export function drawCentreLine(piece: Piece, edge: Edge, outline: readonly Point[], move: (path: Path) => Path): Drawn {
	if (edge.lap <= 0) return nothing;
	const run = longestInside(lineBeside(edge), outline);
	if (run.length < 2) return nothing;
	const path = move(through(...run));
	return {
		parts: [{ kind: 'dots', id: nameId('centre-line', piece.id, edge.id), path, ...tacks }],
		lines: [asLine(path)],
		words: [{ text: 'centre line', sizes: [4, 3.2, 3], along: path, shares: [0.3, 0.7, 0.2, 0.8, 0.4, 0.6, 0.5] }]
	};
}

/** Points at the width of the lap inside the edge, run straight on past both ends. */
function lineBeside({ path, lap }: Edge): Point[] {
	const length = pathLength(path);
	const steps = Math.ceil(length / step);
	const beside = Array.from({ length: steps + 1 }, (_, i) =>
		besideEdge(path, (length * i) / steps, -lap, i === steps ? 'before' : 'after')
	);
	const beyond = Array.from({ length: Math.ceil((2 * lap) / step) }, (_, i) => (i + 1) * step);
	const before = beyond.map((s) => stepped(beside[0], tangentAt(path, 0), -s)).reverse();
	const after = beyond.map((s) => stepped(beside[steps], tangentAt(path, length, 'before'), s));
	return [...before, ...beside, ...after];
}

function longestInside(points: readonly Point[], outline: readonly Point[]): Point[] {
	let longest: Point[] = [];
	let run: Point[] = [];
	for (const point of points) {
		run = isInside(point, outline) ? [...run, point] : [];
		if (run.length > longest.length) longest = run;
	}
	return longest;
}
