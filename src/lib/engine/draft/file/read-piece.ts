import type { Edge, Piece } from '../types.ts';
import { joined } from '../../geometry/accuracy.ts';
import { distance } from '../../geometry/point.ts';
import { readableName } from '../readable-name.ts';
import { turnedRound } from '../turn-piece.ts';
import { readEdges } from './read-edges.ts';
import { readFeatures } from './read-features.ts';
import type { Report } from './report.ts';
import type { PieceFile } from './schema.ts';
import type { Shape, Sound } from './shape.ts';

/** What could be read of a piece, for the seams to be held against. */
export interface ReadPiece {
	readonly at: string;
	/** Undefined where it has none that can be read. */
	readonly id: string | undefined;
	readonly cut: Piece['cut'] | undefined;
	/** Edges that the file names, whether or not they could be read. */
	readonly edgeIds: ReadonlySet<string>;
	/** Notches that the file names, and the id of the edge that each is on. */
	readonly notches: ReadonlyMap<string, string | undefined>;
	/** Edges as the file draws them. */
	readonly edges: ReadonlyMap<string, Edge>;
	/** Clockwise, with everything filled in: only where nothing is wrong with its outline. */
	readonly piece?: Piece;
	/** The file's outline was anticlockwise and has been turned round. */
	readonly turned: boolean;
}

export function readPiece(
	{ value, at }: Sound<unknown>,
	shape: Shape,
	segmentsLeft: { count: number },
	report: Report
): ReadPiece {
	if (typeof value !== 'object' || value === null || Array.isArray(value)) {
		return {
			at,
			id: undefined,
			cut: undefined,
			edgeIds: new Set(),
			notches: new Map(),
			edges: new Map(),
			turned: false
		};
	}
	// Only the fields that `shape` calls sound are read as what they claim to be.
	const file = value as PieceFile;
	const ids = idsIn(file, at, shape, report);
	const edgeIds = new Set(ids.filter(({ list }) => list === 'edges').map(({ id }) => id));
	const read = readEdges(file, at, shape, segmentsLeft, report);
	const taken = new Set(ids.map(({ id }) => id));
	const features = readFeatures(file, at, shape, { read, ids: edgeIds }, taken, report);
	const cut = shape.isSound(`${at}.cut`) ? file.cut : undefined;
	const side = shape.isSound(`${at}.side`) ? (file.side ?? 'both') : 'both';
	if (side !== 'both' && cut !== undefined && cut !== 'single') {
		report(`${at}.side`, `A piece for the ${side} side alone is cut "single", not "${cut}".`);
	}
	const grain = shape.isSound(`${at}.grain`) ? file.grain : undefined;
	if (grain && !(distance(grain[0], grain[1]) > joined))
		report(`${at}.grain`, 'The two ends of the grain line should lie apart.');

	const id = shape.isSound(`${at}.id`) ? file.id : undefined;
	const known = {
		at,
		id,
		cut,
		edgeIds,
		notches: new Map(ids.filter(({ list }) => list === 'notches').map((entry) => [entry.id, entry.edge])),
		edges: read.byId
	};
	if (read.outline === undefined || id === undefined || cut === undefined) return { ...known, turned: false };
	const turned = read.outline.area < 0;
	const piece: Piece = {
		id,
		name: (shape.isSound(`${at}.name`) ? file.name : undefined) ?? readableName(id),
		cut,
		side,
		limb: shape.isSound(`${at}.limb`) ? (file.limb ?? false) : false,
		edges: read.outline.edges,
		...features,
		...(grain && { grain })
	};
	// Turning reads the edge that each feature is on; one on no edge is already reported, and the draft refused.
	const isWhole = [...piece.darts, ...piece.notches, ...piece.pleats].every(({ edge }) => edgeIds.has(edge));
	return { ...known, piece: turned && isWhole ? turnedRound(piece) : piece, turned };
}

const namedLists = ['edges', 'darts', 'foldDarts', 'notches', 'marks', 'pleats'] as const;

interface NamedId {
	readonly list: (typeof namedLists)[number];
	readonly id: string;
	readonly edge: string | undefined;
}

/** Every id in the piece, reporting those that name two things. */
function idsIn(file: PieceFile, at: string, shape: Shape, report: Report): NamedId[] {
	const first = new Map<string, string>();
	const ids: NamedId[] = [];
	for (const list of namedLists) {
		for (const { value, at: place } of shape.allIn(file[list], `${at}.${list}`)) {
			const { id, edge } = (value ?? {}) as { id?: unknown; edge?: unknown };
			if (typeof id !== 'string') continue;
			const before = first.get(id);
			if (before === undefined) first.set(id, place);
			else report(`${place}.id`, `"${id}" is already the id of ${before}: ids are unique in their piece.`);
			ids.push({ list, id, edge: typeof edge === 'string' ? edge : undefined });
		}
	}
	return ids;
}
