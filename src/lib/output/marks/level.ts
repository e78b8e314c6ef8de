import { levelSpan } from '../../engine/index.ts';
import type { Path, Piece, Point } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { tacks } from '../pens.ts';
import { through } from '../plane.ts';
import { asLine } from '../words.ts';
import type { Words } from '../words.ts';
import { nothing, together } from './drawn.ts';
import type { Drawn } from './drawn.ts';

const sizes = [4, 3.2, 3];

/**
 * The balance lines of a piece: tacks right across it and the name of each. One that lies on an edge has its name alone, along
 * the edge; parts of a level that run on into the same line are drawn once.
 */
export function drawLevels(piece: Piece, move: (path: Path) => Path): Drawn {
	const seen: { readonly level: string; readonly start: Point }[] = [];
	return together(
		piece.levels.map((part, i) => {
			if ('edge' in part) {
				const edge = piece.edges.find(({ id }) => id === part.edge);
				return edge ? { ...nothing, words: [nameWords(part.level, move(edge.path))] } : nothing;
			}
			const span = levelSpan(piece, part);
			if (!span || seen.some(({ level, start }) => level === part.level && isNear(start, span.points[0])))
				return nothing;
			seen.push({ level: part.level, start: span.points[0] });
			const path = move(through(...span.points));
			const id = nameId('level', piece.id, part.level, String(i + 1));
			return {
				parts: [{ kind: 'dots', id, path, ...tacks }],
				lines: [asLine(path)],
				words: [nameWords(part.level, path)]
			};
		})
	);
}

function isNear(a: Point, b: Point): boolean {
	return Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.01;
}

/** `waist` is called the waist line. */
export function levelName(level: string): string {
	const words = level.replaceAll('-', ' ');
	return words.endsWith('line') ? words : `${words} line`;
}

function nameWords(level: string, along: Path): Words {
	const shares = [0.8, 0.2, 0.74, 0.26, 0.68, 0.32, 0.62, 0.38, 0.56, 0.44, 0.5];
	return { text: levelName(level), sizes, along, shares };
}
