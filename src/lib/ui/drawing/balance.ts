import { flatten, levelSpan, movePath, outlineOf } from './engine.ts';
import type { Motion, Path, Piece, Point } from './engine.ts';
import { boxAround, filled, textWidth } from './clearance.ts';
import type { Clearance } from './clearance.ts';
import { moved } from './frame.ts';
import { pointsText } from './path-text.ts';
import { levelName } from './piece-words.ts';
import type { BalanceLine } from './scene.ts';

/** A piece where it lies, as far as balance lines ask. */
export interface Levelled {
	readonly piece: Piece;
	readonly motion: Motion;
	readonly cut?: Path;
	readonly row: number;
	readonly limb: boolean;
}

/**
 * The balance lines as they run across the table, from piece to piece at the true height of each, one to a level and row;
 * their names stand over them at the left edge, or in the middle of the table. Limbs have their own, named where they end.
 */
export function balanceAcross(
	placed: readonly Levelled[],
	width: number,
	named: 'at the left' | 'in the middle' = 'at the left'
): readonly BalanceLine[] {
	const lines: BalanceLine[] = [];
	for (const row of new Set(placed.filter(({ limb }) => !limb).map(({ row }) => row))) {
		const members = placed.filter((one) => one.row === row && !one.limb);
		const levels = new Set(members.flatMap(({ piece }) => piece.levels.map(({ level }) => level)));
		for (const level of levels) {
			const ends = members.flatMap((member) => spanEnds(member, level)).sort((a, b) => a[0] - b[0]);
			if (ends.length === 0) continue;
			const [first, last] = [ends[0], ends[ends.length - 1]];
			const line: Point[] = [[0, first[1]], ...ends, [width, last[1]]];
			const label: Point = named === 'at the left' ? [10, first[1] - 6] : [width / 2, first[1] - 7];
			const anchor = named === 'at the left' ? 'start' : 'middle';
			lines.push({ level, name: levelName(level), path: pointsText(line), label, anchor });
		}
	}
	return [...lines, ...placed.filter(({ limb }) => limb).flatMap(limbLevels)];
}

/** Keeps words and pins off the names of the balance lines. */
export function takeNames(lines: readonly BalanceLine[], clear: Clearance): void {
	for (const { name, label, anchor } of lines) {
		const wide = textWidth(name, 13.5, false);
		const middle: Point = [anchor === 'middle' ? label[0] : label[0] + wide / 2, label[1] - 5];
		clear.take(filled(boxAround(middle, wide, 12)), 4);
	}
}

function limbLevels(one: Levelled): readonly BalanceLine[] {
	const outline = flatten(movePath(one.motion, one.cut ?? outlineOf(one.piece)), 0.3);
	return [...new Set(one.piece.levels.map(({ level }) => level))].flatMap((level) => {
		const ends = spanEnds(one, level);
		if (ends.length < 2) return [];
		const upper = ends.reduce((a, b) => (a[1] < b[1] ? a : b));
		const name = levelName(level);
		const half = textWidth(name, 13.5, false) / 2;
		const top = Math.min(...[-half, -half / 2, 0, half / 2, half].map((aside) => topAt(outline, upper[0] + aside)));
		const label: Point = [upper[0], top - 6];
		return [{ level, name, path: '', label, anchor: 'middle' as const }];
	});
}

/** How far up a closed outline reaches at x; nowhere beside it. */
function topAt(outline: readonly Point[], x: number): number {
	const heights = outline.flatMap((a, i): number[] => {
		const b = outline[(i + 1) % outline.length];
		return a[0] > x === b[0] > x ? [] : [a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1])];
	});
	return Math.min(...heights, ...outline.filter((p) => Math.abs(p[0] - x) < 1).map((p) => p[1]));
}

function spanEnds({ piece, motion }: Levelled, level: string): Point[] {
	return piece.levels.flatMap((part) => {
		if (part.level !== level) return [];
		const span = levelSpan(piece, part)?.points;
		const edge = 'edge' in part ? piece.edges.find(({ id }) => id === part.edge) : undefined;
		const line = span ?? (edge && [edge.path[0].from, edge.path[edge.path.length - 1].to]);
		return line ? moved(motion, [line[0], line[line.length - 1]]) : [];
	});
}
