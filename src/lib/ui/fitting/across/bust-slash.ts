import { findPlace, lineAcross, plumbBelow, seamsOf, undividedName } from '../../../engine/index.ts';
import type { Draft, Edge, EdgePlace, Piece, Place } from '../../../engine/index.ts';
import { inch, type Unit } from '../../../measure/units.ts';
import { armholeEdges } from '../armhole-edges.ts';
import { edgeName, pieceOf } from '../feature-names.ts';
import { placeKey } from '../place/place-key.ts';
import { placeName } from '../place/place-words.ts';
import { furtherPlaces, type PlaceOffered } from '../place/places-offered.ts';

/** Where the lines of a slash for the bust can run on one piece. */
export interface BustLinesOffered {
	readonly hinges: readonly PlaceOffered[];
	readonly hinge: EdgePlace;
	/** “3/4″ below the notch”. */
	readonly hingeName: string;
	readonly sides: readonly PlaceOffered[];
	readonly side: EdgePlace;
	readonly sideName: string;
	readonly base: EdgePlace;
	/** Where the centre is cut, so that it is lengthened with the rest; absent where it is cut on the fold. */
	readonly centre?: EdgePlace;
	/** “Front armhole”, “Front side”. */
	readonly names: { readonly hinge: string; readonly side: string };
}

/** Short of the armhole notch by this: The Dressmaker, part 7. */
const shortOfNotch = 0.75 * inch;

/** Pieces that have a bust point, an armhole, a side to open a dart at, and an edge below. */
export function bustPieces(draft: Draft): readonly Piece[] {
	return draft.pieces.filter((piece) => bustLinesOffered(draft, undividedName(piece.id), 'in') !== undefined);
}

/**
 * The usual lines on a piece: from the bust point plumb down to the edge below, to within 3/4″ of the armhole notch, and level to
 * the side. Undefined where the piece has no bust point or lacks one of the edges.
 */
export function bustLinesOffered(draft: Draft, id: string, unit: Unit): BustLinesOffered | undefined {
	const piece = pieceOf(draft, id);
	const point = piece?.marks.find((mark) => undividedName(mark.id) === 'bust-point')?.at;
	if (!piece || !point) return undefined;
	const armholes = armholeEdges(draft);
	const armhole = piece.edges.find((edge) => armholes.has(`${piece.id}/${edge.id}`));
	const level = piece.levels.find((one) => lineAcross(piece, one.level, 0) && one.level === 'bust') ?? piece.levels[0];
	const across = level && lineAcross(piece, level.level, 0);
	if (!armhole || !across) return undefined;
	const isCentre = (edge: Edge) =>
		edge.kind !== 'seam' || seamsOf(draft, `${piece.id}/${edge.id}`).some(({ seam }) => seam.b === 'mirror');
	const [side, centre] = isCentre(across.ends[0].edge) ? [across.ends[1], across.ends[0]] : across.ends;
	if (isCentre(side.edge) || side.edge === armhole) return undefined;
	const base = plumbBelow(piece, point);
	if (!base) return undefined;
	const own = (edge: Edge) => undividedName(`${piece.id}/${edge.id}`);
	const along = (edge: Edge) => ({ of: 'edge', id: own(edge) }) as const;
	const hinge = hingeOn(draft, piece, armhole);
	const { edge: _, ...dart } = side.place;
	return {
		hinges: furtherPlaces(draft, along(armhole), [], unit),
		hinge: { edge: own(armhole), ...hinge },
		hingeName: placeName(draft, along(armhole), hinge, unit),
		sides: furtherPlaces(draft, along(side.edge), [], unit),
		side: side.place,
		sideName: placeName(draft, along(side.edge), dart, unit),
		base,
		...(centre.edge.kind !== 'fold' && { centre: centre.place }),
		names: { hinge: edgeName(draft, own(armhole)), side: edgeName(draft, own(side.edge)) }
	};
}

/** 3/4″ below the notch of the armhole, or its middle. */
function hingeOn(draft: Draft, piece: Piece, armhole: Edge): Place {
	const notch = piece.notches.find(({ edge }) => edge === armhole.id);
	if (!notch) return { fraction: 0.5 };
	const [start, finish] = [armhole.path[0].from, armhole.path[armhole.path.length - 1].to];
	const place: Place = {
		notch: undividedName(notch.id),
		offset: finish[1] > start[1] ? shortOfNotch : -shortOfNotch
	};
	return 'problem' in findPlace(draft, `${piece.id}/${armhole.id}`, place) ? { fraction: 0.5 } : place;
}

/** A place of an edge without the edge, as the fields of a form name it. */
export function bareKey({ edge: _, ...place }: EdgePlace): string {
	return placeKey(place);
}
