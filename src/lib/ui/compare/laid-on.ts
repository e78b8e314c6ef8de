import { findPiece, levelSpan, movePiece, undividedName } from '../../engine/index.ts';
import type { Draft, Motion, Piece, Point } from '../../engine/index.ts';

/** What two versions are laid on one another by: a balance line that both have, or the point where their outlines begin. */
export interface Anchor {
	readonly id: string;
	readonly name: string;
}

/** Where the outline of a piece begins: at a back, its nape. */
const outlineStart: Anchor = { id: 'nape', name: 'nape' };

/** The anchors that two drafts share, the waist first, for it is what bodies are balanced on. */
export function anchorsOf(before: Draft, after: Draft): readonly Anchor[] {
	const levels = bodyLevels(after).filter((level) => bodyLevels(before).includes(level));
	const ordered = [...levels.filter((level) => level === 'waist'), ...levels.filter((level) => level !== 'waist')];
	const words = (level: string) => `${level.replaceAll('-', ' ')} line`;
	return [
		...ordered.map((level, i) => ({ id: level, name: i === 0 ? `${words(level)} and grain` : words(level) })),
		outlineStart
	];
}

function bodyLevels(draft: Draft): readonly string[] {
	return [
		...new Set(draft.pieces.filter(({ limb }) => !limb).flatMap((piece) => piece.levels.map(({ level }) => level)))
	];
}

/**
 * The draft before with each piece laid over what it is in the draft after: grain on grain, and along it the balance line on
 * itself, or outline start on outline start. A piece that does not have the line, or has gone, lies where it was drawn; one
 * that lies right already is left as it is, to the bit.
 */
export function laidOn(before: Draft, after: Draft, anchor: string): Draft {
	let moved = false;
	const pieces = before.pieces.map((piece) => {
		const now = answering(after, piece.id);
		const motion = now && motionOnto(piece, now, anchor);
		if (!motion) return piece;
		moved = true;
		return movePiece(piece, motion);
	});
	return moved ? { ...before, pieces } : before;
}

function answering(draft: Draft, id: string): Piece | undefined {
	return (
		findPiece(draft, id) ??
		findPiece(draft, undividedName(id)) ??
		draft.pieces.find((piece) => undividedName(piece.id) === id)
	);
}

/** Less than this is no move, mm (and, for turns, mm at a metre). */
const least = 1e-6;

function motionOnto(before: Piece, after: Piece, anchor: string): Motion | undefined {
	const [from, to] = [anchorPoint(before, anchor), anchorPoint(after, anchor)];
	if (!from || !to) return undefined;
	const turn = before.grain && after.grain ? direction(after.grain) - direction(before.grain) : 0;
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	if (Math.hypot(to[0] - from[0], to[1] - from[1]) < least && Math.abs(sin) * 1000 < least) return undefined;
	return [cos, sin, -sin, cos, to[0] - (cos * from[0] - sin * from[1]), to[1] - (sin * from[0] + cos * from[1])];
}

function direction([from, to]: readonly [Point, Point]): number {
	return Math.atan2(to[1] - from[1], to[0] - from[0]);
}

function anchorPoint(piece: Piece, anchor: string): Point | undefined {
	if (anchor === outlineStart.id) return piece.edges[0].path[0].from;
	const part = piece.levels.find(({ level }) => level === anchor);
	const points = part && levelSpan(piece, part)?.points;
	if (!points) return undefined;
	const [first, last] = [points[0], points[points.length - 1]];
	const middle: Point = [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
	return piece.grain ? (crossing(piece.grain, [first, last]) ?? middle) : middle;
}

/** Where two lines through two points each cross, if they do not run side by side. */
function crossing([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): Point | undefined {
	const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
	const [vx, vy] = [d[0] - c[0], d[1] - c[1]];
	const across = ux * vy - uy * vx;
	if (Math.abs(across) < 1e-3 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return undefined;
	const t = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / across;
	return [a[0] + t * ux, a[1] + t * uy];
}
