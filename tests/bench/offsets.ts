/**
 * Offsets beside other libraries', each brought to the same accuracy by what it offers for that, and each measured: no point
 * of an offset may lie nearer to the curve or farther from it than the amount.
 */
import type { Bezier } from 'bezier-js';
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import { flatten } from '../../src/lib/engine/geometry/flatten.ts';
import { nearestOn } from '../../src/lib/engine/geometry/nearest.ts';
import { offsetPath } from '../../src/lib/engine/geometry/offset.ts';
import { roomFor } from '../../src/lib/engine/geometry/room-for.ts';
import { cubic, pointOn } from '../../src/lib/engine/geometry/segment.ts';
import type { Cubic, Path, Point } from '../../src/lib/engine/geometry/types.ts';
import { bezierOf, curves } from './curves.ts';
import { report, type Timed } from './report.ts';

const amount = 15;
const accuracy = 0.01;
const samples = 40;

/** How far the worst of the points is from lying `amount` from the path. */
const deviation = (path: Path, points: readonly Point[]): number =>
	Math.max(...points.map((point) => Math.abs(nearestOn(path, point, 1e-9).distance - amount)));
const onPath = (path: Path): Point[] =>
	path.flatMap((segment) => Array.from({ length: samples + 1 }, (_, i) => pointOn(segment, i / samples)));
const onBeziers = (parts: readonly Bezier[]): Point[] =>
	parts.flatMap((part) =>
		Array.from({ length: samples + 1 }, (_, i): Point => {
			const { x, y } = part.get(i / samples);
			return [x, y];
		})
	);
const figure = (off: number, count: number, what: string) => `off by ${off.toFixed(4)} mm at most, ${count} ${what}`;

const ours = (path: Path): Path => offsetPath(path, amount, [], accuracy).flatMap((part) => part.path);

/** bezier-js knows no accuracy: the curve is given to it in as many equal parts as it needs. (A positive offset lies to the right.) */
const beside = (curve: Bezier, parts: number): Bezier[] =>
	Array.from({ length: parts }, (_, i) => curve.split(i / parts, (i + 1) / parts)).flatMap(
		(part) => part.offset(-amount) as Bezier[]
	);
function partsNeeded(curve: Cubic): number {
	for (let parts = 1; parts < 256; parts *= 2)
		if (deviation([curve], onBeziers(beside(bezierOf(curve), parts))) <= accuracy) return parts;
	throw new Error('bezier-js does not come near this offset.');
}

function besideCurves(kept: readonly Cubic[]): Timed {
	const needed = kept.map((curve) => ({ curve: bezierOf(curve), parts: partsNeeded(curve) }));
	const run = () => needed.map(({ curve, parts }) => beside(curve, parts));
	const found = run();
	const off = Math.max(...found.map((parts, i) => deviation([kept[i]], onBeziers(parts))));
	return { name: 'bezier-js, cut as needed', run, peer: true, figure: figure(off, found.flat().length, 'curves') };
}

function besideAtOnce(kept: readonly Cubic[]): Timed {
	const given = kept.map(bezierOf);
	const run = () => given.map((curve) => curve.offset(-amount) as Bezier[]);
	const found = run();
	const off = Math.max(...found.map((parts, i) => deviation([kept[i]], onBeziers(parts))));
	return { name: 'bezier-js, as it is', run, peer: true, figure: figure(off, found.flat().length, 'curves') };
}

/** An oval of 400 by 240 mm without a corner, so that every way of offsetting means the same line. */
function oval(): Cubic[] {
	const [a, b, k] = [200, 120, 0.5522847498];
	return [
		cubic([0, -b], [k * a, -b], [a, -k * b], [a, 0]),
		cubic([a, 0], [a, k * b], [k * a, b], [0, b]),
		cubic([0, b], [-k * a, b], [-a, k * b], [-a, 0]),
		cubic([-a, 0], [-a, -k * b], [-k * a, -b], [0, -b])
	];
}

/** The polygon and its offset share the accuracy between them. */
function inflated(path: Path): Point[] {
	const polygon = flatten(path, accuracy / 2).map(([x, y]) => ({ x, y }));
	const [found] = Clipper.inflatePathsD([polygon], amount, JoinType.Round, EndType.Polygon, 2, 4, accuracy / 2);
	return found.map(({ x, y }): Point => [x, y]);
}
/** The chords of a polygon too. */
const withMiddles = (points: readonly Point[]): Point[] =>
	points.flatMap(([x, y], i) => {
		const [u, v] = points[(i + 1) % points.length];
		return [[x, y] as const, [(x + u) / 2, (y + v) / 2] as const];
	});

export async function offsets(): Promise<void> {
	const kept = curves.filter((curve) => roomFor([curve], amount, amount) > 2);
	const found = kept.map((curve) => ours([curve]));
	const off = Math.max(...found.map((path, i) => deviation([kept[i]], onPath(path))));
	await report(
		`Offset by ${amount} mm, to ${accuracy} mm, of the ${kept.length} curves of the bodice that bend gently enough`,
		[
			{
				name: 'ours',
				run: () => kept.map((curve) => ours([{ ...curve }])),
				figure: figure(off, found.flat().length, 'curves')
			},
			besideCurves(kept),
			besideAtOnce(kept)
		]
	);
	const outline = oval();
	const asBezier = outline.map((curve) => ({ curve: bezierOf(curve), parts: partsNeeded(curve) }));
	const byBezier = () => asBezier.flatMap(({ curve, parts }) => beside(curve, parts));
	await report(`Offset of a closed outline by ${amount} mm, to ${accuracy} mm`, [
		{
			name: 'ours',
			run: () => ours([...outline]),
			figure: figure(deviation(outline, onPath(ours(outline))), ours(outline).length, 'curves')
		},
		{
			name: 'bezier-js, cut as needed',
			run: byBezier,
			peer: true,
			figure: figure(deviation(outline, onBeziers(byBezier())), byBezier().length, 'curves')
		},
		{
			name: 'clipper2-ts, flattening included',
			run: () => inflated([...outline]),
			peer: true,
			figure: figure(deviation(outline, withMiddles(inflated(outline))), inflated(outline).length, 'points')
		}
	]);
}
