import type { Point } from '../../geometry/types.ts';
import type { RunEdge, Seam } from '../types.ts';
import { joined } from '../../geometry/accuracy.ts';
import { pathEnd, pathStart } from '../../geometry/path.ts';
import { distance } from '../../geometry/point.ts';
import { splitName } from '../find.ts';
import { readableName } from '../readable-name.ts';
import type { ReadPiece } from './read-piece.ts';
import type { Report } from './report.ts';
import type { SeamFile } from './schema.ts';
import type { Shape, Sound } from './shape.ts';

/** The seams, each run held against the pieces that it names; `reversed` still as the file has it. */
export function readSeams(
	seams: readonly SeamFile[] | undefined,
	shape: Shape,
	pieces: ReadonlyMap<string, ReadPiece>,
	report: Report
): Seam[] {
	const first = new Map<string, string>();
	for (const { value, at } of shape.allIn(seams, 'seams')) {
		const id = (value as { id?: unknown } | null)?.id;
		if (typeof id !== 'string') continue;
		const before = first.get(id);
		if (before === undefined) first.set(id, at);
		else report(`${at}.id`, `"${id}" is already the id of ${before}: every seam has an id of its own.`);
	}
	return shape.soundIn(seams, 'seams').map((seam) => readSeam(seam, pieces, report));
}

function readSeam({ value: file, at }: Sound<SeamFile>, pieces: ReadonlyMap<string, ReadPiece>, report: Report): Seam {
	const a = readRun(file.a, `${at}.a`, pieces, report);
	const b = file.b === 'mirror' ? 'mirror' : readRun(file.b, `${at}.b`, pieces, report);
	if (b === 'mirror') {
		for (const [i, { edge }] of a.entries()) {
			const cut = pieces.get(splitName(edge).piece)?.cut;
			if (cut === undefined || cut === 'pair') continue;
			const how = cut === 'fold' ? 'is cut on the fold' : 'is cut single';
			report(
				`${at}.a[${i}].edge`,
				`A mirror seam joins a pair piece to its own mirror image; ${splitName(edge).piece} ${how}.`
			);
		}
	} else {
		checkUsedOnce(a, b, at, report);
	}
	return { id: file.id, name: file.name ?? readableName(file.id), a, b, ease: file.ease ?? 0 };
}

function readRun(
	run: readonly { readonly edge: string; readonly reversed?: boolean | undefined }[],
	at: string,
	pieces: ReadonlyMap<string, ReadPiece>,
	report: Report
): RunEdge[] {
	if (run.length === 0) report(at, 'A side of a seam needs at least one edge.');
	const seen = new Map<string, number>();
	run.forEach(({ edge: name }, i) => {
		const place = `${at}[${i}].edge`;
		checkEdge(name, place, pieces, report);
		const before = seen.get(name);
		if (before === undefined) seen.set(name, i);
		else report(place, `${name} is already in this run, at ${at}[${before}]: a seam takes an edge once.`);
		if (i > 0) checkFollows(run[i - 1], run[i], place, pieces, report);
	});
	return run.map(({ edge, reversed }) => ({ edge, reversed: reversed ?? false }));
}

function checkEdge(name: string, at: string, pieces: ReadonlyMap<string, ReadPiece>, report: Report): void {
	const { piece: pieceId, id } = splitName(name);
	const piece = pieces.get(pieceId);
	if (piece === undefined) {
		report(at, `There is no piece "${pieceId}". The draft has ${[...pieces.keys()].join(', ') || 'none'}.`);
	} else if (!piece.edgeIds.has(id)) {
		report(at, `There is no edge "${id}" on ${pieceId}. It has ${[...piece.edgeIds].join(', ') || 'none'}.`);
	} else if (piece.edges.get(id)?.kind === 'fold') {
		report(at, `${name} is a fold: it is not sewn.`);
	}
}

/** Two edges of one piece that follow each other in a run and share a corner must share the corner where the walk passes from one to the other. */
function checkFollows(
	before: { readonly edge: string; readonly reversed?: boolean | undefined },
	after: { readonly edge: string; readonly reversed?: boolean | undefined },
	at: string,
	pieces: ReadonlyMap<string, ReadPiece>,
	report: Report
): void {
	const [one, other] = [splitName(before.edge), splitName(after.edge)];
	if (one.piece !== other.piece || one.id === other.id) return;
	const edges = pieces.get(one.piece)?.edges;
	const [first, second] = [edges?.get(one.id), edges?.get(other.id)];
	if (first === undefined || second === undefined) return;
	const ends = [pathStart(first.path), pathEnd(first.path)];
	const starts = [pathStart(second.path), pathEnd(second.path)];
	const left = before.reversed ? ends[0] : ends[1];
	const entered = after.reversed ? starts[1] : starts[0];
	const touch = (p: Point, q: Point) => distance(p, q) <= joined;
	if (touch(left, entered)) return;
	if (ends.some((end) => starts.some((start) => touch(end, start)))) {
		report(
			at,
			`${after.edge} touches ${before.edge}, but not where the seam passes from one to the other: see their order and "reversed".`
		);
	}
}

/** An edge is on one side of a seam only. */
function checkUsedOnce(a: readonly RunEdge[], b: readonly RunEdge[], at: string, report: Report): void {
	const onA = new Map(a.map(({ edge }, i) => [edge, i]));
	b.forEach(({ edge }, i) => {
		const before = onA.get(edge);
		if (before === undefined) return;
		report(
			`${at}.b[${i}].edge`,
			`${edge} is already on side a, at ${at}.a[${before}]: for a centre seam write "b": "mirror".`
		);
	});
}
