/**
 * `npm run bench`: the engine's figures, those that a general-purpose library can also give beside that library's, in one
 * run on this machine. Nothing here passes or fails.
 */
import { Bezier } from 'bezier-js';
import polygonClipping from 'polygon-clipping';
import { svgPathProperties } from 'svg-path-properties';
import { carry, check, cuttingLines, formatPathData, outlineOf, parseDraft } from '../../src/lib/engine/index.ts';
import { measured } from '../../src/lib/engine/geometry/accuracy.ts';
import { segmentLength } from '../../src/lib/engine/geometry/arc-length.ts';
import { flatten } from '../../src/lib/engine/geometry/flatten.ts';
import { difference } from '../../src/lib/engine/geometry/polygon.ts';
import file from '../../src/lib/intake/demo-draft.json';
import { bodice, history, takenIn } from './bodice.ts';
import { report } from './report.ts';

let step = 0;
/** A pin stepped on by a sixteenth at each call, as under the thumb; never the same alteration twice running. */
const stepped = () => takenIn(1.5875 * (1 + (++step % 8)));

await report('One alteration of a bodice of 12 pieces (wanted: under 1 ms without queries, 2 ms with them)', [
	{ name: 'one alteration', run: () => carry(bodice, [stepped()], { queries: false }) },
	{ name: 'one alteration, with queries', run: () => carry(bodice, [stepped()]) }
]);

const carried = carry(bodice, history, { queries: false });
await report('A whole history (wanted: under 50 ms)', [
	{
		name: '200 alterations',
		run: () => carry(bodice, history, { queries: false }),
		figure: `${carried.applied.length} applied, ${carried.unplaced.length} unplaced`
	},
	{ name: '200 alterations, with queries', run: () => carry(bodice, history) }
]);

await report('A draft read anew each time, so that nothing is remembered from the time before', [
	{ name: 'read the draft file', run: () => parseDraft(file) },
	{ name: 'read and check', run: () => check(parseDraft(file)) },
	{ name: 'read and lay the cutting lines', run: () => cuttingLines(parseDraft(file), { default: 15 }) }
]);

const curves = bodice.pieces
	.flatMap(({ edges }) => edges.flatMap(({ path }) => path))
	.filter((segment) => segment.kind === 'cubic');
const asBezier = curves.map(
	({ from, control1, control2, to }) => new Bezier([from, control1, control2, to].map(([x, y]) => ({ x, y })))
);
const asText = curves.map((curve) => formatPathData([curve]));
/** Each curve's length from 64 pieces of it, each by another library: far beyond what one of these gets wrong at once. */
const exact = asBezier.map((curve) =>
	Array.from({ length: 64 }, (_, i) => curve.split(i / 64, (i + 1) / 64).length()).reduce((sum, part) => sum + part, 0)
);
const off = (lengths: readonly number[]): string =>
	`off by ${Math.max(...lengths.map((length, i) => Math.abs(length - exact[i]))).toExponential(1)} mm at most`;

await report(`Arc length of the bodice's ${curves.length} curves, each once`, [
	{
		name: `ours, to ${measured} mm`,
		run: () => curves.map((curve) => segmentLength(curve, measured)),
		figure: off(curves.map((curve) => segmentLength(curve, measured)))
	},
	{
		name: 'ours, to 1e-9 mm',
		run: () => curves.map((curve) => segmentLength(curve, 1e-9)),
		figure: off(curves.map((curve) => segmentLength(curve, 1e-9)))
	},
	{
		name: 'bezier-js',
		run: () => asBezier.map((curve) => curve.length()),
		figure: off(asBezier.map((curve) => curve.length()))
	},
	{
		name: 'svg-path-properties, reading included',
		run: () => asText.map((text) => new svgPathProperties(text).getTotalLength()),
		figure: off(asText.map((text) => new svgPathProperties(text).getTotalLength()))
	}
]);

const outline = flatten(outlineOf(bodice.pieces[0]), 0.01);
const moved = outline.map(([x, y]) => [x + 7, y + 3] as const);
const ring = (points: typeof outline): [number, number][] => points.map(([x, y]) => [x, y]);
const [outlineRing, movedRing] = [ring(outline), ring(moved)];

await report(`Difference of two outlines of ${outline.length} points`, [
	{ name: 'ours, on clipper2-ts', run: () => difference([outline], [moved]) },
	{ name: 'polygon-clipping', run: () => polygonClipping.difference([outlineRing], [movedRing]) }
]);
