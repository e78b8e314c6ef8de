import { movePoint } from '../../engine/index.ts';
import type { Mark, MarkKind, Motion, Path, Piece, Point } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { ring, stepped, through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { asLine } from '../words.ts';

export interface DrawnMark {
	readonly parts: readonly Primitive[];
	readonly lines: readonly (readonly Point[])[];
	readonly at: Point;
	readonly name: string;
	/** How far from its middle the mark reaches, mm. */
	readonly reach: number;
}

/** A mark's place on the paper, mm; `to` is the other end of a buttonhole. */
type Placed = Pick<Mark, 'at' | 'to'>;

/** Half a buttonhole's bar at each end, mm. */
const end = 2;
/** Half a buttonhole whose other end is not said, mm. */
const half = 8;

const forms: Readonly<
	Record<MarkKind, { readonly name: string; readonly reach: number; readonly paths: (mark: Placed) => Path[] }>
> = {
	'bust-point': { name: 'bust point', reach: 5, paths: ({ at }) => [...crossed(at, 5), ring(at, 2.5)] },
	button: { name: 'button', reach: 4, paths: ({ at }) => [ring(at, 4), ...crossed(at, 1.5)] },
	buttonhole: {
		name: 'buttonhole',
		reach: half,
		paths: ({ at, to }) => slit(to ? at : stepped(at, [-half, 0]), to ?? stepped(at, [half, 0]))
	},
	point: { name: '', reach: 3, paths: ({ at }) => crossed(at, 3) }
};

/** A marked point with its name; a point is drawn level, however the piece is turned over, a buttonhole from end to end. */
export function drawMark(piece: Piece, mark: Mark, motion: Motion): DrawnMark {
	const at = movePoint(motion, mark.at);
	const to = mark.to && movePoint(motion, mark.to);
	const { name, reach, paths } = forms[mark.kind];
	const drawn = paths({ at, ...(to && { to }) });
	return {
		parts: [
			{
				kind: 'group',
				id: nameId('mark', piece.id, mark.id),
				parts: drawn.map((path) => ({ kind: 'line', path, pen: pens.mark }))
			}
		],
		lines: drawn.map(asLine),
		at: to ? between(at, to) : at,
		name,
		reach: to ? distance(at, to) / 2 : reach
	};
}

const between = (from: Point, to: Point): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
const distance = (from: Point, to: Point): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** From end to end with a bar across each, as it is cut. */
function slit(from: Point, to: Point): Path[] {
	const length = distance(from, to);
	const along: Point = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : [1, 0];
	const across: Point = [along[1], -along[0]];
	return [
		through(from, to),
		...[from, to].map((one) => through(stepped(one, across, end), stepped(one, across, -end)))
	];
}

function crossed(at: Point, reach: number): Path[] {
	return [
		through(stepped(at, [-reach, 0]), stepped(at, [reach, 0])),
		through(stepped(at, [0, -reach]), stepped(at, [0, reach]))
	];
}
