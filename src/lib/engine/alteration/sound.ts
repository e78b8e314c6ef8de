/** What every altered piece must still be, whatever was done to it: the last look before an alteration counts as carried. */
import { joined } from '../geometry/accuracy.ts';
import { signedArea } from '../geometry/area.ts';
import { pathLength, pointAt } from '../geometry/path.ts';
import { cross, subtract } from '../geometry/point.ts';
import { outlineOf } from '../draft/outline.ts';
import { outlineCrossing } from '../draft/outline-crossing.ts';
import type { Draft, Edge, Piece } from '../draft/types.ts';
import { refused } from './refusal.ts';
import { edgeInWords, lower } from './ride-edges.ts';
import type { Outcome } from './types.ts';

/** An outline that goes round less than this holds no cloth, mm². */
const noCloth = 1;

/**
 * Why the draft cannot be handed on, or undefined: a piece that `before` did not hold and whose outline is turned inside out or crosses
 * itself, whose mouths and pleats overlap or leave their edge, or a dart that points out of the cloth.
 */
export function unsound(before: Draft, after: Draft): Extract<Outcome, { refused: unknown }> | undefined {
	for (const piece of after.pieces) {
		if (before.pieces.includes(piece)) continue;
		if (signedArea(outlineOf(piece)) < noCloth)
			return refused('inside-out', `Nothing would be left of the ${lower(piece.name)}. Take away less.`);
		const crossing = outlineCrossing(piece);
		if (crossing) return crossed(piece, crossing);
		for (const edge of piece.edges) {
			const problem = mouthProblem(piece, edge);
			if (problem) return problem;
		}
	}
	return undefined;
}

function crossed(piece: Piece, [one, other]: readonly [Edge, Edge]): Extract<Outcome, { refused: unknown }> {
	const what =
		one === other
			? `its ${lower(one.name)} would cross itself`
			: `its ${lower(one.name)} would cross its ${lower(other.name)}`;
	return refused(
		'crosses',
		`The ${lower(piece.name)} could not be cut any more: ${what}. Do less there, or do it elsewhere.`
	);
}

function mouthProblem(piece: Piece, edge: Edge): Extract<Outcome, { refused: unknown }> | undefined {
	if (piece.darts.length + piece.pleats.length === 0) return undefined;
	const darts = piece.darts.filter((one) => one.edge === edge.id);
	const pleats = piece.pleats.filter((one) => one.edge === edge.id);
	if (darts.length + pleats.length === 0) return undefined;
	const where = edgeInWords(piece, edge.id);
	const length = pathLength(edge.path);
	const mouths = [
		...darts.map(({ name, from, to }) => ({ name, from, to })),
		...pleats.map(({ from, to }) => ({ name: 'a pleat', from, to }))
	].sort((a, b) => a.from - b.from);
	for (let i = 0; i < mouths.length; i++) {
		const mouth = mouths[i];
		if (mouth.to - mouth.from <= joined || mouth.from < -joined || mouth.to > length + joined)
			return refused(
				'mouth-lost',
				`Nothing would be left of the mouth of ${mouth.name} on ${where}. Move less there, or move the mouth first.`
			);
		if (i > 0 && mouth.from < mouths[i - 1].to - joined)
			return refused(
				'mouths-meet',
				`${mouths[i - 1].name} and ${mouth.name} would overlap on ${where}. Make one of them narrower, or place it farther away.`
			);
	}
	const bad = darts.find(({ from, to, point }) => {
		const start = pointAt(edge.path, from);
		return cross(subtract(pointAt(edge.path, to), start), subtract(point, start)) <= 0;
	});
	if (bad)
		return refused(
			'dart-point-outside',
			`${bad.name} would point out of ${where}. Move less there, or move the dart first.`
		);
	const flat = pleats.find(({ from, to, turned }) => turned >= to - from);
	return (
		flat &&
		refused(
			'mouth-lost',
			`A pleat on ${where} would have no cloth left to turn. Move less there, or lay the pleat anew.`
		)
	);
}
