import type { Point } from '../../geometry/types.ts';
import type { Dart, DartWidth, Edge, FoldDart, Level, Mark, Notch, Pleat } from '../types.ts';
import { joined } from '../../geometry/accuracy.ts';
import { pathLength, pointAt } from '../../geometry/path.ts';
import { cross, distance, subtract } from '../../geometry/point.ts';
import { readableName } from '../readable-name.ts';
import type { ReadEdges } from './read-edges.ts';
import { inMillimetres, type Report } from './report.ts';
import type { PieceFile } from './schema.ts';
import type { Shape } from './shape.ts';

/** What lies on the edges of a piece and inside it. */
export interface Features {
	readonly darts: readonly Dart[];
	readonly foldDarts: readonly FoldDart[];
	readonly notches: readonly Notch[];
	readonly levels: readonly Level[];
	readonly marks: readonly Mark[];
	readonly pleats: readonly Pleat[];
}

export interface EdgesAtHand {
	readonly read: ReadEdges;
	/** Ids of all edges that the file has, also of those that could not be read. */
	readonly ids: ReadonlySet<string>;
}

/** The features of a piece, each held against the edge that it is on. Places on an edge may be off its ends by `joined`. */
export function readFeatures(
	piece: PieceFile,
	at: string,
	shape: Shape,
	edges: EdgesAtHand,
	takenIds: ReadonlySet<string>,
	report: Report
): Features {
	const darts = shape.soundIn(piece.darts, `${at}.darts`).map(({ value: file, at: place }): Dart => {
		const edge = edgeFor(file.edge, place, edges, report);
		if (edge?.kind === 'fold')
			report(`${place}.edge`, `A dart cannot open on a fold: half of it would be on the other side.`);
		if (edge && checkSpan(edge, file.from, file.to, place, report)) checkPoint(edge, file, place, edges, report);
		checkWidths(file.widths ?? [], place, report);
		return {
			id: file.id,
			name: file.name ?? readableName(file.id),
			edge: file.edge,
			from: file.from,
			to: file.to,
			point: file.point,
			widths: file.widths ?? [],
			...(file.press && { press: file.press })
		};
	});
	const foldDarts = shape.soundIn(piece.foldDarts, `${at}.foldDarts`).map(({ value: file, at: place }): FoldDart => {
		if (!(distance(file.ends[0], file.ends[1]) > joined))
			report(`${place}.ends`, 'The two ends of a fold dart should lie apart.');
		if (!(file.widest.at > 0 && file.widest.at < 1)) {
			report(`${place}.widest.at`, 'A fold dart is widest between its ends: a fraction above 0 and below 1.');
		}
		if (!(file.widest.intake > 0)) report(`${place}.widest.intake`, 'The intake of a fold dart should be more than 0.');
		checkWidths(file.widths ?? [], place, report);
		return {
			id: file.id,
			name: file.name ?? readableName(file.id),
			ends: file.ends,
			widest: file.widest,
			widths: file.widths ?? []
		};
	});
	const pleatIds = new Set(takenIds);
	const pleats = shape.soundIn(piece.pleats, `${at}.pleats`).map(({ value: file, at: place }): Pleat => {
		const edge = edgeFor(file.edge, place, edges, report);
		if (
			edge &&
			checkSpan(edge, file.from, file.to, place, report) &&
			!(file.turned > 0 && file.turned < file.to - file.from)
		) {
			const room = inMillimetres(file.to - file.from);
			report(
				`${place}.turned`,
				`The cloth turned in a pleat is more than 0 and less than the ${room} it is laid from.`
			);
		}
		if (file.stitchedDown !== undefined && file.stitchedDown < 0) {
			report(`${place}.stitchedDown`, 'A pleat is stitched down for a length of 0 or more.');
		}
		return {
			id: file.id ?? freeId('pleat', pleatIds),
			edge: file.edge,
			from: file.from,
			to: file.to,
			turned: file.turned,
			...(file.stitchedDown !== undefined && { stitchedDown: file.stitchedDown })
		};
	});
	checkOverlaps(piece, at, shape, report);
	return {
		darts,
		foldDarts,
		pleats,
		notches: shape.soundIn(piece.notches, `${at}.notches`).map(({ value: file, at: place }): Notch => {
			const edge = edgeFor(file.edge, place, edges, report);
			if (edge && !isOn(edge, file.at)) report(`${place}.at`, offEdge(edge, file.at));
			return { id: file.id, edge: file.edge, at: file.at, ...(file.mate !== undefined && { mate: file.mate }) };
		}),
		levels: readLevels(piece, at, shape, edges, report),
		marks: shape.soundIn(piece.marks, `${at}.marks`).map(({ value: { id, kind, at: point, to }, at: place }): Mark => {
			if (to === undefined) return { id, kind, at: point };
			if (kind !== 'buttonhole') report(`${place}.to`, 'Only a buttonhole has a second end.');
			if (!(distance(point, to) > joined)) report(`${place}.to`, 'The two ends of a buttonhole should lie apart.');
			return { id, kind, at: point, to };
		})
	};
}

function readLevels(piece: PieceFile, at: string, shape: Shape, edges: EdgesAtHand, report: Report): Level[] {
	const onEdges = new Set<string>();
	const levels: Level[] = [];
	for (const { value: file, at: place } of shape.soundIn(piece.levels, `${at}.levels`)) {
		const { level, line, edge: edgeId } = file;
		if (edgeId !== undefined && line === undefined) {
			const edge = edgeFor(edgeId, place, edges, report);
			if (edge?.kind === 'fold')
				report(`${place}.edge`, 'A balance line runs across a piece: it cannot lie on the fold.');
			const twice = JSON.stringify([level, edgeId]);
			if (onEdges.has(twice)) report(place, `The ${level} line is already on ${edgeId}: say it once.`);
			onEdges.add(twice);
			levels.push({ level, edge: edgeId });
		} else if (line !== undefined && edgeId === undefined) {
			if (line.length < 2) report(`${place}.line`, 'A balance line needs two points or more.');
			for (let i = 1; i < line.length; i++) {
				if (!(distance(line[i - 1], line[i]) > joined))
					report(`${place}.line[${i}]`, 'This point is the one before it again.');
			}
			levels.push({ level, line });
		} else {
			report(place, 'A level is either a "line" of points or an "edge": one of the two.');
		}
	}
	return levels;
}

function edgeFor(id: string, at: string, edges: EdgesAtHand, report: Report): Edge | undefined {
	if (!edges.ids.has(id)) {
		report(`${at}.edge`, `There is no edge "${id}" on this piece. It has ${[...edges.ids].join(', ') || 'none'}.`);
	}
	return edges.read.byId.get(id);
}

function isOn(edge: Edge, s: number): boolean {
	return s >= -joined && s <= pathLength(edge.path) + joined;
}

function offEdge(edge: Edge, s: number): string {
	return `${inMillimetres(s)} is not on ${edge.id}, which runs from 0 to ${inMillimetres(pathLength(edge.path))}.`;
}

function checkSpan(edge: Edge, from: number, to: number, at: string, report: Report): boolean {
	if (!isOn(edge, from)) report(`${at}.from`, offEdge(edge, from));
	if (!isOn(edge, to)) report(`${at}.to`, offEdge(edge, to));
	if (!(from < to))
		report(`${at}.to`, `"to" should lie beyond "from": ${inMillimetres(to)} is not beyond ${inMillimetres(from)}.`);
	return isOn(edge, from) && isOn(edge, to) && from < to;
}

function checkPoint(
	edge: Edge,
	dart: { readonly from: number; readonly to: number; readonly point: Point },
	at: string,
	edges: EdgesAtHand,
	report: Report
): void {
	const outline = edges.read.outline;
	if (outline === undefined) return;
	const mouthFrom = pointAt(edge.path, dart.from);
	const mouth = subtract(pointAt(edge.path, dart.to), mouthFrom);
	// Positive on the right of the mouth as the edge runs, where the cloth of a clockwise outline is.
	const side = cross(mouth, subtract(dart.point, mouthFrom)) * Math.sign(outline.area);
	if (!(side > 0)) {
		report(
			`${at}.point`,
			`The point lies outside the piece as seen from the mouth on ${edge.id}: it should lie on the cloth's side.`
		);
	}
}

function checkWidths(widths: readonly DartWidth[], at: string, report: Report): void {
	widths.forEach(({ at: fraction, left, right }, i) => {
		const place = `${at}.widths[${i}]`;
		if (!(fraction > 0 && fraction < 1))
			report(`${place}.at`, 'A width lies between mouth and point: a fraction above 0 and below 1.');
		else if (i > 0 && !(fraction > widths[i - 1].at))
			report(`${place}.at`, 'Widths go from the mouth to the point: each fraction above the one before.');
		if (left < 0) report(`${place}.left`, 'A half-width is 0 or more.');
		if (right < 0) report(`${place}.right`, 'A half-width is 0 or more.');
	});
}

/** Mouths of darts and pleats must not lie in one another. */
function checkOverlaps(piece: PieceFile, at: string, shape: Shape, report: Report): void {
	const spans = [...shape.soundIn(piece.darts, `${at}.darts`), ...shape.soundIn(piece.pleats, `${at}.pleats`)].filter(
		({ value }) => value.from < value.to
	);
	spans.sort((one, other) => one.value.from - other.value.from);
	const reached = new Map<string, (typeof spans)[number]>();
	for (const span of spans) {
		const before = reached.get(span.value.edge);
		if (before && span.value.from < before.value.to - joined) {
			report(
				span.at,
				`This overlaps ${before.at}, which reaches ${inMillimetres(before.value.to)} along ${span.value.edge}: mouths must lie apart.`
			);
		}
		if (before === undefined || span.value.to > before.value.to) reached.set(span.value.edge, span);
	}
}

function freeId(stem: string, taken: Set<string>): string {
	let number = 1;
	while (taken.has(`${stem}-${number}`)) number++;
	taken.add(`${stem}-${number}`);
	return `${stem}-${number}`;
}
