/**
 * Cuts a piece apart along lines across it, moves the parts rigidly, and makes one piece of them again: what slashing,
 * folding and swinging a dart share. Openings in an edge are bridged by straight lines; everything that lies on a part rides
 * with it.
 */
import { crossings } from '../geometry/crossings.ts';
import { contains } from '../geometry/contains.ts';
import { joined, measured } from '../geometry/accuracy.ts';
import { movePath, movePoint } from '../geometry/motion.ts';
import { nearestOn } from '../geometry/nearest.ts';
import { distance, midpoint } from '../geometry/point.ts';
import { pathEnd, pathLength, pathStart, pointAt, portion, straight } from '../geometry/path.ts';
import type { Motion, Path, Point, Segment } from '../geometry/types.ts';
import type { OutlinePlace } from '../draft/outline-stretch.ts';
import type { Dart, Edge, FoldDart, Level, Piece } from '../draft/types.ts';
import { refused } from './refusal.ts';
import { carriedOn, endShortOf, startBeyond, type Run } from './runs.ts';
import type { Outcome } from './types.ts';

type Refused = Extract<Outcome, { refused: unknown }>;

/** What becomes of a part: it stays, moves rigidly, or is cut away. */
export type Fate = 'kept' | 'dropped' | Motion;

/** Cloth that does not stay, by its outline before anything moved. Regions do not overlap. */
export interface Region {
	readonly outline: Path;
	readonly fate: Exclude<Fate, 'kept'>;
}

/** A straight bridge in an edge, as it lies in the result; arc lengths in mm. */
export interface Bridge {
	readonly edge: string;
	readonly from: number;
	readonly to: number;
}

export interface Reassembled {
	readonly piece: Piece;
	readonly bridges: readonly Bridge[];
	/** Ids of notches that lay on cloth that was cut away. */
	readonly lostNotches: readonly string[];
	/** Darts whose mouth the cut runs through: they cannot be kept. */
	readonly cutMouths: readonly Dart[];
}

/**
 * The piece with the stretch of its outline after `cuts[k]` (to the next cut, clockwise) sharing the fate `fates[k]`, and
 * all that lies inside a region sharing the fate of that region.
 *
 * Refused: cuts that have run past one another, so that an edge would be used up.
 *
 * @param cuts in order round the outline, at least two
 */
export function reassemble(
	piece: Piece,
	cuts: readonly OutlinePlace[],
	fates: readonly Fate[],
	regions: readonly Region[]
): Reassembled | Refused {
	const usedUp = refused(
		'edge-used-up',
		`Nothing would be left of an edge of ${piece.name}. Take away less, or cut farther from its corners.`
	);
	if (cuts.some((cut, i) => i > 0 && orderOf(cuts[i - 1], cut) > measured)) return usedUp;
	const bridges: Bridge[] = [];
	const rebuilt = piece.edges.map((edge, index) => rebuildEdge(edge, stretchesOf(edge, index, cuts, fates)));
	if (rebuilt.some(({ segments }) => segments.length === 0)) return usedUp;
	closeCorners(rebuilt, cuts);
	const edges = rebuilt.map(({ edge, segments, runs }) => {
		for (const run of runs) if (run.bridge) bridges.push({ edge: edge.id, from: run.at, to: run.at + run.length });
		const untouched = segments.length === edge.path.length && segments.every((segment, i) => segment === edge.path[i]);
		return untouched ? edge : { ...edge, path: segments };
	});
	const runsOf = (edgeId: string) => rebuilt[piece.edges.findIndex((edge) => edge.id === edgeId)].runs;
	const carried = (edgeId: string, s: number, side: 'before' | 'after') => carriedOn(runsOf(edgeId), s, side);
	const fateAt = (point: Point): Fate => regions.find((region) => contains(region.outline, point))?.fate ?? 'kept';
	const ride = (point: Point): Point => moved(point, fateAt(point));
	const isOnBound = (point: Point) =>
		regions.some((region) => nearestOn(region.outline, point, measured).distance <= onBound);
	const lostNotches: string[] = [];
	const cutMouths: Dart[] = [];
	const darts: Dart[] = piece.darts.flatMap((dart) => {
		const from = carried(dart.edge, dart.from, 'after');
		const to = carried(dart.edge, dart.to, 'before');
		if (!from || !to || from.run !== to.run) {
			cutMouths.push(dart);
			return [];
		}
		// A point on the line of the cut goes with its mouth.
		const fate = isOnBound(dart.point) ? from.run.fate : fateAt(dart.point);
		return [{ ...dart, from: from.s, to: to.s, point: moved(dart.point, fate) }];
	});
	return {
		piece: {
			...piece,
			edges,
			darts,
			foldDarts: piece.foldDarts.map((dart): FoldDart => ({ ...dart, ends: [ride(dart.ends[0]), ride(dart.ends[1])] })),
			notches: piece.notches.flatMap((notch) => {
				// A notch that the cut runs through stays with the part that stays, whichever way the edge runs.
				const sides = [carried(notch.edge, notch.at, 'before'), carried(notch.edge, notch.at, 'after')];
				const at = sides.find((one) => one?.run.fate === 'kept') ?? sides[0] ?? sides[1];
				if (at) return [{ ...notch, at: at.s }];
				lostNotches.push(notch.id);
				return [];
			}),
			marks: piece.marks.map((mark) => ({ ...mark, at: ride(mark.at), ...(mark.to && { to: ride(mark.to) }) })),
			pleats: piece.pleats.map((pleat) => ({
				...pleat,
				from: carried(pleat.edge, pleat.from, 'after')?.s ?? startBeyond(runsOf(pleat.edge), pleat.from),
				to: carried(pleat.edge, pleat.to, 'before')?.s ?? endShortOf(runsOf(pleat.edge), pleat.to)
			})),
			levels: piece.levels.flatMap((level) => divideLevel(level, regions, fateAt)),
			...(piece.grain ? { grain: rideGrain(piece.grain, fateAt) } : {})
		},
		bridges,
		lostNotches,
		cutMouths
	};
}

/** A point this near to the line of a cut lies on it, mm. */
const onBound = 1e-3;

function moved(point: Point, fate: Fate): Point {
	return fate === 'kept' || fate === 'dropped' ? point : movePoint(fate, point);
}

/** Cuts given clockwise from anywhere, with their fates, from the first on the outline. */
export function inOutlineOrder(
	cuts: readonly OutlinePlace[],
	fates: readonly Fate[]
): { cuts: readonly OutlinePlace[]; fates: readonly Fate[] } {
	const start = cuts.reduce((least, cut, i) => (orderOf(cut, cuts[least]) < 0 ? i : least), 0);
	const turned = <T>(list: readonly T[]) => [...list.slice(start), ...list.slice(0, start)];
	return { cuts: turned(cuts), fates: turned(fates) };
}

/** Negative where a lies before b on the outline. */
function orderOf(a: OutlinePlace, b: OutlinePlace): number {
	return a.edge - b.edge || a.s - b.s;
}

/** The bridge on an edge that runs from one point to another (to `joined`), if there is one. */
export function bridgeBetween(made: Reassembled, edge: string, start: Point, finish: Point): Bridge | undefined {
	const path = made.piece.edges.find((one) => one.id === edge)!.path;
	return made.bridges.find(
		(bridge) =>
			bridge.edge === edge &&
			distance(pointAt(path, bridge.from), start) <= joined &&
			distance(pointAt(path, bridge.to), finish) <= joined
	);
}

/** A stretch of one edge, mm along it, and its fate. */
interface EdgeStretch {
	readonly from: number;
	readonly to: number;
	readonly fate: Fate;
}

interface Rebuilt {
	readonly edge: Edge;
	segments: Segment[];
	runs: Run[];
}

function stretchesOf(edge: Edge, index: number, cuts: readonly OutlinePlace[], fates: readonly Fate[]): EdgeStretch[] {
	const length = pathLength(edge.path);
	const before = lastIndex(cuts, (cut) => cut.edge < index);
	let fate = fates[before >= 0 ? before : cuts.length - 1];
	let from = 0;
	const stretches: EdgeStretch[] = [];
	for (let k = 0; k < cuts.length; k++) {
		if (cuts[k].edge !== index) continue;
		if (cuts[k].s > from + joined) {
			stretches.push({ from, to: cuts[k].s, fate });
			from = cuts[k].s;
		}
		fate = fates[k];
	}
	// What is too short to be a stretch of its own goes with its neighbour, so that no length is lost.
	const last = stretches[stretches.length - 1];
	if (length > from + joined) stretches.push({ from, to: length, fate });
	else if (last) stretches[stretches.length - 1] = { ...last, to: length };
	return stretches;
}

function rebuildEdge(edge: Edge, stretches: readonly EdgeStretch[]): Rebuilt {
	const rebuilt: Rebuilt = { edge, segments: [], runs: [] };
	const length = pathLength(edge.path);
	for (const { from, to, fate } of stretches) {
		if (fate === 'dropped') continue;
		const whole = from === 0 && to === length;
		const still = whole ? edge.path : portion(edge.path, from, to);
		const path = fate === 'kept' ? still : movePath(fate, still);
		appendRun(rebuilt, path, { from, to, fate, bridge: false });
	}
	return rebuilt;
}

function appendRun(rebuilt: Rebuilt, path: Path, run: Omit<Run, 'at' | 'length'>): void {
	const last = rebuilt.segments[rebuilt.segments.length - 1];
	if (last) {
		const gap = distance(last.to, pathStart(path));
		if (gap > joined)
			appendRun(rebuilt, straight(last.to, pathStart(path)), { from: NaN, to: NaN, fate: 'kept', bridge: true });
		else if (gap > 0) path = [{ ...path[0], from: last.to }, ...path.slice(1)];
	}
	const at = rebuilt.runs.reduce((sum, one) => sum + one.length, 0);
	rebuilt.segments.push(...path);
	rebuilt.runs.push({ ...run, at, length: pathLength(path) });
}

/** Bridges the corners that came apart, in the edge whose end was named in the cut. */
function closeCorners(rebuilt: Rebuilt[], cuts: readonly OutlinePlace[]): void {
	for (let i = 0; i < rebuilt.length; i++) {
		const next = rebuilt[(i + 1) % rebuilt.length];
		const here = rebuilt[i];
		const end = pathEnd(here.segments);
		const start = pathStart(next.segments);
		const gap = distance(end, start);
		if (gap === 0) continue;
		if (gap <= joined) {
			// What stays keeps its corner to the bit; the moved neighbour takes it over.
			const last = here.segments.length - 1;
			if (next.runs[0].fate === 'kept') here.segments[last] = { ...here.segments[last], to: start };
			else next.segments[0] = { ...next.segments[0], from: end };
			continue;
		}
		const namedNext = cuts.some((cut) => cut.edge === (i + 1) % rebuilt.length && cut.s <= joined);
		const bridge = straight(end, start);
		const length = pathLength(bridge);
		if (namedNext) {
			next.segments = [...bridge, ...next.segments];
			for (const run of next.runs) run.at += length;
			next.runs.unshift({ at: 0, length, from: NaN, to: NaN, fate: 'kept', bridge: true });
		} else appendRun(here, bridge, { from: NaN, to: NaN, fate: 'kept', bridge: true });
	}
}

function rideGrain(grain: readonly [Point, Point], fateAt: (point: Point) => Fate): readonly [Point, Point] {
	const fate = fateAt(midpoint(grain[0], grain[1]));
	return [moved(grain[0], fate), moved(grain[1], fate)];
}

/** A drawn level divided where the regions begin; each part rides with its cloth. Parts on cut-away cloth are gone. */
function divideLevel(level: Level, regions: readonly Region[], fateAt: (point: Point) => Fate): Level[] {
	if ('edge' in level) return [level];
	const parts: { fate: Fate; points: Point[] }[] = [];
	for (let i = 0; i + 1 < level.line.length; i++) {
		const path = straight(level.line[i], level.line[i + 1]);
		const length = pathLength(path);
		const bounds = regions.flatMap((region) =>
			crossings(path, region.outline, measured).map((crossing) => crossing.sa)
		);
		const stops = [0, ...bounds.filter((s) => s > joined && s < length - joined).sort((a, b) => a - b), length];
		for (let k = 0; k + 1 < stops.length; k++) {
			if (stops[k + 1] - stops[k] <= joined) continue;
			const fate = fateAt(pointAt(path, (stops[k] + stops[k + 1]) / 2));
			const [start, end] = [pointAt(path, stops[k]), pointAt(path, stops[k + 1])];
			const last = parts[parts.length - 1];
			if (last && last.fate === fate) last.points.push(end);
			else parts.push({ fate, points: [start, end] });
		}
	}
	return parts.flatMap(({ fate, points }) => {
		if (fate === 'dropped') return [];
		return [{ level: level.level, line: points.map((point) => moved(point, fate)) }];
	});
}

function lastIndex<T>(list: readonly T[], holds: (item: T) => boolean): number {
	for (let i = list.length - 1; i >= 0; i--) if (holds(list[i])) return i;
	return -1;
}
