import { levelOnEdge, pathLength, seamRun, undividedName } from '../../engine/index.ts';
import type { compare, Draft, Edge, Piece, Seam } from '../../engine/index.ts';
import { isLimbSeam } from '../fitting/feature-names.ts';
import { layerNames } from '../fitting/words/seam.ts';
import type { MoveAlong } from '../laid-straight.ts';

type Comparison = ReturnType<typeof compare>;
type EdgeChange = Comparison['edges'][number];

/** Less than this is no move, mm. */
export const leastMove = 0.05;
/** Two layers that moved by as much as this of one another moved alike: a thirty-second of an inch. */
const alike = 25.4 / 32;

/** How one layer of a seam moved, or both where they moved alike: mm, cloth added positive, by station. */
export interface LayerMoves {
	/** The piece whose layer it is; absent where it is of both. */
	readonly layer?: string;
	/** `top`, each level, `end`; what the seam does not cross is absent. */
	readonly at: Readonly<Record<string, number>>;
	/** From the seam's start (0) to its end (1). */
	readonly along: readonly MoveAlong[];
}

export interface SeamMoves {
	readonly seam: string;
	readonly name: string;
	readonly limb: boolean;
	/** Whole names of its edges on both sides. */
	readonly edges: readonly string[];
	readonly moved: boolean;
	readonly layers: readonly LayerMoves[];
}

/** How every seam of the later draft moved, from what `compare` found; a centre seam has one layer. */
export function seamMoves(after: Draft, { edges }: Pick<Comparison, 'edges'>): readonly SeamMoves[] {
	const changes = new Map(edges.map((change) => [change.edge, change]));
	return after.seams.map((seam): SeamMoves => {
		const sides = seam.b === 'mirror' ? (['a'] as const) : (['a', 'b'] as const);
		const names = layerNames(after, seam.id);
		const layers = sides.map((side, i) => ({
			layer: names[i],
			...layerMoves(after, seam, side, changes)
		}));
		return {
			seam: seam.id,
			name: seam.name.replace(/ seam$/i, ''),
			limb: isLimbSeam(after, seam),
			edges: sides.flatMap((side) => seamRun(after, seam, side).map(({ piece, edge }) => `${piece.id}/${edge.id}`)),
			moved: layers.some(({ at, along }) => [...Object.values(at), ...along.map(({ move }) => move)].some(isMove)),
			layers: movedAlike(layers)
		};
	});
}

const isMove = (mm: number) => Math.abs(mm) >= leastMove;

function movedAlike(layers: readonly Required<LayerMoves>[]): readonly LayerMoves[] {
	const [a, b] = layers;
	if (!b) return [{ at: a.at, along: a.along }];
	const stations = new Set([...Object.keys(a.at), ...Object.keys(b.at)]);
	const same = [...stations].every((station) => Math.abs((a.at[station] ?? 0) - (b.at[station] ?? 0)) < alike);
	return same ? [{ at: a.at, along: a.along }] : layers;
}

function layerMoves(
	after: Draft,
	seam: Seam,
	side: 'a' | 'b',
	changes: ReadonlyMap<string, EdgeChange>
): Pick<LayerMoves, 'at' | 'along'> {
	const run = seamRun(after, seam, side);
	const whole = run.reduce((sum, { length }) => sum + length, 0);
	const at: Record<string, number> = {};
	const along: MoveAlong[] = [];
	run.forEach(({ piece, edge, reversed, startsAt, length }, i) => {
		const change = changes.get(`${piece.id}/${edge.id}`);
		if (!change) return;
		const moves = reversed ? [...change.moves].reverse() : change.moves;
		const levels = levelsIn(piece);
		moves.forEach(({ at: place, move }, k) => {
			const first = k === 0;
			const last = k === moves.length - 1;
			if (first && i === 0) at.top = move;
			else if (last && i === run.length - 1) at.end = move;
			else if (!first && !last && levels.includes(place)) at[place] ??= move;
			const share = shareAt(piece, edge, place);
			const fraction = reversed ? 1 - share : share;
			along.push({ at: (startsAt + fraction * length) / whole, move });
		});
	});
	return { at, along };
}

const levelsIn = (piece: Piece) => [...new Set(piece.levels.map(({ level }) => level))];

/** How far along an edge a named place lies, 0 at its start to 1. */
function shareAt(piece: Piece, edge: Edge, place: string): number {
	if (place === 'start') return 0;
	if (place === 'finish') return 1;
	const notch = piece.notches.find(({ id, edge: on }) => id === place && on === edge.id);
	const s = notch?.at ?? levelOnEdge(piece, edge, place)[0] ?? 0;
	return s / pathLength(edge.path);
}

/** The stations of a table of seams: top, the balance lines that they cross in the order of the draft, end. */
export function stationsOf(draft: Draft, limb: boolean): readonly { readonly id: string; readonly name: string }[] {
	const levels = [...new Set(draft.pieces.filter((piece) => piece.limb === limb).flatMap(levelsIn))].filter(
		(level) => level !== 'top' && level !== 'end'
	);
	return [
		{ id: 'top', name: 'top' },
		...levels.map((level) => ({ id: level, name: level.replaceAll('-', ' ') })),
		{ id: 'end', name: 'end' }
	];
}

/** The seam that an edge is in, if any: of several, the first. */
export function seamOfEdge(draft: Draft, name: string): Seam | undefined {
	const plain = undividedName(name);
	return draft.seams.find((seam) =>
		[...seam.a, ...(seam.b === 'mirror' ? [] : seam.b)].some(
			({ edge }) => edge === name || undividedName(edge) === plain
		)
	);
}
