import { expect, test } from 'vitest';
import { levelSpan, movePiece, outlineOf } from '../../../src/lib/engine/index.ts';
import type { Draft, Motion, Path, Point } from '../../../src/lib/engine/index.ts';
import { anchorsOf, laidOn } from '../../../src/lib/ui/compare/laid-on.ts';
import { altered, atLevel, demoDraft } from '../demo-versions.ts';

/** 12 degrees about the origin, then 40 mm right and 25 mm up. */
const turned: Motion = [Math.cos(0.2), Math.sin(0.2), -Math.sin(0.2), Math.cos(0.2), 40, -25];

const ends = (path: Path): Point[] => path.map(({ to }) => to);
const away = (a: Draft, b: Draft) =>
	Math.max(
		...a.pieces.flatMap((piece, i) => {
			const other = ends(outlineOf(b.pieces[i]));
			return ends(outlineOf(piece)).map(([x, y], k) => Math.hypot(x - other[k][0], y - other[k][1]));
		})
	);

test('a jacket is laid on its waist first, on its other balance lines, or on the nape; sleeves have none of these', () => {
	expect(anchorsOf(demoDraft, demoDraft).map(({ name }) => name)).toEqual([
		'waist line and grain',
		'bust line',
		'hip line',
		'nape'
	]);
});

test.each(['waist', 'nape'])(
	'pieces that were only turned and shifted lie exactly on what they are, on the %s',
	(on) => {
		const body = { ...demoDraft, pieces: demoDraft.pieces.filter(({ limb }) => !limb) };
		const shifted = { ...body, pieces: body.pieces.map((piece) => movePiece(piece, turned)) };
		expect(away(shifted, body)).toBeGreaterThan(20);
		expect(away(laidOn(shifted, body, on), body)).toBeLessThan(1e-9);
	}
);

test('what lies right already stays as it is, to the bit', () => {
	const after = altered(demoDraft, atLevel('side', 'waist', -6.35));
	expect(laidOn(demoDraft, after, 'waist')).toBe(demoDraft);
});

test('where a balance line lies lower now, the old piece is laid with its line on it, not moved sideways', () => {
	const lower = {
		...demoDraft,
		pieces: demoDraft.pieces.map((piece) => ({
			...piece,
			levels: piece.levels.map((level) =>
				'line' in level && level.level === 'waist'
					? { ...level, line: level.line.map(([x, y]): Point => [x, y + 10]) }
					: level
			)
		}))
	};
	const laid = laidOn(demoDraft, lower, 'waist');
	for (const [i, piece] of laid.pieces.entries()) {
		const [x, y] = piece.edges[0].path[0].from;
		const [oldX, oldY] = demoDraft.pieces[i].edges[0].path[0].from;
		expect(x, piece.id).toBeCloseTo(oldX, 9);
		expect(y - oldY, piece.id).toBeCloseTo(piece.limb ? 0 : 10, 9);
	}
	const waist = laid.pieces[0].levels.find(({ level }) => level === 'waist')!;
	const wanted = lower.pieces[0].levels.find(({ level }) => level === 'waist')!;
	expect(levelSpan(laid.pieces[0], waist)!.points[0][1]).toBeCloseTo(
		levelSpan(lower.pieces[0], wanted)!.points[0][1],
		9
	);
});
