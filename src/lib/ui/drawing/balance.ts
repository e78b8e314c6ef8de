import { levelSpan } from './engine.ts';
import type { Point } from './engine.ts';
import { moved } from './frame.ts';
import type { PlacedOutline } from './laid-pieces.ts';
import { pointsText } from './path-text.ts';
import type { DrawnPiece } from './piece-scene.ts';
import { levelName } from './piece-words.ts';
import type { BalanceLine } from './scene.ts';

/**
 * The balance lines as they run across the table, from piece to piece at the true height of each, one to a level and row;
 * their names stand over them at the left edge. Limbs have their own lines and names, on and beside the piece alone.
 */
export function balanceAcross(
	drawn: readonly DrawnPiece[],
	placed: readonly PlacedOutline[],
	width: number
): readonly BalanceLine[] {
	const lines: BalanceLine[] = [];
	for (const row of new Set(placed.filter(({ limb }) => !limb).map(({ row }) => row))) {
		const members = placed.filter((one) => one.row === row && !one.limb);
		const levels = new Set(members.flatMap(({ piece }) => piece.levels.map(({ level }) => level)));
		for (const level of levels) {
			const ends = members.flatMap((member) => spanEnds(member, level)).sort((a, b) => a[0] - b[0]);
			if (ends.length === 0) continue;
			const line: Point[] = [[0, ends[0][1]], ...ends, [width, ends[ends.length - 1][1]]];
			lines.push({ level, name: levelName(level), path: pointsText(line), label: [10, ends[0][1] - 6] });
		}
	}
	for (const { placed: one } of drawn) {
		if (!one.piece.limb) continue;
		const box = placed.find(({ piece }) => piece === one.piece);
		if (!box?.limb) continue;
		for (const level of one.piece.levels) {
			const ends = spanEnds(box, level.level);
			if (ends.length < 2) continue;
			const top = ends.reduce((a, b) => (a[1] < b[1] ? a : b));
			lines.push({ level: level.level, name: levelName(level.level), path: '', label: [top[0] + 6, box.box.top - 5] });
		}
	}
	return lines;
}

function spanEnds({ piece, motion }: PlacedOutline, level: string): Point[] {
	return piece.levels.flatMap((part) => {
		if (part.level !== level) return [];
		const span = levelSpan(piece, part)?.points;
		const edge = 'edge' in part ? piece.edges.find(({ id }) => id === part.edge) : undefined;
		const line = span ?? (edge && [edge.path[0].from, edge.path[edge.path.length - 1].to]);
		return line ? moved(motion, [line[0], line[line.length - 1]]) : [];
	});
}
