import { findNotch, findSeam, nameOf, splitName } from '../draft/find.ts';
import { otherSide, seamRun, seamsOf, type SeamSide } from '../draft/seam.ts';
import { toStitched } from '../draft/length.ts';
import { undividedName } from '../draft/undivided-name.ts';
import type { Draft, EdgePlace } from '../draft/types.ts';
import { asAltered, settleId, type Settling } from './settle.ts';

/** Nearer to an end of an edge than this a notch lies on the corner, mm. */
const onCorner = 0.5;

/** Moves a notch along its side of a seam to so many mm from the seam's start; nothing if that lies on another piece. */
export function moveNotchTo(
	code: string,
	draft: Draft,
	seamId: string,
	side: SeamSide,
	notch: string,
	position: number
): Settling[] {
	const to = placeOnSide(draft, seamId, side, splitName(notch).piece, position);
	if (!to) return [];
	const { name, on } = asAltered(notch);
	const { piece, id } = splitName(name);
	return [{ id: settleId(code, notch), kind: 'mark', on, piece, move: { id, to } }];
}

/** Marks a lost notch again where the one that is left falls, if its edge still reaches so far; or takes that one off too. */
export function settleLostNotch(code: string, draft: Draft, lost: string, left: string): Settling[] {
	const { name, on } = asAltered(left);
	const { piece, id } = splitName(name);
	const off: Settling = { id: settleId(code, left, 'off'), kind: 'mark', on, piece, remove: id };
	const at = placeFacing(draft, lost, left);
	if (!at) return [off];
	const anew = asAltered(lost);
	const own = splitName(anew.name);
	const again: Settling = {
		id: settleId(code, lost, 'again'),
		kind: 'mark',
		on: anew.on,
		piece: own.piece,
		notch: { id: own.id, at, mate: name }
	};
	return [again, off];
}

/** Where on the lost notch's piece the notch that is left is met when the seam is walked. */
function placeFacing(draft: Draft, lost: string, left: string): EdgePlace | undefined {
	const found = findNotch(draft, left);
	if (!found) return undefined;
	const edge = nameOf(found.piece, found.edge.id);
	for (const { seam, side } of seamsOf(draft, edge)) {
		if (seam.b === 'mirror') continue;
		const walked = seamRun(draft, seam, side).find(({ name }) => name === edge);
		if (!walked) continue;
		const along = toStitched(found.piece, found.edge, found.notch.at);
		const position = walked.startsAt + (walked.reversed ? walked.length - along : along);
		const place = placeOnSide(draft, seam.id, otherSide(side), splitName(lost).piece, position);
		if (place) return place;
	}
	return undefined;
}

/** A place on one piece's edges of a seam's side, as alterations name it: on the undivided edge, from its own start or finish. */
function placeOnSide(
	draft: Draft,
	seamId: string,
	side: SeamSide,
	pieceId: string,
	position: number
): EdgePlace | undefined {
	const seam = findSeam(draft, seamId);
	for (const { piece, edge, reversed, startsAt, length } of seam ? seamRun(draft, seam, side) : []) {
		const within = position - startsAt;
		if (piece.id !== pieceId || within < onCorner || within > length - onCorner) continue;
		// The left half of a piece opened from the fold is walked the other way than the undivided edge.
		const turned = edge.id.endsWith('@left');
		return {
			edge: undividedName(nameOf(piece, edge.id)),
			end: turned ? 'finish' : 'start',
			offset: reversed ? length - within : within
		};
	}
	return undefined;
}
