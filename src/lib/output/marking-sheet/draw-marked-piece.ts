import { dartLegs, foldDartLegs, movePath, outlineOf } from '../../engine/index.ts';
import type { Path, Point } from '../../engine/index.ts';
import { drawAfter, drawBand, drawBefore, drawDartHatch, shortOfEnd, stretchesOff } from '../marks/change.ts';
import { cutStretches } from '../marks/cutting-line.ts';
import { drawDart, drawFoldDart } from '../marks/dart.ts';
import { drawGrain } from '../marks/grain.ts';
import { drawLevels } from '../marks/level.ts';
import { drawNotch } from '../marks/notch.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { ownPath, ring } from '../plane.ts';
import type { Group, Primitive } from '../primitive.ts';
import { asLine } from '../words.ts';
import type { Words } from '../words.ts';
import type { MarkedPiece } from './marked-pieces.ts';

/** On the paper, mm: the rings at the points of darts that stay and of new ones, and the size of other marks, as a share of true. */
const newRing = 1.1;
const markShare = 0.55;

export interface DrawnPiece {
	readonly group: Group;
	/** All its lines, for the words to keep clear of. */
	readonly lines: readonly (readonly Point[])[];
	/** The stitching line after, on the page. */
	readonly stitching: Path;
	/** The word that goes along the grain. */
	readonly grain: readonly Words[];
}

/**
 * A piece small: its cutting line, balance lines, grain and notches, the lines that stay, and where something changed the line
 * before, the line after and what lies between.
 */
export function drawMarkedPiece(marked: MarkedPiece, changed: ReadonlySet<string>, scale: number): DrawnPiece {
	const { before, after, cutBefore, cutAfter, motion, turnedOver } = marked;
	const move = (path: Path) => movePath(motion, path);
	const folds = after.edges.filter(({ kind }) => kind === 'fold').map(({ path }) => move(path));
	const cutting = cutStretches(move(ownPath(cutBefore.outline)), folds);
	const edges = after.edges.flatMap((edge): Primitive[] => {
		const path = move(edge.path);
		const was = before.edges.find(({ id }) => id === edge.id);
		if (was && changed.has(edge.id)) {
			const old = move(was.path);
			const parts = [
				...drawBand(old, path, turnedOver),
				...stretchesOff(old, path).flatMap((stretch) => (stretch.off ? drawBefore(stretch.path) : [])),
				...stretchesOff(path, old).flatMap((stretch) =>
					stretch.off ? drawAfter(stretch.path) : [{ kind: 'line' as const, path: stretch.path, pen: pens.stitching }]
				)
			];
			return [{ kind: 'group', id: nameId('edge', after.id, edge.id), parts }];
		}
		return [{ kind: 'line', path, pen: edge.kind === 'fold' ? pens.fold : pens.stitching }];
	});
	const grain = drawGrain(after, move, scale * markShare);
	const marks = [
		drawLevels(after, move),
		grain,
		...cutAfter.notches.map((notch) => drawNotch(after, notch, move, scale * markShare))
	];
	const darts = [
		...after.darts.map((dart) => {
			const { from, to } = dartLegs(after, dart);
			return changed.has(dart.id)
				? newDart(move(from), move(to), [dart.point], move, scale)
				: drawDart(after, dart, move, scale * markShare).parts;
		}),
		...after.foldDarts.map((dart) => {
			const { left, right } = foldDartLegs(dart);
			return changed.has(dart.id)
				? newDart(move(left), move(right), dart.ends, move, scale)
				: drawFoldDart(after, dart, move, scale * markShare).parts;
		}),
		...before.darts
			.filter(({ id }) => changed.has(id))
			.map((dart) => {
				const { from, to } = dartLegs(before, dart);
				return [...drawBefore(move(from)), ...drawBefore(move(to))];
			})
	].flat();
	const parts: Primitive[] = [
		...marks.flatMap((drawn) => drawn.parts),
		...darts,
		...cutting.map(({ path, closed }): Primitive => ({ kind: 'line', path, closed, pen: pens.cutting })),
		...edges
	];
	return {
		group: { kind: 'group', id: nameId('piece', after.id), parts },
		lines: linesOf(parts),
		stitching: move(outlineOf(after)),
		grain: grain.words
	};
}

function linesOf(parts: readonly Primitive[]): (readonly Point[])[] {
	return parts.flatMap((part) =>
		part.kind === 'group' ? linesOf(part.parts) : 'path' in part ? [asLine(part.path)] : []
	);
}

function newDart(
	one: Path,
	other: Path,
	points: readonly Point[],
	move: (path: Path) => Path,
	scale: number
): Primitive[] {
	const legs = [one, other].map((leg) => shortOfEnd(leg, newRing));
	return [
		...drawDartHatch(one, other),
		...legs.flatMap(drawAfter),
		...points.flatMap((point): Primitive[] => {
			const path = move(ring(point, newRing * scale));
			return [
				{ kind: 'tone', path, black: 0 },
				{ kind: 'line', path, closed: true, pen: pens.newAwl }
			];
		})
	];
}
