import {
	findInnerPoint,
	findPlaceOnSeam,
	levelsOf,
	lineAcross,
	placeBeside,
	seamsOf,
	undividedName
} from '../../../engine/index.ts';
import type { Draft, Edge, EdgePlace, Mark, Piece, Point } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { edgeOf, levelName, pieceOf, seamOf, wholeName } from '../feature-names.ts';
import { placeKey, readPlaceKey } from '../place/place-key.ts';
import { furtherPlaces } from '../place/places-offered.ts';

/** Where marks can be put on a piece, on a seam or along an edge. */

export interface Named {
	readonly value: string;
	readonly label: string;
}

/** Every place of every edge of a piece but its fold, `front-edge|level:bust`: “Front edge, bust line”. */
export function edgePlacesOffered(draft: Draft, piece: Piece, unit: Unit): readonly Named[] {
	const names = new Set<string>();
	return piece.edges.flatMap((edge) => {
		const id = undividedName(edge.id);
		if (names.has(id)) return [];
		names.add(id);
		return furtherPlaces(draft, { of: 'edge', id: `${undividedName(piece.id)}/${id}` }, [], unit).map(
			({ key, name }) => ({
				value: `${id}|${key}`,
				label: `${wholeName({ id: edge.id, name: edge.name })}: ${name.toLowerCase()}`
			})
		);
	});
}

/** The edge and the place that such a value says; undefined for any other text. */
export function readEdgePlace(piece: Piece, value: string): EdgePlace | undefined {
	const [id, key] = value.split('|');
	const place = readPlaceKey(key ?? '');
	const edge = piece.edges.find((one) => undividedName(one.id) === id);
	return edge && place && { edge: `${undividedName(piece.id)}/${id}`, ...place };
}

export function edgePlaceValue({ edge, ...place }: EdgePlace): string {
	return `${edge.split('/')[1]}|${placeKey(place)}`;
}

export function bustPointOf(piece: Piece): Mark | undefined {
	return piece.marks.find(({ id }) => undividedName(id) === 'bust-point');
}

/** The two sides that a point can be moved to on its piece: what it is towards, and which way that is as the piece lies. */
export interface Sideways {
	/** “front edge” */
	readonly centre: string;
	/** “side” */
	readonly side: string;
	/** 1 where the centre lies to the right as the piece lies. */
	readonly way: 1 | -1;
}

/** Towards the centre and towards the side of a piece; the edges that its first level ends on. */
export function sidewaysOf(draft: Draft, piece: Piece): Sideways | undefined {
	const ends = levelsOf(draft)
		.map((level) => lineAcross(piece, level, 0)?.ends)
		.find((one) => one !== undefined);
	if (!ends) return undefined;
	const isCentre = ({ edge }: { readonly edge: Edge }) =>
		edge.kind !== 'seam' || seamsOf(draft, `${piece.id}/${edge.id}`).some(({ seam }) => seam.b === 'mirror');
	const way = isCentre(ends[0]) && !isCentre(ends[1]) ? -1 : 1;
	const [centre, side] = way === 1 ? [ends[1], ends[0]] : ends;
	const name = ({ edge }: { readonly edge: Edge }) => wholeName(edge).toLowerCase();
	return { centre: name(centre), side: name(side), way };
}

/** What can be taken off a piece: its marks and notches, “Bust point”, “Notch on the side: waist line”. */
export function marksOn(piece: Piece): readonly Named[] {
	const marks = piece.marks.map(({ id }) => ({ value: undividedName(id), label: markName(id) }));
	const notches = piece.notches.map(({ id, edge }) => ({
		value: undividedName(id),
		label: `Notch on the ${wholeName(piece.edges.find((one) => one.id === edge)!).toLowerCase()} (${markName(id).toLowerCase()})`
	}));
	return [...marks, ...notches].filter(({ value }, i, all) => all.findIndex((one) => one.value === value) === i);
}

/** “Bust point”, “Buttonhole 3” */
export function markName(id: string): string {
	const words = undividedName(id).replaceAll('-', ' ');
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** An id that none of these pieces has yet: `notch-1`, `notch-2` … */
export function freeMarkId(pieces: readonly Piece[], stem: string): string {
	const taken = new Set(
		pieces.flatMap(({ edges, darts, foldDarts, notches, marks }) =>
			[...edges, ...darts, ...foldDarts, ...notches, ...marks].map(({ id }) => undividedName(id))
		)
	);
	let n = 1;
	while (taken.has(`${stem}-${n}`)) n++;
	return `${stem}-${n}`;
}

/** The same place of a seam on one of its sides, as a place on that side's edge. */
export function onSideOfSeam(draft: Draft, id: string, side: 'a' | 'b', key: string): EdgePlace | { problem: string } {
	const seam = seamOf(draft, id)!;
	const place = readPlaceKey(key)!;
	const found = findPlaceOnSeam(draft, seam.id, side, place);
	if ('problem' in found) return found;
	const { piece, edge } = edgeOf(draft, found.edge)!;
	return placeBeside(piece, edge, 'level' in place ? place.level : '', found.s);
}

/** The piece that an edge is of, of a divided one its right half. */
export function pieceOfEdge(draft: Draft, edge: string): Piece {
	return pieceOf(draft, edge.split('/')[0])!;
}

/** A point so far in from a place on an edge, as it lies on a piece. */
export function pointFrom(draft: Draft, piece: Piece, from: EdgePlace, inward: number): Point | { problem: string } {
	const own = edgeOf(draft, from.edge);
	const name = own ? `${own.piece.id}/${own.edge.id}` : from.edge;
	const found = findInnerPoint(draft, own?.piece.id ?? piece.id, { from: { ...from, edge: name }, in: inward });
	return 'problem' in found ? found : found.point;
}

/** Balance lines that cross an edge, as places: “Bust line”. */
export function levelsAlong(draft: Draft, edge: string, unit: Unit): readonly Named[] {
	return furtherPlaces(draft, { of: 'edge', id: edge }, [], unit)
		.filter(({ place }) => 'level' in place)
		.map(({ key, place }) => ({ value: key, label: 'level' in place ? levelName(place.level) : key }));
}
