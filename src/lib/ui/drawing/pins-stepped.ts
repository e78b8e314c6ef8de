import { nearestOn, tangentAt, undividedName } from './engine.ts';
import type { Path, Point } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { moveArrow, pinLabel, shaftThrough, wantsArrow } from './pins.ts';
import type { DrawnPiece } from './piece-scene.ts';
import type { PinOnDrawing, PinScene } from './scene.ts';
import { distance, minus, outOf, plus, turnsOver, unit as unitOf } from './vectors.ts';
import { clearance } from './clearance.ts';

interface Stepped {
	/** The pieces whose lines have changed. */
	readonly changed: readonly DrawnPiece[];
	/** The alteration that is stepped, and its pins as they are now. */
	readonly number: number;
	readonly pins: readonly PinOnDrawing[];
	readonly unit: Unit;
}

/**
 * The pins of a drawing after a step: each goes through its line where that lies now, its head and its words as far from it as they
 * were; those of the stepped alteration say their new amounts. Undefined where one is there that was not: all are placed then.
 */
export function pinsStepped(shown: readonly PinScene[], stepped: Stepped): readonly PinScene[] | undefined {
	const own = new Map(stepped.pins.map((pin) => [pin.feature, pin]));
	const known = new Set(shown.filter(({ number }) => number === stepped.number).map(({ feature }) => feature));
	if (stepped.pins.some(({ feature }) => !known.has(feature))) return undefined;
	return shown.flatMap((pin) => {
		const now = pin.number === stepped.number ? own.get(pin.feature) : undefined;
		if (pin.number === stepped.number && !now) return [];
		const said = now ? { ...pin, way: now.way, label: pinLabel(now, stepped.unit) } : pin;
		return [throughLine(said, lineOf(pin, stepped.changed))];
	});
}

interface Line {
	readonly before: Path;
	readonly after: Path;
	readonly over: boolean;
}

/** The line that a pin goes through, if it is one of a changed piece; the nearest, where a divided name is meant. */
function lineOf({ feature, at }: PinScene, pieces: readonly DrawnPiece[]): Line | undefined {
	const name = undividedName(feature);
	const lines = pieces.flatMap(({ edges, placed }) =>
		[...edges]
			.filter(([edge]) => edge === feature || undividedName(edge) === name)
			.map(([, line]) => ({ ...line, over: turnsOver(placed.motion) }))
	);
	const away = ({ after }: Line) => nearestOn(after, at, 1e-3).distance;
	return lines.length > 1 ? lines.reduce((one, other) => (away(other) < away(one) ? other : one)) : lines[0];
}

function throughLine(pin: PinScene, line: Line | undefined): PinScene {
	if (!line) return pin;
	const { point: at, s } = nearestOn(line.after, pin.at, 1e-3);
	const { point: from } = nearestOn(line.before, at, 1e-3);
	const by = minus(at, pin.at);
	const moved = (point: Point) => plus(point, by);
	const head = moved(pin.head);
	const { arrow: _, ...rest } = pin;
	const out = outOf(tangentAt(line.after, s), line.over);
	return {
		...rest,
		at,
		head,
		shaft: pin.shaft && shaftThrough(at, head, unitOf(minus(head, at)), pin.radius),
		labelAt: moved(pin.labelAt),
		...(wantsArrow(distance(from, at)) && { arrow: moveArrow({ from, out }, pin.way, clearance()) })
	};
}
