import { dartLegs, findDart, findFoldDart, movePath, movePoint, undividedName } from '../../engine/index.ts';
import type { Box, Draft, Point } from '../../engine/index.ts';
import { shareTaken, withRectangle } from '../clear-cloth.ts';
import type { ClearCloth, Rectangle } from '../clear-cloth.ts';
import { pens } from '../pens.ts';
import { crossesBox } from '../polygon.ts';
import { besideEdge, ring, stepped, through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { textWidth } from '../text-width.ts';
import { centredText, lineBox } from '../words.ts';
import type { MarkedPiece } from './marked-pieces.ts';
import type { MarkingTable } from './marking-tables.ts';

/** On the paper, mm: letters of places, heads of pins and the number in them, the word beside them. */
const letterSize = 3;
const head = 2.6;
const numberSize = 3.6;
const wordSize = 3.4;

export interface Callouts {
	readonly parts: readonly Primitive[];
	/** The paper with their places taken. */
	readonly paper: ClearCloth;
}

/** Letters at the places that are measured, and a numbered pin with its word on each line that an alteration moved. */
export function drawCallouts(
	tables: readonly MarkingTable[],
	pieces: readonly MarkedPiece[],
	after: Draft,
	scale: number,
	paper: ClearCloth
): Callouts {
	const parts: Primitive[] = [];
	let free = paper;
	const boxes: Rectangle[] = [];
	const put = (found: { readonly parts: readonly Primitive[]; readonly box: Rectangle }) => {
		parts.push(...found.parts);
		free = withRectangle(free, found.box);
		boxes.push(found.box);
	};
	for (const { rows } of tables) {
		for (const { letter, places } of rows) {
			if (letter === undefined) continue;
			for (const { edge, s } of places) {
				for (const piece of piecesWith(pieces, edge)) put(letterAt(letter, placeOn(piece, edge, s, scale), free));
			}
		}
	}
	for (const table of tables) {
		for (const number of table.numbers.slice(0, 1)) {
			const most = table.rows.find((row) => row.most && row.places.length > 0);
			const word =
				most?.cells[2]?.split(' ')[0] ?? (table.features.length > 0 ? table.said.split(': ').at(-1) : '') ?? '';
			const said = word.replace(/\.$/, '');
			for (const { edge, s } of most?.places ?? []) {
				for (const piece of piecesWith(pieces, edge))
					put(pinAt(number, said, placeOn(piece, edge, s, scale), free, boxes));
			}
			if (!most) for (const place of dartPlaces(table, pieces, after)) put(pinAt(number, said, place, free, boxes));
		}
	}
	return { parts, paper: free };
}

interface CalloutPlace {
	/** On the line, on the page. */
	readonly at: Point;
	/** Unit directions on the page: away from the cloth, and along the line. */
	readonly out: Point;
	readonly along: Point;
	/** mm of allowance on the page. */
	readonly allowance: number;
}

function piecesWith(pieces: readonly MarkedPiece[], edge: string): MarkedPiece[] {
	const [id] = edge.split('/');
	return pieces.filter(({ before }) => before.id === id);
}

function placeOn({ before, cutBefore, motion }: MarkedPiece, name: string, s: number, scale: number): CalloutPlace {
	const edge = before.edges.find(({ id }) => `${before.id}/${id}` === name);
	if (!edge) throw new Error(`${name} is not on the draft before`);
	const at = movePoint(motion, besideEdge(edge.path, s, 0));
	const beyond = movePoint(motion, besideEdge(edge.path, s, scale));
	const out: Point = [beyond[0] - at[0], beyond[1] - at[1]];
	const allowance = (cutBefore.edges.find((cut) => cut.edge === name)?.allowance ?? 0) / scale;
	return { at, out, along: [-out[1], out[0]], allowance };
}

/** The middle of a dart, for a pin with nothing to measure beside it. */
function dartPlaces({ features }: MarkingTable, pieces: readonly MarkedPiece[], after: Draft): CalloutPlace[] {
	return features.flatMap((name) =>
		pieces.flatMap(({ after: piece, before, motion }): CalloutPlace[] => {
			const [id, dartId] = name.split('/');
			if (piece.id !== id && undividedName(piece.id) !== id && before.id !== id) return [];
			const whole = `${piece.id}/${dartId}`;
			const fold = findFoldDart(after, whole)?.foldDart;
			const dart = findDart(after, whole)?.dart;
			const ends = fold?.ends ?? (dart && [dartLegs(piece, dart).foldAt, dart.point]);
			if (!ends) return [];
			const [from, to] = movePath(motion, through(...ends)).flatMap((line) => [line.from, line.to]);
			const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
			const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
			const out: Point = [along[1], -along[0]];
			return [{ at: stepped(from, along, length * 0.6), out, along, allowance: 0 }];
		})
	);
}

function letterAt(
	letter: string,
	{ at, out, along, allowance }: CalloutPlace,
	free: ClearCloth
): { readonly parts: Primitive[]; readonly box: Rectangle } {
	const spots = [allowance + 2.4, allowance / 2, allowance + 3.6].flatMap((away) =>
		[0, 1.5, -1.5, 3, -3].map((aside): Rectangle => ({
			middle: stepped(stepped(at, out, away), along, aside),
			width: textWidth(letter, letterSize, 'bold') + 0.8,
			height: letterSize * 0.8,
			turn: 0
		}))
	);
	const box = clearest(spots, free);
	return { parts: [centredText(letter, letterSize, 'bold', box.middle)], box };
}

/** A pin: over the line, its head with the number where that is clear and the shaft lies on no other callout, its word above. */
function pinAt(
	number: number,
	word: string,
	{ at, out, along, allowance }: CalloutPlace,
	free: ClearCloth,
	others: readonly Rectangle[]
): { readonly parts: Primitive[]; readonly box: Rectangle } {
	const width = Math.max(2 * head, textWidth(word, wordSize, 'bold')) + 1;
	const height = 2 * head + wordSize * lineBox.height;
	const wordAbove = (wordSize * lineBox.height) / 2;
	const headOf = ({ middle: [x, y] }: Rectangle): Point => [x, y + wordAbove];
	const spots = [4, 6, 8, 10, 13, -7, -10].flatMap((away) =>
		[0, -6, 6, -12, 12, -18, 18].map((aside): Rectangle => ({
			middle: stepped(stepped(at, out, (away > 0 ? allowance : 0) + away), along, aside),
			width,
			height,
			turn: 0
		}))
	);
	const overOthers = (spot: Rectangle) =>
		others.some((other) => crossesBox(headOf(spot), at, sidesOf(other))) ? 1 : 0;
	const box = clearest(spots, free, overOthers);
	const middle = headOf(box);
	const reach = Math.hypot(at[0] - middle[0], at[1] - middle[1]);
	const towards: Point = [(at[0] - middle[0]) / reach, (at[1] - middle[1]) / reach];
	return {
		box,
		parts: [
			{ kind: 'line', path: through(stepped(middle, towards, head), stepped(at, towards, 1.5)), pen: pens.mark },
			{ kind: 'tone', path: ring(middle, head), black: 0 },
			{ kind: 'line', path: ring(middle, head), closed: true, pen: pens.awl },
			centredText(String(number), numberSize, 'bold', middle),
			centredText(word, wordSize, 'bold', [middle[0], middle[1] - wordAbove - head])
		]
	};
}

function sidesOf({ middle: [x, y], width, height }: Rectangle): Box {
	return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

function clearest(
	spots: readonly Rectangle[],
	free: ClearCloth,
	besides: (spot: Rectangle) => number = () => 0
): Rectangle {
	const shares = spots.map((spot) => shareTaken(free, spot) + besides(spot));
	return spots[shares.indexOf(Math.min(...shares))];
}
