import { Bezier } from 'bezier-js';
import type { Cubic } from '../../src/lib/engine/geometry/types.ts';
import { bodice } from './bodice.ts';

/** Every curve of the bodice's stitching lines. */
export const curves: readonly Cubic[] = bodice.pieces
	.flatMap(({ edges }) => edges.flatMap(({ path }) => path))
	.filter((segment) => segment.kind === 'cubic');

export const bezierOf = ({ from, control1, control2, to }: Cubic): Bezier =>
	new Bezier([from, control1, control2, to].map(([x, y]) => ({ x, y })));
