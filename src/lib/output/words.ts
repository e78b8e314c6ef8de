import { flatten, pathLength, pointAt, tangentAt } from '../engine/index.ts';
import type { Path, Point } from '../engine/index.ts';
import { shareTaken, withRectangle } from './clear-cloth.ts';
import type { ClearCloth, Rectangle } from './clear-cloth.ts';
import type { Text, Weight } from './primitive.ts';
import { textWidth } from './text-width.ts';

/** A word that belongs to a line, set along it. */
export interface Words {
	readonly text: string;
	/** Sizes of the em in mm, the first that finds room is taken. */
	readonly sizes: readonly number[];
	readonly along: Path;
	/** Shares of the way along the line where it may stand, the best first. */
	readonly shares: readonly number[];
}

/** The box of a line of text, in ems: from its descenders to its ascenders, and where the baseline lies below its middle. */
export const lineBox = { height: 0.96, baseline: 0.26 } as const;

/** Room before and after a word, and from the line to the words, mm. */
const beforeAndAfter = 1;
const beside = 2.2;

/** From this slope on, in degrees, words read upwards. */
const steep = 70;

export interface SetWords {
	readonly text: Text;
	/** The cloth with their place taken. */
	readonly cloth: ClearCloth;
	/** They lie on nothing. */
	readonly clear: boolean;
}

/**
 * The words beside their line where they lie on nothing, first above it (to the left of an upright one), then below. If no
 * place is clear they stand where the least is under them: a name that lies on a line is still better than none.
 */
export function setAlong(words: Words, cloth: ClearCloth): SetWords {
	const spots = words.sizes.flatMap((size) => words.shares.flatMap((share) => bothSides(words, size, share)));
	const { size, box } = clearest(spots, cloth);
	const text = centredText(words.text, size, 'regular', box.middle, box.turn);
	return { text, cloth: withRectangle(cloth, box), clear: shareTaken(cloth, box) === 0 };
}

/** The first spot that is all clear, or else the one that is most so. */
function clearest<Spot extends { readonly box: Rectangle }>(spots: readonly Spot[], cloth: ClearCloth): Spot {
	let best = spots[0];
	let least = Infinity;
	for (const spot of spots) {
		const taken = shareTaken(cloth, spot.box);
		if (taken < least) [best, least] = [spot, taken];
		if (least === 0) break;
	}
	return best;
}

function bothSides({ text, along }: Words, size: number, share: number): { size: number; box: Rectangle }[] {
	const s = share * pathLength(along);
	const at = pointAt(along, s);
	const turn = readable(tangentAt(along, s));
	const radians = (turn * Math.PI) / 180;
	const up: Point = [Math.sin(radians), -Math.cos(radians)];
	const away = beside + (lineBox.height * size) / 2;
	return [away, -away].map((offset) => ({
		size,
		box: {
			middle: [at[0] + up[0] * offset, at[1] + up[1] * offset],
			width: textWidth(text, size, 'regular') + 2 * beforeAndAfter,
			height: lineBox.height * size,
			turn
		}
	}));
}

/** Degrees clockwise of a direction, turned so that words along it are never upside down; steep ones read from below. */
function readable([x, y]: Point): number {
	const degrees = (Math.atan2(y, x) * 180) / Math.PI;
	if (degrees > steep) return degrees - 180;
	return degrees <= steep - 180 ? degrees + 180 : degrees;
}

/** A line of text whose box has its middle at a point. */
export function centredText(text: string, size: number, weight: Weight, middle: Point, turn = 0): Text {
	const radians = (turn * Math.PI) / 180;
	const below = lineBox.baseline * size;
	return {
		kind: 'text',
		text,
		at: [middle[0] - Math.sin(radians) * below, middle[1] + Math.cos(radians) * below],
		anchor: 'middle',
		size,
		weight,
		turn
	};
}

/** Words right of, left of, above or below a point, or off at a corner, wherever that is clear first. */
export function setBeside(
	text: string,
	size: number,
	point: Point,
	away: number,
	cloth: ClearCloth
): { readonly text: Text; readonly cloth: ClearCloth } {
	const width = textWidth(text, size, 'regular') + 2 * beforeAndAfter;
	const height = lineBox.height * size;
	const spots = [0, 2, 5, 9].flatMap((farther) => {
		const across = away + farther + width / 2;
		const down = away + farther + height / 2;
		return [
			[across, 0],
			[-across, 0],
			[across, -down],
			[across, down],
			[-across, -down],
			[-across, down],
			[0, -down],
			[0, down]
		].map(([dx, dy]) => ({ box: { middle: [point[0] + dx, point[1] + dy] as Point, width, height, turn: 0 } }));
	});
	const { box } = clearest(spots, cloth);
	return { text: centredText(text, size, 'regular', box.middle), cloth: withRectangle(cloth, box) };
}

/** A path as the polyline that words keep clear of. */
export function asLine(path: Path): readonly Point[] {
	return flatten(path, 0.2);
}
