import { angleBetween } from '../../geometry/point.ts';
import { endTangent, pathLength, startTangent } from '../../geometry/path.ts';
import { findSeam, nameOf } from '../../draft/find.ts';
import { seamRun, seamsOf, sideOf } from '../../draft/seam.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { edgeInSentence, isCalled } from '../words.ts';
import type { Draft, Edge, Piece, Seam } from '../../draft/types.ts';
import type { Inquiry, Inspection } from '../inquiry.ts';
import type { Query } from '../types.ts';

type End = 'start' | 'finish';

/** A corner of a piece where a seam ends: the edge beside the seam there, and the angle between the two. */
interface Corner {
	readonly piece: Piece;
	readonly neighbour: Edge;
	/** Which end of the neighbour is at the corner. */
	readonly end: End;
	/** Inside the piece, degrees. */
	readonly angle: number;
}

/** Over how much of an edge a corner is smoothed away, mm. */
const usualReach = 40;

/** An angle that is worse than before by less than this is no worse. */
const noWorse = 0.25;

/**
 * Sewn together, the edges beside a seam do not run on smoothly across it: they meet at a corner. Figure: degrees off. Asked only
 * where both edges are open, or follow each other in another seam (armhole, waist); at a fold or a centre seam an edge is to
 * stand square. A corner that was as sharp in the version before, or in the base draft, is meant.
 */
export const seamCorner: Inquiry = (inspection) => [
	...inspection.draft.seams.flatMap((seam) =>
		(['start', 'finish'] as const).flatMap((end) => askSeam(inspection, seam, end))
	),
	...inspection.draft.pieces.flatMap((piece) =>
		(['start', 'finish'] as const).flatMap((end) => askFold(inspection, piece, end))
	)
];

function askSeam(inspection: Inspection, seam: Seam, end: End): Query[] {
	const found = cornersAt(inspection.draft, seam, end);
	if (!found) return [];
	const earlier = (draft: Draft): number => {
		const same = findSeam(draft, seam.id) ?? findSeam(draft, undividedName(seam.id));
		const then = same && cornersAt(draft, same, end);
		return then ? off(then) : 0;
	};
	return ask(inspection, found, earlier, `${seam.id}-${end}`);
}

/** The corners on both sides of a seam's end, the same one twice for a centre seam; undefined where nothing is to run on there. */
function cornersAt(draft: Draft, seam: Seam, end: End): readonly [Corner, Corner] | undefined {
	const a = outermostCorner(draft, seam, 'a', end);
	if (seam.b === 'mirror') return a.neighbour.kind === 'fold' ? undefined : [a, a];
	const b = outermostCorner(draft, seam, 'b', end);
	const bothOpen = a.neighbour.kind === 'open' && b.neighbour.kind === 'open';
	return bothOpen || followInASeam(draft, seam, a, b) ? [a, b] : undefined;
}

function outermostCorner(draft: Draft, seam: Seam, side: 'a' | 'b', end: End): Corner {
	const run = seamRun(draft, seam, side);
	const { piece, edge, reversed } = end === 'start' ? run[0] : run[run.length - 1];
	return cornerOf(piece, edge, (end === 'start') !== reversed ? 'start' : 'finish');
}

function cornerOf(piece: Piece, edge: Edge, end: End): Corner {
	const index = piece.edges.indexOf(edge);
	const count = piece.edges.length;
	const [before, after] =
		end === 'start' ? [piece.edges[(index + count - 1) % count], edge] : [edge, piece.edges[(index + 1) % count]];
	const turn = angleBetween(endTangent(before.path), startTangent(after.path));
	return {
		piece,
		neighbour: end === 'start' ? before : after,
		end: end === 'start' ? 'finish' : 'start',
		angle: 180 - (turn * 180) / Math.PI
	};
}

function followInASeam(draft: Draft, seam: Seam, a: Corner, b: Corner): boolean {
	const [one, other] = [nameOf(a.piece, a.neighbour.id), nameOf(b.piece, b.neighbour.id)];
	return seamsOf(draft, one).some(({ seam: through, side }) => {
		if (through.id === seam.id) return false;
		const names = sideOf(through, side).map(({ edge }) => edge);
		return names.some((name, i) => name === one && (names[i - 1] === other || names[i + 1] === other));
	});
}

function off(corners: readonly [Corner, Corner]): number {
	return Math.abs(corners[0].angle + corners[1].angle - 180);
}

function askFold(inspection: Inspection, piece: Piece, end: End): Query[] {
	const fold = piece.edges.find(({ kind }) => kind === 'fold');
	if (!fold) return [];
	const corner = cornerOf(piece, fold, end);
	const earlier = (draft: Draft): number => {
		const same = draft.pieces.find(({ id }) => id === piece.id);
		const then = same?.edges.find(({ kind }) => kind === 'fold');
		if (!same || !then) return 0;
		const was = cornerOf(same, then, end);
		return off([was, was]);
	};
	return ask(inspection, [corner, corner], earlier, `${nameOf(piece, fold.id)}-${end}`);
}

function ask(
	{ options, bands }: Inspection,
	[a, b]: readonly [Corner, Corner],
	earlier: (draft: Draft) => number,
	which: string
): Query[] {
	const figure = off([a, b]);
	const { silent, armhole, meant } = bands.seamCorner;
	const limit = isCalled(a.neighbour, 'armhole') || isCalled(b.neighbour, 'armhole') ? armhole : silent;
	if (figure <= limit || figure >= meant) return [];
	const known = [options.before, options.base].filter((draft) => draft !== undefined);
	if (known.some((draft) => figure <= earlier(draft) + noWorse)) return [];
	const where = nameOf(a.piece, a.neighbour.id);
	const { name, on } = asAltered(where);
	const reach = Math.min(usualReach, pathLength(a.neighbour.path) / 2);
	const smoothing: Settling = { id: settleId('seam-corner', which), kind: 'smooth', on, edge: name, end: a.end, reach };
	const corner = `sewn, there is a corner of ${Math.round(figure)}°.`;
	const [one, other] = [edgeInSentence(a.piece, a.neighbour), edgeInSentence(b.piece, b.neighbour)];
	const sentence =
		a === b
			? `The ${one} does not meet its centre line square: ${corner}`
			: one === other
				? `The two ends of the ${one} do not run on smoothly into each other: ${corner}`
				: `The ${one} does not run on smoothly into the ${other}: ${corner}`;
	return [
		{
			code: 'seam-corner',
			severity: 'note',
			where,
			figure,
			sentence,
			settle: [smoothing]
		}
	];
}
