import { flatten, levelSpan, movePoint, nearestOn, outlineOf, pathLength, pointAt } from './engine.ts';
import type { Box, Motion, Path, Piece, Point } from './engine.ts';
import { linesBefore, type LineBefore } from './answering.ts';
import { bandsBetween } from './bands.ts';
import { centreLine } from './centre-line.ts';
import type { Clearance } from './clearance.ts';
import { fallsShort } from './falls-short.ts';
import { dartScenes, laidDarts, sameDart } from './darts.ts';
import type { LaidDart } from './darts.ts';
import { moved } from './frame.ts';
import { partedLine } from './moved-lines.ts';
import { laidPath, type LaidPath } from './laid-path.ts';
import { pointsText, strokesText } from './path-text.ts';
import { cutWords } from './piece-words.ts';
import { pointMark, type PlacedMark } from './point-marks.ts';
import type { Band, PieceScene } from './scene.ts';
import { foldHooks, grainLine, notchStrokes } from './snips.ts';
import type { Cuts } from './snips.ts';
import { distance, dot, minus, plus, times, turnsOver, unit } from './vectors.ts';

/** A piece in its place on the table. */
export interface PlacedPiece {
	readonly piece: Piece;
	/** What it was before, where old lines are to be shown; laid over it by `beforeMotion`. */
	readonly before?: Piece;
	readonly motion: Motion;
	readonly beforeMotion: Motion;
	/** The line that it was cut on, in its own mm. */
	readonly cut?: Path;
	/** The line that is to be cut on instead, in its own mm. */
	readonly wanted?: Path;
	readonly cuts: ReadonlyMap<string, Cuts>;
	/** Whole names of the edges that chalk is rubbed along. */
	readonly selected: readonly string[];
	readonly thin: boolean;
	/** The part of the drawing that words are to stand in, px; all of it if left out. */
	readonly window?: Box;
}

/** What later steps need of a piece that has been drawn, in px. */
export interface DrawnPiece {
	readonly scene: PieceScene;
	readonly placed: PlacedPiece;
	/** Each edge as it is and as it was, by whole name. */
	readonly edges: ReadonlyMap<string, { readonly after: Path; readonly before: Path }>;
	/** Those that are gone as well. */
	readonly darts: readonly LaidDart[];
	readonly outline: readonly Point[];
	/** The grain line as far as it is drawn. */
	readonly grain?: readonly [Point, Point];
}

/** How much worse than a fine line it is to write over a firm one. */
const weights = { stitching: 3, cutting: 1, fine: 1.5, dots: 1 } as const;
/** A notch reaches this far out, px, or to the cutting line. */
const snip = 9;

/**
 * The lines of one piece in their codes; words and pins are set afterwards, when all lines are there. `clear`: what is drawn so far;
 * its lines are added, so that words and pins keep off them. Absent where none are to be set.
 */
export function drawPiece(placed: PlacedPiece, clear?: Clearance): DrawnPiece {
	const { piece, before, motion, beforeMotion, cut, wanted, thin } = placed;
	const over = turnsOver(motion);
	const outline = laidPath(outlineOf(piece), motion);
	const beforeOutline = before && laidPath(outlineOf(before), beforeMotion);
	const lines = before ? linesBefore(before, piece) : [];
	const pairs = new Map(lines.map(({ edge, path }) => [edge, laidPath(path, beforeMotion)]));
	const cutPath = cut && laidPath(cut, motion);
	const wantedPath = wanted && laidPath(wanted, motion);
	const short = cutPath && wantedPath && fallsShort(cutPath.path, wantedPath.path);
	const flat = flatten(outline.path, 0.3);

	clear?.take([...flat, flat[0]], weights.stitching);
	if (beforeOutline) clear?.take(flatten(beforeOutline.path, 0.3), weights.stitching);
	if (cutPath) clear?.take(flatten(cutPath.path, 0.3), weights.cutting);

	const edges = new Map<string, { after: Path; before: Path }>();
	const bands: Band[] = [];
	const text = { stitching: '', after: '', before: '', folds: '', hooks: '', halo: '', centre: '' };
	for (const edge of piece.edges) {
		const name = `${piece.id}/${edge.id}`;
		const after = laidPath(edge.path, motion);
		const was = pairs.get(edge.id) ?? after;
		edges.set(name, { after: after.path, before: was.path });
		const parted =
			beforeOutline && was.text !== after.text ? partedLine(after.path, beforeOutline.path, was.path) : undefined;
		const whole = parted === undefined ? after.text : parted.kept;
		if (edge.kind === 'fold') text.folds += whole;
		else text.stitching += whole;
		if (edge.kind === 'fold') text.hooks += strokesText(foldHooks(after.path, over));
		if (parted) {
			text.after += parted.moved;
			text.before += partedLine(was.path, outline.path, after.path).moved;
			if (!thin) bands.push(...bandsOf(name, { edge: edge.path, motion, was, after: after.path, over }));
		}
		if (placed.selected.includes(name)) text.halo += after.text;
		if (!thin) text.centre += centreLine(piece, edge, motion);
	}
	text.before += goneEdges(placed, lines, outline.path);

	const darts = laidDarts(piece, motion);
	if (clear)
		for (const dart of darts)
			for (const leg of [dart.one, dart.other]) clear.take(flatten(leg, 0.3), weights.stitching);
	const was = before && laidDarts(before, beforeMotion);
	const grain = piece.grain && !thin ? shownGrain(moved(motion, piece.grain), flat) : undefined;
	if (grain) clear?.take(grain, weights.fine);
	const balance = thin ? [] : spansOf(piece, motion);
	for (const span of balance) clear?.take(span, weights.dots);
	for (const mark of piece.marks) if (!thin) clear?.take([movePoint(motion, mark.at)], 12);

	const cloth = beforeOutline && before !== piece ? [closed(beforeOutline)] : [];
	return {
		placed,
		edges,
		darts: [...darts, ...(was ?? []).filter((old) => !darts.some((dart) => sameDart(dart, old)))],
		outline: flat,
		...(grain && { grain }),
		scene: {
			id: piece.id,
			title: `${piece.name}, ${cutWords(piece)}`,
			...(cutPath && { strip: closed(cutPath) }),
			cloth: [...cloth, closed(outline)],
			balance: balance.map((span) => pointsText(span)).join(''),
			centre: text.centre,
			darts: dartScenes(darts, was),
			halo: text.halo,
			...(grain && { grain: { path: grainLine(grain[0], grain[1]) } }),
			bands,
			before: text.before,
			cutting: cutPath ? closed(cutPath) : '',
			...(wantedPath && { wanted: closed(wantedPath) }),
			...(short && { short }),
			stitching: text.stitching,
			after: text.after,
			folds: text.folds,
			hooks: text.hooks,
			notches: thin ? '' : notchesText(placed, { cut: cutPath?.path, over, clear }),
			marks: thin ? '' : piece.marks.map((mark) => pointMark(laidMark(mark, motion))).join(''),
			words: [],
			...(!thin && { motion }),
			edges: thin
				? []
				: piece.edges.map((edge) => ({
						edge: `${piece.id}/${edge.id}`,
						name: `${piece.name}, ${edge.name}`,
						path: laidPath(edge.path, motion).text
					}))
		}
	};
}

const closed = ({ text }: LaidPath): string => `${text}Z`;

function laidMark({ kind, at, to }: Piece['marks'][number], motion: Motion): PlacedMark {
	return { kind, at: movePoint(motion, at), ...(to && { to: movePoint(motion, to) }) };
}

/** Bands of an edge that has not changed since are not looked for again while another edge of its piece is stepped. */
const known = new WeakMap<Path, { readonly was: string; readonly motion: Motion; readonly bands: readonly Band[] }>();

interface MovedEdge {
	/** As the draft has it, mm. */
	readonly edge: Path;
	readonly motion: Motion;
	/** px. */
	readonly was: LaidPath;
	readonly after: Path;
	readonly over: boolean;
}

function bandsOf(name: string, { edge, motion, was, after, over }: MovedEdge): readonly Band[] {
	const found = known.get(edge);
	if (found && found.was === was.text && found.motion.every((one, i) => one === motion[i])) return found.bands;
	const bands = bandsBetween(name, was.path, after, over);
	known.set(edge, { was: was.text, motion, bands });
	return bands;
}

/** The grain line's share of the piece that is drawn, from its upper (left) end: the rest of it would only be in the way of words. */
const grainShare = 0.42;

function shownGrain([from, to]: readonly Point[], outline: readonly Point[]): readonly [Point, Point] {
	const [start, end] =
		from[1] - to[1] > 1 || (Math.abs(from[1] - to[1]) <= 1 && from[0] > to[0]) ? [to, from] : [from, to];
	const along = unit(minus(end, start));
	const ways = outline.map((point) => dot(point, along));
	const longest = grainShare * (Math.max(...ways) - Math.min(...ways));
	return [start, plus(start, times(along, Math.min(longest, distance(start, end))))];
}

/** Old edges that no edge of the piece answers to any more. */
function goneEdges({ before, beforeMotion }: PlacedPiece, lines: readonly LineBefore[], outline: Path): string {
	if (!before) return '';
	const answered = new Set(lines.map(({ was }) => was));
	return before.edges
		.filter((edge) => !answered.has(edge))
		.map((edge) => partedLine(laidPath(edge.path, beforeMotion).path, outline).moved)
		.join('');
}

/** Where the balance lines lie on the cloth, px. */
export function spansOf(piece: Piece, motion: Motion): readonly (readonly Point[])[] {
	return piece.levels.flatMap((level) => {
		const span = levelSpan(piece, level);
		return span ? [moved(motion, span.points)] : [];
	});
}

interface Beside {
	readonly cut: Path | undefined;
	readonly over: boolean;
	readonly clear: Clearance | undefined;
}

function notchesText({ piece, motion, cuts }: PlacedPiece, { cut, over, clear }: Beside): string {
	return piece.notches
		.map((notch) => {
			const edge = piece.edges.find(({ id }) => id === notch.edge);
			if (!edge) return '';
			const { path } = laidPath(edge.path, motion);
			const scale = pathLength(path) / pathLength(edge.path);
			const s = notch.at * scale;
			const room = cut ? nearestOn(cut, pointAt(path, s), 1e-3).distance : snip;
			const strokes = notchStrokes(path, s, cuts.get(`${piece.id}/${notch.id}`) ?? 1, Math.min(snip, room), over);
			for (const stroke of strokes) clear?.take(stroke, weights.fine);
			return strokesText(strokes);
		})
		.join('');
}
