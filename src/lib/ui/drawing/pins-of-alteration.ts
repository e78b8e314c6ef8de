import { compare, findEdge, tangentAt } from './engine.ts';
import type { DartSize, Draft, Edge } from './engine.ts';
import { directionOf } from '../../measure/directions.ts';
import type { Moved } from '../../measure/directions.ts';
import type { PinOnDrawing, Way } from './scene.ts';
import { outOf } from './vectors.ts';

export interface AlterationDone {
	/** Its number in the order of pinning. */
	readonly number: number;
	/** The draft as it stood before this one alteration, and after it. */
	readonly before: Draft;
	readonly after: Draft;
	/** Edges and darts that it was made to, by whole name, as its step tells: not those that were only trimmed by it. */
	readonly touched: readonly string[];
}

/** Less than this is no move, mm. */
const least = 0.05;
/** Less than half a sixteenth of an inch would be written as 0, mm. */
const leastWritten = 25.4 / 32;

/**
 * The pins of one alteration: through each edge where it moved the most, through each dart, with the word for the way and
 * the amount in mm. A seam edge goes in or out; an open edge that lies across lower or higher, shorter or longer.
 */
export function pinsOfAlteration({ number, before, after, touched }: AlterationDone): readonly PinOnDrawing[] {
	const { edges, darts } = compareChanged(before, after, new Set(touched));
	const moved = edges
		.filter(({ greatest }) => Math.abs(greatest.move) >= least)
		.map(({ edge, greatest: { move, s } }): PinOnDrawing => {
			const way: Way = move < 0 ? 'in' : 'out';
			return { number, feature: edge, way, word: wordAt(before, after, edge, s, move), amount: Math.abs(move), s };
		});
	const sewn = darts
		.map(({ dart, before: was, after: is }): PinOnDrawing => ({ number, feature: dart, ...dartWords(was, is) }))
		.filter(({ amount = 0 }) => amount >= leastWritten);
	return [...moved, ...sewn];
}

/** What differs of these edges and darts between two drafts; pieces that were not touched at all are not looked at. */
function compareChanged(before: Draft, after: Draft, named: ReadonlySet<string>): ReturnType<typeof compare> {
	const changed = (draft: Draft, other: Draft): Draft => {
		const same = new Set(other.pieces);
		return { ...draft, pieces: draft.pieces.filter((piece) => !same.has(piece)) };
	};
	return compare(changed(before, after), changed(after, before), named);
}

/** The word for a move of an edge, mm, positive outward, at `s` mm along it as it was. */
function wordAt(before: Draft, after: Draft, name: string, s: number, move: number): string {
	const found = findEdge(before, name) ?? findEdge(after, name);
	return directionOf(found ? lying(found.edge, s) : 'seam', move);
}

/** How an edge lies where it moved: as a seam, or, if it is open, as a neck, a hem or a front edge does. */
export function lying(edge: Edge, s: number): Moved {
	if (edge.kind === 'seam') return 'seam';
	const [x, y] = outOf(tangentAt(edge.path, s, s > 0 ? 'before' : 'after'), false);
	if (Math.abs(y) < Math.abs(x)) return 'open-edge';
	return y < 0 ? 'neck' : 'hem';
}

function dartWords(was: DartSize | undefined, is: DartSize | undefined): Pick<PinOnDrawing, 'way' | 'word' | 'amount'> {
	if (!was || !is) {
		const amount = is?.intake ?? was?.intake ?? 0;
		return is ? { way: 'in', word: 'in', amount } : { way: 'out', word: 'out', amount };
	}
	const wider = is.intake - was.intake;
	if (Math.abs(wider) >= least) {
		return { way: wider > 0 ? 'in' : 'out', word: directionOf('dart', wider), amount: Math.abs(wider) };
	}
	const longer = is.length - was.length;
	return { way: longer > 0 ? 'in' : 'out', word: directionOf('length', longer), amount: Math.abs(longer) };
}
