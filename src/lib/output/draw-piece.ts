import { cutStretches } from './marks/cutting-line.ts';
import { drawCentreLine } from './marks/centre-line.ts';
import { drawDart, drawFoldDart } from './marks/dart.ts';
import { together } from './marks/drawn.ts';
import { drawEdge } from './marks/edge-line.ts';
import { drawGrain } from './marks/grain.ts';
import { drawLevels } from './marks/level.ts';
import { drawMark } from './marks/mark.ts';
import type { DrawnMark } from './marks/mark.ts';
import { drawNotch } from './marks/notch.ts';
import { drawPleat } from './marks/pleat.ts';
import { movePath, outlineOf } from '../engine/index.ts';
import type { Path } from '../engine/index.ts';
import { clearCloth, withLines } from './clear-cloth.ts';
import { drawLabel } from './label.ts';
import { nameId } from './name-id.ts';
import { allowanceTone, pens } from './pens.ts';
import type { Group, Primitive, Text } from './primitive.ts';
import type { PlacedPiece } from './placed-piece.ts';
import { asLine, setAlong, setBeside } from './words.ts';

/** mm that words keep from lines. */
const margin = 1.2;

/**
 * One piece as it is printed: the tone of its allowance, the cloth, balance lines, darts, grain, stitching and cutting lines,
 * notches, and then the words, wherever these lie on none of the others.
 */
export function drawPiece(placed: PlacedPiece, version: string): Group {
	const { piece, cut, motion, box } = placed;
	const move = (path: Path) => movePath(motion, path);
	const outline = asLine(outlineOf(piece));
	const stitching = move(outlineOf(piece));
	const edges = together(
		piece.edges.map((edge) => drawEdge(piece, edge, placed.withAllowance ? cut.fold : undefined, move))
	);
	const inner = together([
		drawLevels(piece, move),
		...piece.edges.map((edge) => drawCentreLine(piece, edge, outline, move)),
		...piece.darts.map((dart) => drawDart(piece, dart, move)),
		...piece.foldDarts.map((dart) => drawFoldDart(piece, dart, move)),
		...piece.pleats.map((pleat) => drawPleat(piece, pleat, move))
	]);
	const grain = drawGrain(piece, move);
	const notches = together(cut.notches.map((notch) => drawNotch(piece, notch, move)));
	const marks = piece.marks.map((mark) => drawMark(piece, mark, motion));
	const drawn = together([edges, inner, grain, notches]);
	const cloth = withLines(
		clearCloth(asLine(stitching)),
		[...drawn.lines, ...marks.flatMap(({ lines }) => lines)],
		margin
	);
	const label = drawLabel(piece, version, asLine(stitching), [(box.left + box.right) / 2, box.bottom], cloth);
	let free = label.cloth;
	const words: Text[] = [];
	for (const { name, at, reach } of firstOfEachName(marks)) {
		const set = setBeside(name, 3.5, at, reach + margin, free);
		free = set.cloth;
		words.push(set.text);
	}
	for (const wanted of [...grain.words, ...edges.words, ...inner.words]) {
		const set = setAlong(wanted, free);
		free = set.cloth;
		words.push(set.text);
	}
	return {
		kind: 'group',
		id: nameId('piece', piece.id),
		parts: [
			...(placed.withAllowance ? [{ kind: 'tone', path: placed.outline, black: allowanceTone } as const] : []),
			{ kind: 'tone', path: stitching, black: 0 },
			...inner.parts,
			...marks.flatMap(({ parts }) => parts),
			...grain.parts,
			...edges.parts,
			...cuttingLines(placed),
			...notches.parts,
			...label.texts,
			...words
		]
	};
}

/** A row of buttons is named at the first. */
function firstOfEachName(marks: readonly DrawnMark[]): readonly DrawnMark[] {
	return marks.filter(({ name }, i) => name !== '' && marks.findIndex((mark) => mark.name === name) === i);
}

function cuttingLines({ piece, motion, outline, withAllowance }: PlacedPiece): Primitive[] {
	if (!withAllowance) return [];
	const folds = piece.edges.filter(({ kind }) => kind === 'fold').map(({ path }) => movePath(motion, path));
	const stretches = cutStretches(outline, folds);
	return stretches.map(({ path, closed }, i) => ({
		kind: 'line',
		id: nameId('cutting', piece.id, ...(stretches.length > 1 ? [String(i + 1)] : [])),
		path,
		closed,
		pen: pens.cutting
	}));
}
