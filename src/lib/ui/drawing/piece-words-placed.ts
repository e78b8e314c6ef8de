import { movePath, pathLength, pointAt, tangentAt } from './engine.ts';
import type { Box, Path, Point } from './engine.ts';
import { boxAround, filled, grown, textWidth, type Clearance } from './clearance.ts';
import { isInside } from './is-inside.ts';
import type { DrawnPiece } from './piece-scene.ts';
import { cutWords } from './piece-words.ts';
import type { PieceScene, Word } from './scene.ts';
import { outOf, plus, times, turnsOver } from './vectors.ts';

/** Sizes of words in a drawing that may be scaled, px; lines of a name stand 16 px apart. */
export const wordSize = 13.5;
const lineHeight = 16;
/** “turn here” is left out where it would lie on more than a few dots. */
const turnWithin = 150;
/** Where a name is looked for, px apart. */
const step = 6;

/** The piece with its words: its name and how many are cut, “grain” along the grain line, “turn here” at a turned edge. */
export function withWords(drawn: DrawnPiece, clear: Clearance): PieceScene {
	const { scene } = drawn;
	const name = nameWords(drawn, clear);
	const grainWord = grainWordOf(drawn, clear);
	return {
		...scene,
		words: [...name, ...turnWords(drawn, clear)],
		...(scene.grain && { grain: { ...scene.grain, ...(grainWord && { word: grainWord }) } })
	};
}

/** The name on one line where there is room, else a word to a line; as near the upper middle of the cloth as is clear. */
function nameWords({ placed, outline }: DrawnPiece, clear: Clearance): readonly Word[] {
	const { piece } = placed;
	const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
	const whole = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
	const box = placed.window ? sharedBox(whole, grown(placed.window, -4)) : whole;
	const wished: Point = [(box.left + box.right) / 2, box.top + 0.36 * (box.bottom - box.top)];
	const note = cutWords(piece);
	let best: { readonly cost: number; readonly at: Point; readonly lines: readonly string[] } | undefined;
	for (const lines of namesOnLines(piece.name)) {
		const width = Math.max(...lines.map((line) => textWidth(line, wordSize, true)), textWidth(note, wordSize, false));
		const height = (lines.length + 1) * lineHeight;
		for (const { at, away } of placesNear(wished, box, width, height)) {
			const least = away + (lines.length - 1) * 40;
			// The rest are farther off still.
			if (best && least >= best.cost) break;
			const room = boxAround(at, width, height);
			if (!cornersInside(room, outline)) continue;
			const cost = least + clear.under(grown(room, 3)) * 60;
			if (!best || cost < best.cost) best = { cost, at, lines };
		}
	}
	const { at, lines } = best ?? { at: wished, lines: [piece.name] };
	const height = (lines.length + 1) * lineHeight;
	const first = at[1] - height / 2 + 12.5;
	const width = Math.max(...lines.map((line) => textWidth(line, wordSize, true)));
	clear.take(filled(boxAround(at, width, height)), 1);
	return [...lines, note].map((text, i) => ({
		text,
		at: [at[0], first + i * lineHeight],
		kind: i < lines.length ? 'name' : 'note',
		anchor: 'middle'
	}));
}

const sharedBox = (a: Box, b: Box): Box => ({
	left: Math.max(a.left, b.left),
	top: Math.max(a.top, b.top),
	right: Math.min(a.right, b.right),
	bottom: Math.min(a.bottom, b.bottom)
});

/** Middles of a box that stays within another, `step` px apart, the nearest to a point first. */
function placesNear(wished: Point, box: Box, width: number, height: number): { at: Point; away: number }[] {
	const places: { at: Point; away: number }[] = [];
	for (let y = box.top + height / 2; y <= box.bottom - height / 2; y += step) {
		for (let x = box.left + width / 2; x <= box.right - width / 2; x += step) {
			places.push({ at: [x, y], away: Math.abs(x - wished[0]) * 0.8 + Math.abs(y - wished[1]) });
		}
	}
	return places.sort((a, b) => a.away - b.away);
}

/** “Side back” on one line, or on two; “Under-arm” may part at its hyphen. */
function namesOnLines(name: string): readonly (readonly string[])[] {
	const parts = name.split(/(?<=-)|\s+/).filter((part) => part !== '');
	return parts.length > 1 ? [[name], parts] : [[name]];
}

function cornersInside({ left, right, top, bottom }: Box, outline: readonly Point[]): boolean {
	return (
		isInside([left, top], outline) &&
		isInside([right, top], outline) &&
		isInside([left, bottom], outline) &&
		isInside([right, bottom], outline)
	);
}

/** Beside the grain line, along it, clear of everything if it can be. */
function grainWordOf({ outline, grain }: DrawnPiece, clear: Clearance): Word | undefined {
	if (!grain) return undefined;
	const [from, to] = grain;
	const upright = Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]);
	const wide = textWidth('grain', wordSize, false);
	let best: { readonly cost: number; readonly at: Point } | undefined;
	for (const share of [0.5, 0.35, 0.65, 0.25, 0.75]) {
		for (const side of [-1, 1]) {
			const on: Point = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
			const middle: Point = upright ? [on[0] + side * 10, on[1]] : [on[0], on[1] + side * 10];
			const box = upright ? boxAround(middle, 11, wide) : boxAround(middle, wide, 11);
			const outside = cornersInside(box, outline) ? 0 : 500;
			const cost = clear.under(grown(box, 3)) * 30 + outside + (side === 1 ? 4 : 0) + Math.abs(share - 0.5) * 20;
			if (!best || cost < best.cost) best = { cost, at: middle };
		}
	}
	if (!best) return undefined;
	clear.take(filled(upright ? boxAround(best.at, 11, wide) : boxAround(best.at, wide, 11)), 1);
	const at: Point = upright ? [best.at[0] + 4.5, best.at[1]] : [best.at[0], best.at[1] + 4.5];
	return { text: 'grain', at, kind: 'grain', anchor: 'middle', upright };
}

/** A turned edge is firm and says so, where the words have room just inside it. */
function turnWords({ placed, outline }: DrawnPiece, clear: Clearance): readonly Word[] {
	const { piece, motion } = placed;
	const wide = textWidth('turn here', wordSize, false);
	return piece.edges.flatMap((edge): Word[] => {
		if (!edge.turn || edge.kind === 'fold') return [];
		const path = movePath(motion, edge.path);
		const length = pathLength(path);
		if (length < wide + 30) return [];
		let best: { readonly cost: number; readonly at: Point; readonly upright: boolean } | undefined;
		for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
			const { at, upright } = beside(path, share * length, turnsOver(motion));
			const box = upright ? boxAround(at, 11, wide) : boxAround(at, wide, 11);
			const outside = cornersInside(box, outline) ? 0 : 400;
			const cost = clear.under(box) * 30 + outside + Math.abs(share - 0.5) * 20;
			if (!best || cost < best.cost) best = { cost, at, upright };
		}
		if (!best || best.cost > turnWithin) return [];
		const { at, upright } = best;
		clear.take(filled(upright ? boxAround(at, 11, wide) : boxAround(at, wide, 11)), 1);
		const base: Point = upright ? [at[0] + 4.5, at[1]] : [at[0], at[1] + 4.5];
		return [{ text: 'turn here', at: base, kind: 'grain', anchor: 'middle', upright }];
	});
}

/** The middle of a word just inside a line. */
function beside(path: Path, s: number, over: boolean): { readonly at: Point; readonly upright: boolean } {
	const along = tangentAt(path, s);
	const inwards = times(outOf(along, over), -1);
	const upright = Math.abs(along[1]) > Math.abs(along[0]);
	return { at: plus(pointAt(path, s), times(inwards, 13)), upright };
}
