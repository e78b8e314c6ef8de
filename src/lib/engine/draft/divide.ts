import type { Draft, Piece, RunEdge, Seam } from './types.ts';
import { nameOf, findPiece, splitName } from './find.ts';
import { opened } from './open-fold.ts';
import { seamsOf } from './seam.ts';
import { sideOfName, undividedName } from './undivided-name.ts';

type Half = 'left' | 'right';

/**
 * A draft in which the pieces named exist for each side of the wearer. A pair piece becomes `front@right` and `front@left`, both
 * in the right half's coordinates; a piece on the fold is opened to one whole piece with `side@right` and `side@left`. Seams that
 * touch one become `seam@right` and `seam@left`, walked the same way as before, either of which may name an undivided piece; a
 * mirror seam becomes right half to left half under its own name, and all its pieces are divided with it. Mates of notches
 * follow; a notch of an undivided piece keeps to the right half. Thrown: no such piece, or one that is cut single.
 */
export function divide(draft: Draft, pieceIds: readonly string[]): Draft {
	const divided = withCentrePartners(draft, pieceIds);
	const naming = namingOf(draft, divided);
	const pieces = draft.pieces.flatMap((piece): Piece[] => {
		if (!divided.has(piece.id)) return [withMates(piece, naming, piece.side === 'left' ? 'left' : 'right')];
		if (piece.cut === 'fold') return [withMates(opened(piece), naming, 'right')];
		const [right, left] = (['right', 'left'] as const).map((half) => withMates(halfOf(piece, half), naming, half));
		return [
			withCentreMates(draft, piece, right, `${piece.id}@left`),
			withCentreMates(draft, piece, left, `${piece.id}@right`)
		];
	});
	return { ...draft, pieces, seams: draft.seams.flatMap((seam) => dividedSeam(seam, naming)) };
}

/** The pieces named, and those that share a centre seam with one of them: an edge is on one side of a seam only. */
function withCentrePartners(draft: Draft, pieceIds: readonly string[]): ReadonlySet<string> {
	const divided = new Set(pieceIds);
	for (const id of divided) {
		const piece = findPiece(draft, id);
		if (piece === undefined) throw new Error(`There is no piece ${id} to divide.`);
		if (piece.cut === 'single') throw new Error(`${id} is cut single: it has no halves.`);
		for (const edge of piece.edges) {
			for (const { seam } of seamsOf(draft, nameOf(piece, edge.id))) {
				// A set visits what is added to it while it is walked.
				if (seam.b === 'mirror') for (const partner of seam.a) divided.add(splitName(partner.edge).piece);
			}
		}
	}
	return divided;
}

interface Naming {
	isDivided(name: string): boolean;
	/** The name of an edge or notch on one half; one that is not divided now keeps its name. */
	half(name: string, half: Half): string;
	/** On the left half of an opened piece edges run the other way. */
	isReversed(name: string, half: Half): boolean;
}

function namingOf(draft: Draft, divided: ReadonlySet<string>): Naming {
	const cutOf = (name: string) => {
		const { piece } = splitName(name);
		return divided.has(piece) ? findPiece(draft, piece)?.cut : undefined;
	};
	return {
		isDivided: (name) => cutOf(name) !== undefined,
		half: (name, half) => {
			const { piece, id } = splitName(name);
			const cut = cutOf(name);
			if (cut === undefined) return name;
			return cut === 'fold' ? nameOf(piece, `${id}@${half}`) : nameOf(`${piece}@${half}`, id);
		},
		isReversed: (name, half) => cutOf(name) === 'fold' && half === 'left'
	};
}

function halfOf(piece: Piece, half: Half): Piece {
	return { ...piece, id: `${piece.id}@${half}`, name: `${piece.name}, ${half}`, cut: 'single', side: half };
}

/** The piece with its notches' mates named as they now are: on the notch's own side of the wearer, else on `otherwise`. */
function withMates(piece: Piece, naming: Naming, otherwise: Half): Piece {
	let changed = false;
	const notches = piece.notches.map((notch) => {
		// Across a centre seam it meets its own other half, and keeps to that.
		if (notch.mate === undefined || isOtherHalf(notch.mate, nameOf(piece, notch.id))) return notch;
		const own = sideOfName(piece.id) ?? sideOfName(notch.id);
		const divided = naming.half(notch.mate, own ?? otherwise);
		// A mate that was divided before its partner was named on the right half.
		const mate = own === undefined ? divided : divided.replace(/@(left|right)(?=\/|$)/, `@${own}`);
		if (mate === notch.mate) return notch;
		changed = true;
		return { ...notch, mate };
	});
	return changed ? { ...piece, notches } : piece;
}

function isOtherHalf(mate: string, own: string): boolean {
	return mate !== own && undividedName(mate) === undividedName(own);
}

/** Notches on a centre seam met themselves; now they meet those of the other half. */
function withCentreMates(draft: Draft, piece: Piece, half: Piece, otherId: string): Piece {
	const notches = half.notches.map((notch, i) => {
		const before = piece.notches[i].mate;
		if (before !== undefined && before !== nameOf(piece, notch.id)) return notch;
		const onCentre = seamsOf(draft, nameOf(piece, notch.edge)).some(({ seam }) => seam.b === 'mirror');
		return onCentre ? { ...notch, mate: nameOf(otherId, notch.id) } : notch;
	});
	return { ...half, notches };
}

function dividedSeam(seam: Seam, naming: Naming): Seam[] {
	const names = [...seam.a, ...(seam.b === 'mirror' ? [] : seam.b)].map(({ edge }) => edge);
	if (!names.some((name) => naming.isDivided(name))) return [seam];
	const runOn = (run: readonly RunEdge[], half: Half): RunEdge[] =>
		run.map(({ edge, reversed }) => ({
			edge: naming.half(edge, half),
			reversed: naming.isReversed(edge, half) ? !reversed : reversed
		}));
	const { a, b } = seam;
	if (b === 'mirror') return [{ ...seam, a: runOn(a, 'right'), b: runOn(a, 'left') }];
	const sides = new Set([seam.id, ...names].flatMap((name) => sideOfName(name) ?? []));
	if (sides.size === 1) {
		const [half] = sides;
		return [{ ...seam, a: runOn(a, half), b: runOn(b, half) }];
	}
	return (['right', 'left'] as const).map((half) => ({
		...seam,
		id: `${seam.id}@${half}`,
		name: `${seam.name}, ${half}`,
		a: runOn(a, half),
		b: runOn(b, half)
	}));
}
