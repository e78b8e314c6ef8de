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

const forms: Readonly<
	Record<MarkKind, { readonly name: string; readonly reach: number; readonly paths: (at: Point) => Path[] }>
> = {
	'bust-point': { name: 'bust point', reach: 5, paths: (at) => [...crossed(at, 5), ring(at, 2.5)] },
	button: { name: 'button', reach: 4, paths: (at) => [ring(at, 4), ...crossed(at, 1.5)] },
	buttonhole: {
		name: 'buttonhole',
		reach: 8,
		paths: (at) => [bar(at, [-8, 0], [8, 0]), bar(at, [-8, -2], [-8, 2]), bar(at, [8, -2], [8, 2])]
	},
	point: { name: '', reach: 3, paths: (at) => crossed(at, 3) }
};

/** A marked point with its name; drawn level, however the piece is turned over. */
export function drawMark(piece: Piece, mark: Mark, motion: Motion): DrawnMark {
	const at = movePoint(motion, mark.at);
	const { name, reach, paths } = forms[mark.kind];
	const drawn = paths(at);
	return {
		parts: [
			{
				kind: 'group',
				id: nameId('mark', piece.id, mark.id),
				parts: drawn.map((path) => ({ kind: 'line', path, pen: pens.mark }))
			}
		],
		lines: drawn.map(asLine),
		at,
		name,
		reach
	};
}

function bar(at: Point, from: Point, to: Point): Path {
	return through(stepped(at, from), stepped(at, to));
}

function crossed(at: Point, reach: number): Path[] {
	return [bar(at, [-reach, 0], [reach, 0]), bar(at, [0, -reach], [0, reach])];
}
