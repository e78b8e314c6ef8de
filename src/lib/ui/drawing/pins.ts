import { movePoint, nearestOn, pathLength, pointAt, tangentAt, undividedName } from './engine.ts';
import type { Box, Path, Point } from './engine.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { boxAround, filled, grown, textWidth } from './clearance.ts';
import type { Clearance } from './clearance.ts';
import { dartMiddle } from './darts.ts';
import { strokesText } from './path-text.ts';
import type { DrawnPiece } from './piece-scene.ts';
import type { PinOnDrawing, PinScene } from './scene.ts';
import { between, distance, minus, outOf, plus, times, turned, turnsOver, unit } from './vectors.ts';

export interface PinRoom {
	readonly clear: Clearance;
	readonly width: number;
	readonly height: number;
	readonly unit: Unit;
	/** Small heads without words: the lists beside the drawing say them. */
	readonly thin: boolean;
}

/** Where a pin can go through: a point of the line, and the way out of the cloth there. */
interface Through {
	readonly at: Point;
	readonly out: Point;
	/** Farther from the place asked for is worse. */
	readonly cost: number;
	readonly width: number;
	readonly from: Point;
}

const radius = 11.5;
const thinRadius = 7.5;
const labelSize = 13.5;
/** A band under this, px, gets an arrow in the way of its move. */
const narrow = 7;
/** Under this, px, nothing is seen to have moved. */
const still = 0.3;

/**
 * The pins of a drawing, each through every line of its feature that lies on the table, as near to the place asked for as
 * leaves its head and its words clear of lines and of each other.
 */
export function placePins(
	pins: readonly PinOnDrawing[],
	pieces: readonly DrawnPiece[],
	room: PinRoom
): readonly PinScene[] {
	return pins.flatMap((pin) =>
		pieces.flatMap((piece) => {
			const through = throughs(pin, piece);
			return through.length > 0 ? [placed(pin, through, room)] : [];
		})
	);
}

/** Every place that is near enough, none if the feature is not of this piece. */
function throughs(pin: PinOnDrawing, { placed, edges, darts }: DrawnPiece): readonly Through[] {
	const over = turnsOver(placed.motion);
	const edge =
		[...edges].find(([name]) => name === pin.feature) ??
		[...edges].find(([name]) => undividedName(name) === undividedName(pin.feature));
	if (edge) return throughEdge(edge[1].before, edge[1].after, placed.motion, pin.s, over);
	const dart = darts.find(({ id }) => undividedName(`${placed.piece.id}/${id}`) === undividedName(pin.feature));
	const mark = placed.piece.marks.find(
		({ id }) => undividedName(`${placed.piece.id}/${id}`) === undividedName(pin.feature)
	);
	if (!dart && !mark) return [];
	const at = dart ? dartMiddle(dart) : movePoint(placed.motion, mark!.at);
	const along: Point = dart ? unit(minus(dart.fold[1], dart.fold[0])) : [0, 1];
	return [turned(along, Math.PI / 2), turned(along, -Math.PI / 2)].map((out) => ({
		at,
		from: at,
		out,
		cost: 0,
		width: Infinity
	}));
}

function throughEdge(
	before: Path,
	after: Path,
	motion: readonly number[],
	s: number | undefined,
	over: boolean
): readonly Through[] {
	const length = pathLength(before);
	const scale = Math.hypot(motion[0], motion[1]);
	// Clear of the corners, however short the edge: there is always one place at the least.
	const corner = Math.min(8, length / 2);
	const wished = Math.min(length - corner, Math.max(corner, s === undefined ? length / 2 : s * scale));
	return [0, -18, 18, -36, 36, -60, 60, -90, 90].flatMap((away): Through[] => {
		const place = wished + away;
		if (place < corner || place > length - corner) return [];
		const from = pointAt(before, place);
		const { point, s: on } = nearestOn(after, from, 1e-3);
		const out = outOf(tangentAt(after, on), over);
		return [{ at: point, from, out, cost: Math.abs(away) * 0.55, width: distance(from, point) }];
	});
}

interface Candidate {
	readonly through: Through;
	readonly head: Point;
	readonly direction: Point;
	readonly label: {
		readonly at: Point;
		readonly anchor: PinScene['labelAnchor'];
		readonly box: Box;
		/** Words under the head are read best. */
		readonly cost: number;
	};
}

function placed(pin: PinOnDrawing, through: readonly Through[], room: PinRoom): PinScene {
	const r = room.thin ? thinRadius : radius;
	const label = room.thin ? '' : pinLabel(pin, room.unit);
	let best: { readonly cost: number; readonly candidate: Candidate } | undefined;
	for (const place of through) {
		// Whatever else there is to it can only make it worse.
		if (best && place.cost >= best.cost) continue;
		for (const candidate of candidates(place, label, r, room.thin)) {
			const cost = costOf(candidate, r, room, best?.cost ?? Infinity);
			if (!best || cost < best.cost) best = { cost, candidate };
		}
	}
	const { through: place, head, direction, label: words } = best!.candidate;
	room.clear.take(filled(boxAround(head, 2 * r, 2 * r)), 8);
	if (label) room.clear.take(filled(words.box), 8);
	const arrow = room.thin || !wantsArrow(place.width) ? undefined : moveArrow(place, pin.way, room.clear);
	return {
		number: pin.number,
		feature: pin.feature,
		way: pin.way,
		at: place.at,
		shaft: room.thin ? '' : shaftThrough(place.at, head, direction, r),
		head,
		radius: r,
		label,
		labelAt: words.at,
		labelAnchor: words.anchor,
		...(arrow && { arrow })
	};
}

/** Whether a move is so wide, px, that an arrow has to say its way. */
export const wantsArrow = (width: number): boolean => width < narrow && width >= still;

/** “in 1/4”. */
export const pinLabel = ({ word, amount }: PinOnDrawing, unit: Unit): string =>
	[word, amount !== undefined && amountOf(amount, unit)].filter(Boolean).join(' ');

const amountOf = (mm: number, unit: Unit) =>
	formatLength(mm, unit, { denominator: 16, sign: 'never', mark: unit === 'cm' }).text;

/** Heads out of the cloth at several slants (thin: on the line itself), each with its words to the four sides. */
function* candidates(place: Through, label: string, r: number, thin: boolean): Generator<Candidate> {
	const width = textWidth(label, labelSize, true);
	for (const [angle, reach, cost] of thin ? [[0, 0, 0] as const] : slants) {
		const direction = turned(place.out, angle);
		const head = plus(place.at, times(direction, reach));
		const through = cost === 0 ? place : { ...place, cost: place.cost + cost };
		for (const side of ['right', 'left', 'below', 'above'] as const) {
			yield { through, head, direction, label: labelBeside(head, r, width, side) };
		}
	}
}

/** Out of the cloth; into it only where there is no table left beside it. */
const slants: readonly (readonly [angle: number, reach: number, cost: number])[] = [
	...[0.45, -0.45, 0.8, -0.8, 0.1].flatMap((angle) => [30, 40, 54].map((reach) => [angle, reach, 0] as const)),
	...[0.45, -0.45].map((angle) => [Math.PI + angle, 36, 400] as const)
];

function labelBeside(
	[x, y]: Point,
	r: number,
	width: number,
	side: 'right' | 'left' | 'below' | 'above'
): Candidate['label'] {
	const away = r + 5;
	switch (side) {
		case 'below':
			return { at: [x, y + r + 14], anchor: 'middle', box: boxAround([x, y + r + 9], width, 13), cost: 0 };
		case 'right':
			return { at: [x + away, y + 5], anchor: 'start', box: boxAround([x + away + width / 2, y], width, 13), cost: 3 };
		case 'left':
			return { at: [x - away, y + 5], anchor: 'end', box: boxAround([x - away - width / 2, y], width, 13), cost: 3 };
		case 'above':
			return { at: [x, y - away], anchor: 'middle', box: boxAround([x, y - r - 10], width, 13), cost: 9 };
	}
}

/** How bad a place would be; no more than as bad as `most` where it is worse than that. */
function costOf(
	{ through, head, label }: Candidate,
	r: number,
	{ clear, width, height, thin }: PinRoom,
	most: number
): number {
	const round = boxAround(head, 2 * r, 2 * r);
	const words = thin ? round : grown(label.box, 3);
	const off = (box: Box) => box.left < 2 || box.top < 2 || box.right > width - 2 || box.bottom > height - 2;
	const outside = off(round) || off(words) ? 2000 : 0;
	if (thin) return through.cost + outside + clear.under(round);
	// A head stands best a little above the place that it pins.
	const fallen = Math.max(0, head[1] - through.at[1]) * 0.3;
	const shaft = [0.2, 0.4, 0.6, 0.8].filter((t) => within(words, between(through.at, head, t))).length * 25;
	const least = through.cost + outside + fallen + shaft + label.cost;
	// What lies under it can only make it worse, and is the slowest to ask.
	return least >= most ? least : least + clear.under(grown(round, -1)) * 6 + clear.under(words) * 9;
}

const within = ({ left, top, right, bottom }: Box, [x, y]: Point): boolean =>
	x > left && x < right && y > top && y < bottom;

/** Over from inside the cloth, under the line, over again to the head. */
export function shaftThrough(at: Point, head: Point, direction: Point, r: number): string {
	const tail = minus(at, times(direction, 11));
	const out = plus(at, times(direction, 5));
	return strokesText([
		[tail, minus(at, times(direction, 0.5))],
		[out, minus(head, times(direction, r))]
	]);
}

/** From beside the line before, toward the line after, on the clearer side of the pin; px. */
export function moveArrow(
	{ from, out }: Pick<Through, 'from' | 'out'>,
	way: PinScene['way'],
	clear: Clearance
): string {
	const along: Point = [-out[1], out[0]];
	const ahead = way === 'in' ? times(out, -1) : out;
	const places = [14, -14].map((aside) => {
		const base = plus(from, plus(times(ahead, -16), times(along, aside)));
		return {
			base,
			tip: plus(base, times(ahead, 11)),
			cost: clear.under(boxAround(plus(base, times(ahead, 5)), 13, 13))
		};
	});
	const { base, tip } = places[0].cost <= places[1].cost ? places[0] : places[1];
	const barb = (side: 1 | -1) => plus(minus(tip, times(ahead, 4.5)), times(along, 3.2 * side));
	return strokesText([
		[base, tip],
		[barb(1), tip],
		[barb(-1), tip]
	]);
}
