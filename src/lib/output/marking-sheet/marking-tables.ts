import { compare, findEdge, findPlace, undividedName } from '../../engine/index.ts';
import type { Draft, Edge, Piece, Place } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import { levelName } from '../marks/level.ts';
import { dartTables } from './dart-tables.ts';
import type { MarkingSheetInput } from './marking-input.ts';
import { numbersFor } from './numbers-for.ts';

/** One table of the sheet: what is marked on one line, on both pieces of its seam where it is the same on both. */
export interface MarkingTable {
	/** Of the alterations that moved it; none where it only follows a neighbour. */
	readonly numbers: readonly number[];
	readonly heading: string;
	readonly said: string;
	/** Heads of the columns before the boxes, and of the boxes. */
	readonly columns: readonly string[];
	readonly boxes: readonly string[];
	readonly rows: readonly MarkingRow[];
	/** Edges or darts that it is about, named whole. */
	readonly features: readonly string[];
}

export interface MarkingRow {
	/** In the order of the columns. */
	readonly cells: readonly string[];
	/** The letter that stands at its place on the drawing. */
	readonly letter?: string;
	/** Where that is: arc lengths in mm on edges of the draft before. */
	readonly places: readonly { readonly edge: string; readonly s: number }[];
	/** The most there is in its table. */
	readonly most: boolean;
}

/** A move smaller than this is not marked, mm: half of a sixteenth of an inch, about what a chalk line is wide. */
export const leastMarked = 0.8;

/** Places nearer than this along a line are marked as one, and lines that differ by less are read off one table, mm: a sixteenth. */
const sixteenth = 25.4 / 16;

/** Everything to be marked, in the order in which it was pinned, and then what only follows. */
export function markingTables(input: MarkingSheetInput): MarkingTable[] {
	const { edges, darts } = compare(input.before, input.after);
	const moved = edges
		.filter(({ greatest }) => Math.abs(greatest.move) >= leastMarked)
		.map((change) => edgeTable(input, change))
		.filter((table) => table !== undefined);
	const tables = [...merged(input, moved), ...dartTables(input, darts)];
	const first = ({ numbers }: MarkingTable) => numbers[0] ?? Infinity;
	return tables.sort((a, b) => (first(a) === first(b) ? 0 : first(a) - first(b)));
}

type EdgeChange = ReturnType<typeof compare>['edges'][number];

interface EdgeTable {
	readonly change: EdgeChange;
	readonly edge: Edge;
	readonly piece: Piece;
	readonly name: string;
	readonly rows: readonly EdgeRow[];
}

interface EdgeRow {
	readonly at: string;
	readonly s: number;
	/** Stitched length from the upper end of the edge. */
	readonly fromTop: number;
	readonly move: number;
}

function edgeTable({ before }: MarkingSheetInput, change: EdgeChange): EdgeTable | undefined {
	const name = findEdge(before, change.edge) ? change.edge : undividedName(change.edge);
	const found = findEdge(before, name);
	if (!found) return undefined;
	const { piece, edge, index } = found;
	const count = piece.edges.length;
	const ends = { start: piece.edges[(index + count - 1) % count].name, finish: piece.edges[(index + 1) % count].name };
	const length = change.before;
	const downwards = edge.path[0].from[1] <= edge.path[edge.path.length - 1].to[1];
	const rowFor = (at: string, move: number, s: number, stitched: number): EdgeRow => ({
		at: at in ends ? ends[at as keyof typeof ends].toLowerCase() : placeName(piece, at),
		s,
		fromTop: downwards ? stitched : length - stitched,
		move
	});
	const named = change.moves.flatMap(({ at, move }) => {
		const place = findPlace(before, name, placeCalled(piece, at));
		return 'problem' in place ? [] : [rowFor(at, move, place.s, place.stitched)];
	});
	const { greatest } = change;
	const beyondNamed = named.every(({ move }) => Math.abs(greatest.move) - Math.abs(move) > leastMarked);
	const rows = beyondNamed ? [...named, { ...rowFor('', greatest.move, greatest.s, greatest.s), at: 'most' }] : named;
	const apart = onePlaceEach(rows.sort((a, b) => a.fromTop - b.fromTop));
	const marked = apart.filter((row, i) =>
		[apart[i - 1], row, apart[i + 1]].some((near) => near && Math.abs(near.move) >= leastMarked)
	);
	return { change, edge, piece, name, rows: marked };
}

/** Of places that fall together the one with the plainest name: a notch on the waist line is the waist line. */
function onePlaceEach(rows: readonly EdgeRow[]): EdgeRow[] {
	const kept: EdgeRow[] = [];
	for (const row of rows) {
		const last = kept.at(-1);
		if (last === undefined || row.fromTop - last.fromTop > sixteenth) kept.push(row);
		else if (last.at === 'notch') kept[kept.length - 1] = row;
	}
	return kept;
}

function placeCalled(piece: Piece, at: string): Place {
	if (at === 'start' || at === 'finish') return { end: at };
	if (piece.notches.some(({ id }) => id === at)) return { notch: at };
	const [, level, nth] = /^(.*?)(?: (\d+))?$/.exec(at) ?? [];
	return nth === undefined ? { level } : { level, nth: Number(nth) };
}

function placeName(piece: Piece, at: string): string {
	return piece.notches.some(({ id }) => id === at) ? 'notch' : levelName(at);
}

/** Both sides of a seam in one table where they are moved alike, so that they are read off once. */
function merged(input: MarkingSheetInput, tables: readonly EdgeTable[]): MarkingTable[] {
	const left = [...tables];
	const done: MarkingTable[] = [];
	while (left.length > 0) {
		const first = left.shift() as EdgeTable;
		const seam = seamOf(input.before, first.name);
		const other = left.findIndex(
			(table) => seam !== undefined && seamOf(input.before, table.name) === seam && alike(first, table)
		);
		done.push(asTable(input, other < 0 ? [first] : [first, ...left.splice(other, 1)]));
	}
	return done;
}

function seamOf({ seams }: Draft, edge: string) {
	const isIn = (run: readonly { readonly edge: string }[]) => run.some((part) => part.edge === edge);
	return seams.find(({ a, b }) => isIn(a) || (b !== 'mirror' && isIn(b)));
}

function alike({ rows }: EdgeTable, other: EdgeTable): boolean {
	return (
		rows.length === other.rows.length &&
		rows.every(({ at, fromTop, move }, i) => {
			const against = other.rows[i];
			const near = Math.abs(fromTop - against.fromTop) <= sixteenth && Math.abs(move - against.move) < leastMarked / 2;
			return at === against.at && near;
		})
	);
}

function asTable(input: MarkingSheetInput, tables: readonly EdgeTable[]): MarkingTable {
	const [first] = tables;
	const { edge, piece, rows } = first;
	const seam = seamOf(input.before, first.name);
	const pieces = tables.map((table) => table.piece.name);
	const most = Math.max(...rows.map(({ move }) => Math.abs(move)));
	let letters = 0;
	return {
		numbers: [...new Set(tables.flatMap(({ name }) => numbersFor(input, name)))].sort((a, b) => a - b),
		heading: seam?.name ?? edge.name,
		said: `${pieces.join(' and ')}${seam && tables.length === 1 ? ` only` : ''}: ${act(first)}.`,
		columns: ['at', 'from the top', 'by'],
		boxes: tables.length > 1 ? pieces : [piece.name],
		features: tables.map(({ name }) => name),
		rows: rows.map((row, i) => ({
			cells: [row.at, ...cellsOf(row, edge.kind, input)],
			letter: String.fromCharCode(97 + letters++),
			places: tables.map((table) => ({ edge: table.name, s: table.rows[i].s })),
			most: Math.abs(row.move) >= most - 1e-6
		}))
	};
}

/** The words for moving a line out and in: seams are let out and taken in, open edges added to and cut away. */
const directions = {
	seam: { out: 'out', in: 'in', letOut: 'let out', takenIn: 'take in' },
	open: { out: 'add', in: 'off', letOut: 'add', takenIn: 'cut away' },
	fold: { out: 'out', in: 'in', letOut: 'let out', takenIn: 'take in' }
} as const;

function act({ edge, rows }: EdgeTable): string {
	const { letOut, takenIn } = directions[edge.kind];
	const [out, inward] = [rows.some(({ move }) => move >= leastMarked), rows.some(({ move }) => move <= -leastMarked)];
	return out && inward ? `${takenIn} and ${letOut}` : out ? letOut : takenIn;
}

function cellsOf({ fromTop, move }: EdgeRow, kind: Edge['kind'], { unit }: MarkingSheetInput): string[] {
	const said = (mm: number) => formatLength(mm, unit, { denominator: 16, sign: 'never' }).text;
	const nothing = Math.abs(move) < leastMarked;
	const top = fromTop < leastMarked ? '0' : said(fromTop);
	const word = move > 0 ? directions[kind].out : directions[kind].in;
	return [top, nothing ? '0' : `${word} ${said(move)}`];
}
