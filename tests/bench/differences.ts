import polygonClipping from 'polygon-clipping';
import { outlineOf } from '../../src/lib/engine/index.ts';
import { flatten } from '../../src/lib/engine/geometry/flatten.ts';
import { difference } from '../../src/lib/engine/geometry/polygon.ts';
import { bodice } from './bodice.ts';
import { report } from './report.ts';

const outline = flatten(outlineOf(bodice.pieces[0]), 0.01);
const moved = outline.map(([x, y]) => [x + 7, y + 3] as const);
const ring = (points: typeof outline): [number, number][] => points.map(([x, y]) => [x, y]);
const [outlineRing, movedRing] = [ring(outline), ring(moved)];

export const differences = () =>
	report(`Difference of two outlines of ${outline.length} points`, [
		{ name: 'ours, on clipper2-ts', run: () => difference([outline], [moved]) },
		{ name: 'polygon-clipping', run: () => polygonClipping.difference([outlineRing], [movedRing]), peer: true }
	]);
