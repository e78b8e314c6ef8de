import { dartLegs, foldDartLegs } from '../../engine/index.ts';
import type { Dart, FoldDart, Path, Piece, Point } from '../../engine/index.ts';
import { nameId } from '../name-id.ts';
import { pens } from '../pens.ts';
import { ring, through } from '../plane.ts';
import type { Primitive } from '../primitive.ts';
import { asLine } from '../words.ts';
import type { Drawn } from './drawn.ts';

/** Where an awl goes through: radius of the ring, mm. */
const awl = 1.4;

/**
 * A dart: its two legs, the crease it is pressed on, and a ring where an awl goes through at its point. Drawn `scale` times
 * smaller than true, the ring keeps its size on the paper.
 */
export function drawDart(piece: Piece, dart: Dart, move: (path: Path) => Path, scale = 1): Drawn {
	const legs = dartLegs(piece, dart);
	return drawLegs(
		nameId('dart', piece.id, dart.id),
		[legs.from, legs.to],
		through(legs.foldAt, dart.point),
		[dart.point],
		move,
		scale
	);
}

/** A double-pointed dart: as a dart, with a ring at both points. */
export function drawFoldDart(piece: Piece, dart: FoldDart, move: (path: Path) => Path, scale = 1): Drawn {
	const { left, right } = foldDartLegs(dart);
	return drawLegs(nameId('dart', piece.id, dart.id), [left, right], through(...dart.ends), dart.ends, move, scale);
}

function drawLegs(
	id: string,
	legs: readonly [Path, Path],
	crease: Path,
	points: readonly Point[],
	move: (path: Path) => Path,
	scale: number
): Drawn {
	const drawn = [...legs, crease].map(move);
	const rings = points.map((point) => move(ring(point, awl * scale)));
	const parts: Primitive[] = [
		{ kind: 'line', id: `${id}.crease`, path: drawn[2], pen: pens.crease },
		{ kind: 'line', id: `${id}.one-leg`, path: drawn[0], pen: pens.dartLeg },
		{ kind: 'line', id: `${id}.other-leg`, path: drawn[1], pen: pens.dartLeg },
		...rings.flatMap((path): Primitive[] => [
			{ kind: 'tone', path, black: 0 },
			{ kind: 'line', path, closed: true, pen: pens.awl }
		])
	];
	return { parts, lines: [...drawn, ...rings].map(asLine), words: [] };
}
