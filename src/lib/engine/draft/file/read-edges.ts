import type { Path } from '../../geometry/types.ts';
import type { Edge } from '../types.ts';
import { joined } from '../../geometry/accuracy.ts';
import { signedArea } from '../../geometry/area.ts';
import { pathEnd, pathLength, pathStart } from '../../geometry/path.ts';
import { parsePathData } from '../../geometry/path-data.ts';
import { cross, distance, subtract, unit } from '../../geometry/point.ts';
import { withEnds } from '../meet-ends.ts';
import { readableName } from '../readable-name.ts';
import { inMillimetres, type Report } from './report.ts';
import { limits, type EdgeFile, type PieceFile } from './schema.ts';
import type { Shape, Sound } from './shape.ts';

export interface ReadEdges {
	/** The edges that could be read, by id, as the file draws them. */
	readonly byId: ReadonlyMap<string, Edge>;
	/** All of them, meeting to the bit, and the area they enclose (mm², negative if anticlockwise): only if they close. */
	readonly outline?: { readonly edges: readonly Edge[]; readonly area: number };
}

/** Area that is less than this encloses no cloth, mm². */
const noCloth = 1;

/** The edges of a piece: their paths, whether they close, and the fold. `segmentsLeft` is what the whole draft may still have. */
export function readEdges(
	piece: PieceFile,
	at: string,
	shape: Shape,
	segmentsLeft: { count: number },
	report: Report
): ReadEdges {
	const list = `${at}.edges`;
	const edges: Sound<Edge>[] = [];
	for (const sound of shape.soundIn(piece.edges, list)) {
		const edge = readEdge(sound, segmentsLeft, report);
		if (edge) edges.push({ value: edge, at: sound.at });
	}
	if (shape.isSound(`${at}.cut`) && shape.isSound(list)) checkFolds(piece.cut, edges, list, report);
	const byId = new Map(edges.map(({ value }) => [value.id, value]));
	const whole = shape.isSound(list) && edges.length === piece.edges.length;
	if (whole && edges.length === 0) report(list, 'A piece needs edges that close its outline.');
	if (!whole || edges.length === 0) return { byId };
	return { byId, outline: closed(edges, list, report) };
}

function readEdge(
	{ value: file, at }: Sound<EdgeFile>,
	segmentsLeft: { count: number },
	report: Report
): Edge | undefined {
	if (file.lap !== undefined && file.lap !== 0 && file.kind !== 'open') {
		report(`${at}.lap`, `Only an open edge laps over a centre line; ${file.id} is of the kind "${file.kind}".`);
	}
	const read = parsePathData(file.path);
	if ('problem' in read) {
		report(`${at}.path`, read.problem);
		return undefined;
	}
	const had = segmentsLeft.count;
	segmentsLeft.count -= read.path.length;
	if (segmentsLeft.count < 0) {
		if (had >= 0) report(`${at}.path`, `The draft has too many lines and curves: the most is ${limits.segments}.`);
		return undefined;
	}
	if (!withinReach(read.path)) {
		report(`${at}.path`, `The path leaves the table: nothing lies farther out than ${limits.coordinate} mm.`);
		return undefined;
	}
	if (pathLength(read.path) <= joined) {
		report(`${at}.path`, `The edge ${file.id} has no length: leave it out, or draw it.`);
		return undefined;
	}
	if (file.kind === 'fold' && !isStraight(read.path)) {
		report(`${at}.path`, `A fold is straight; ${file.id} bends.`);
	}
	return {
		id: file.id,
		name: file.name ?? readableName(file.id),
		kind: file.kind,
		path: read.path,
		lap: file.lap ?? 0,
		turn: file.turn ?? false
	};
}

function withinReach(path: Path): boolean {
	const reached = (p: readonly [number, number]) =>
		Math.abs(p[0]) <= limits.coordinate && Math.abs(p[1]) <= limits.coordinate;
	return path.every(
		(segment) =>
			reached(segment.from) &&
			reached(segment.to) &&
			(segment.kind === 'line' || (reached(segment.control1) && reached(segment.control2)))
	);
}

/** Whether every drawn point lies within `joined` of the straight line between the ends. */
function isStraight(path: Path): boolean {
	const start = pathStart(path);
	const along = unit(subtract(pathEnd(path), start));
	const points = path.flatMap((segment) =>
		segment.kind === 'line' ? [segment.to] : [segment.control1, segment.control2, segment.to]
	);
	return points.every((point) => Math.abs(cross(along, subtract(point, start))) <= joined);
}

function checkFolds(cut: PieceFile['cut'], edges: readonly Sound<Edge>[], at: string, report: Report): void {
	const folds = edges.filter(({ value }) => value.kind === 'fold');
	if (cut === 'fold' && folds.length === 0) {
		report(at, 'A piece that is cut on the fold needs one edge of the kind "fold"; this one has none.');
	}
	if (cut === 'fold' && folds.length > 1) {
		report(at, `A piece that is cut on the fold has one edge of the kind "fold"; this one has ${folds.length}.`);
	}
	if (cut !== 'fold') {
		for (const { value, at: edgeAt } of folds) {
			report(
				`${edgeAt}.kind`,
				`${value.id} is a fold, but the piece is cut "${cut}": make it "seam" or "open", or cut the piece on the fold.`
			);
		}
	}
}

/** Moved by less than `joined` to meet to the bit: each edge starts where the one before ends. */
function closed(edges: readonly Sound<Edge>[], at: string, report: Report): ReadEdges['outline'] {
	let closes = true;
	const met = edges.map(({ value: edge, at: edgeAt }, index): Edge => {
		const { value: before } = edges[(index + edges.length - 1) % edges.length];
		const gap = distance(pathEnd(before.path), pathStart(edge.path));
		if (gap > joined) {
			closes = false;
			const where = `${before.id} ends at ${pair(pathEnd(before.path))}, ${edge.id} starts at ${pair(pathStart(edge.path))}`;
			report(
				`${edgeAt}.path`,
				`The outline does not close: ${where}, a gap of ${inMillimetres(gap)}. They should meet.`
			);
		}
		return { ...edge, path: withEnds(edge.path, pathEnd(before.path), undefined) };
	});
	if (!closes) return undefined;
	const area = signedArea(met.flatMap((edge) => edge.path));
	if (Math.abs(area) < noCloth) {
		report(at, 'The outline encloses no cloth: its edges run back over themselves.');
		return undefined;
	}
	return { edges: met, area };
}

function pair(point: readonly [number, number]): string {
	return `(${Number(point[0].toFixed(3))}, ${Number(point[1].toFixed(3))})`;
}
