import { dartLegs, foldDartLegs, movePath, movePoint, pathLength, pointAt, reversedPath } from './engine.ts';
import type { Motion, Path, Piece, Point } from './engine.ts';
import { past, strokeEvery } from './bands.ts';
import { pathText, pointsText, strokesText } from './path-text.ts';
import type { DartScene } from './scene.ts';
import { between, minus, plus, times, unit } from './vectors.ts';

/** A dart of either sort as it lies in the drawing, px: two legs that run the same way, and the fold between them. */
export interface LaidDart {
	readonly id: string;
	/** “Front, First dart”. */
	readonly name: string;
	readonly one: Path;
	readonly other: Path;
	readonly fold: readonly [Point, Point];
	/** Where an awl goes through. */
	readonly awls: readonly Point[];
}

export function laidDarts(piece: Piece, motion: Motion): readonly LaidDart[] {
	const open = piece.darts.map((dart) => {
		const { from, to, foldAt } = dartLegs(piece, dart);
		const point = movePoint(motion, dart.point);
		return {
			id: dart.id,
			name: `${piece.name}, ${dart.name}`,
			one: movePath(motion, from),
			other: movePath(motion, to),
			fold: [movePoint(motion, foldAt), point] as const,
			awls: [point]
		};
	});
	const inner = piece.foldDarts.map((dart) => {
		const { left, right } = foldDartLegs(dart);
		const ends = [movePoint(motion, dart.ends[0]), movePoint(motion, dart.ends[1])] as const;
		return {
			id: dart.id,
			name: `${piece.name}, ${dart.name}`,
			one: movePath(motion, left),
			other: movePath(motion, right),
			fold: ends,
			awls: ends
		};
	});
	return [...open, ...inner];
}

/** The darts of a piece, each told from what it was before; those that are gone last. Without `before` all are as they were. */
export function dartScenes(now: readonly LaidDart[], before?: readonly LaidDart[]): readonly DartScene[] {
	const was = new Map((before ?? now).map((dart) => [plainId(dart.id), dart]));
	const present = now.map((dart): DartScene => {
		const old = was.get(plainId(dart.id));
		if (!old) return { ...drawn(dart, 'new'), strokes: acrossLegs(dart, 'hatch') };
		if (legsText(old) === legsText(dart)) return drawn(dart, 'as it was');
		return { ...drawn(dart, 'changed'), before: legsText(old) };
	});
	const still = new Set(now.map((dart) => plainId(dart.id)));
	const gone = (before ?? []).filter((dart) => !still.has(plainId(dart.id)));
	return [...present, ...gone.map((dart) => ({ ...drawn(dart, 'gone'), strokes: acrossLegs(dart, 'zigzag') }))];
}

/** Whether two darts are one and the same, in a piece that may have been divided since. */
export const sameDart = (a: LaidDart, b: LaidDart): boolean => plainId(a.id) === plainId(b.id);

/** A piece divided into right and left keeps its darts' names, with the side added. */
const plainId = (id: string): string => id.replace(/@(left|right)$/, '');

const legsText = (dart: LaidDart): string => pathText(dart.one) + pathText(dart.other);

function drawn(dart: LaidDart, state: DartScene['state']): DartScene {
	const back = pathText(reversedPath(dart.other)).replace('M', 'L');
	return {
		id: dart.id,
		name: dart.name,
		state,
		area: `${pathText(dart.one)}${back}Z`,
		legs: legsText(dart),
		crease: pointsText(dart.fold),
		awls: dart.awls
	};
}

/** Hatch or zigzag from leg to leg, the same share of the way along both. */
function acrossLegs({ one, other }: LaidDart, code: 'hatch' | 'zigzag'): string {
	const [a, b] = [pathLength(one), pathLength(other)];
	const steps = Math.floor(Math.max(a, b) / strokeEvery);
	const places = Array.from({ length: Math.max(0, steps) }, (_, i) => (i + 0.5) / steps);
	if (code === 'zigzag') {
		return pointsText(places.map((t, i) => (i % 2 === 0 ? pointAt(one, t * a) : pointAt(other, t * b))));
	}
	return strokesText(
		places.flatMap((t): [Point, Point][] => {
			const from = pointAt(one, t * a);
			const slant = Math.min(1, t + 2.2 / Math.max(b, 1));
			const to = pointAt(other, slant * b);
			if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 1.5) return [];
			const along = times(unit(minus(to, from)), past / 2);
			return [[minus(from, along), plus(to, along)]];
		})
	);
}

/** The middle of a dart, where its pin goes through: two fifths of the way in from its mouth, half way along a fold dart. */
export function dartMiddle(dart: LaidDart): Point {
	return between(dart.fold[0], dart.fold[1], dart.awls.length > 1 ? 0.5 : 0.4);
}
