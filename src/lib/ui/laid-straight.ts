/** One place of a line: how far along it, 0 to 1, and how far it moved there, mm, cloth added positive. */
export interface MoveAlong {
	readonly at: number;
	readonly move: number;
}

export interface LaidLines {
	readonly after: string;
	readonly hatch: string;
	readonly zigzag: string;
}

const [left, right, middle] = [2, 62, 12];
/** The greatest move is drawn this deep, px; up to 1/4 in, smaller ones less. */
const deepest = 9;
const deepestAt = 6.35;

/**
 * A moved line laid straight, 60 px long: cloth added rises above the line before, cloth taken away sinks below it. Between the
 * places the line runs smoothly and level through each, as an amount does along a seam; depths are enlarged and not to scale.
 */
export function laidStraight(moves: readonly MoveAlong[]): LaidLines {
	const places = [...moves].sort((a, b) => a.at - b.at);
	const most = Math.max(deepestAt, ...places.map(({ move }) => Math.abs(move)));
	const depth = (at: number) => (moveAt(places, at) / most) * deepest;
	const samples = Array.from({ length: 31 }, (_, i) => ({
		x: left + 2 * i,
		y: middle - depth(i / 30),
		out: depth(i / 30)
	}));
	const after = samples.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y.toFixed(1)}`).join('');
	const hatch = samples
		.filter(({ out, x }) => out < -0.8 && x < right)
		.filter((_, i) => i % 2 === 0)
		.map(({ x, y }) => `M${x} ${middle}L${x + 2} ${y.toFixed(1)}`)
		.join('');
	const turns = samples.filter(({ out }) => out > 0.8);
	const zigzag = turns
		.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${i % 2 === 0 ? middle : y.toFixed(1)}`)
		.join('');
	return { after, hatch, zigzag };
}

function moveAt(places: readonly MoveAlong[], at: number): number {
	const next = places.findIndex((place) => place.at >= at);
	if (next < 0) return places.at(-1)?.move ?? 0;
	if (next === 0) return places[0].move;
	const [a, b] = [places[next - 1], places[next]];
	const t = (at - a.at) / (b.at - a.at);
	return a.move + (b.move - a.move) * t * t * (3 - 2 * t);
}
