import { levelsOf, lineAcross, piecesAcross, seamsOf, undividedName } from '../../../engine/index.ts';
import type { Draft, EndAcross, Piece, PiecesAcross } from '../../../engine/index.ts';
import { inSentence } from '../casing.ts';
import { edgeOf, levelName, listed, seamName, wholeName } from '../feature-names.ts';
import { halfWayUp } from './half-way-up.ts';

/** A line that cloth is folded or slashed beside: a balance line of the body or of a sleeve, or half way up the armhole. */
export interface LineBeside {
	/** As addresses and forms name it: `waist`, `half-way`; of a level that runs in several parts `bust/front`. */
	readonly id: string;
	/** “Waist line”. */
	readonly name: string;
	readonly level: string;
	readonly run: PiecesAcross;
	/** mm above the level on each piece, where that is not asked for. */
	readonly fixed?: ReadonlyMap<Piece, number>;
}

/** One piece as a line crosses it, from the end that comes first along the line. */
export interface Crossed {
	readonly piece: Piece;
	/** Undivided. */
	readonly id: string;
	readonly from: EndAcross;
	readonly to: EndAcross;
	readonly forward: boolean;
	readonly width: number;
	/** mm above the level. */
	readonly height: number;
}

/** Lines are asked for at every step of a form, by what reads it, shows it and tells it: those of one draft are found once. */
const found = new WeakMap<Draft, readonly LineBeside[]>();

/** Every line of a draft that can be folded or slashed beside, in the order of its levels. */
export function linesAcross(draft: Draft): readonly LineBeside[] {
	const known = found.get(draft);
	if (known) return known;
	const lines = linesOf(draft);
	found.set(draft, lines);
	return lines;
}

function linesOf(draft: Draft): readonly LineBeside[] {
	const lines = levelsOf(draft).flatMap((level): readonly LineBeside[] => {
		const runs = piecesAcross(draft, level);
		return runs.map((run, i) => ({
			id: i === 0 ? level : `${level}/${undividedName(run.pieces[0].piece.id)}`,
			name: levelName(level),
			level,
			run
		}));
	});
	const half = lines
		.map((line) => ({ ...line, fixed: halfWayUp(draft, line.level, line.run) }))
		.find(({ fixed }) => fixed.size > 0);
	return half ? [...lines, { ...half, id: 'half-way', name: 'Half way between underarm and neck' }] : lines;
}

export function findLine(draft: Draft, id: string): LineBeside | undefined {
	return linesAcross(draft).find((line) => line.id === id);
}

/** “back, side back, under-arm and front” */
export function piecesNote({ run, fixed }: LineBeside): string {
	const pieces = run.pieces.filter(({ piece }) => !fixed || fixed.has(piece));
	return listed(pieces.map(({ piece }) => inSentence(wholeName(piece))));
}

/** The pieces that the line `height` mm above its level crosses, in order along it. */
export function crossedBy({ level, run, fixed }: LineBeside, height: number): readonly Crossed[] {
	return run.pieces.flatMap(({ piece, forward }) => {
		const own = fixed ? fixed.get(piece) : height;
		const line = own === undefined ? undefined : lineAcross(piece, level, own);
		if (!line) return [];
		const [from, to] = forward ? line.ends : [line.ends[1], line.ends[0]];
		return [{ piece, id: undividedName(piece.id), from, to, forward, width: line.width, height: own! }];
	});
}

/** “the centre-back seam”, “the front edge”: where a line ends, as sentences say it. */
export function endInSentence(draft: Draft, edgeName: string): string {
	const found = edgeOf(draft, edgeName);
	if (!found) return `the ${inSentence(undividedName(edgeName).split('/').pop() ?? '')}`;
	const [sewn] = seamsOf(draft, `${found.piece.id}/${found.edge.id}`);
	const name = sewn ? seamName(draft, sewn.seam.id) : wholeName(found.edge);
	return `the ${inSentence(name)}`;
}
