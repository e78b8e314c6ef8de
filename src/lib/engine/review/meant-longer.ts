import { signedArea } from '../geometry/area.ts';
import { pathEnd, pathStart } from '../geometry/path.ts';
import { line } from '../geometry/segment.ts';
import { seamRun, type SeamSide } from '../draft/seam.ts';
import type { Draft, Seam } from '../draft/types.ts';
import type { Bands } from './bands.ts';
import type { SeamWalk } from './walk.ts';
import { isCalled } from './words.ts';

/**
 * Which side of an eased seam (a curved side-back seam, a back shoulder) is meant to be the longer: the one that its fullness
 * says, else the one that is longer in the base draft, else the one that the bands name. Undefined for seams that are sewn
 * edge to edge.
 */
export function meantLonger(draft: Draft, seam: Seam, base: SeamWalk | undefined, bands: Bands): SeamSide | undefined {
	const eased = bands.seamLength.easedSeams.find(({ called }) => isCalled(seam, called));
	if (!eased || seam.b === 'mirror') return undefined;
	if (seam.ease !== 0) return seam.ease > 0 ? 'b' : 'a';
	const before = base?.difference ?? 0;
	if (Math.abs(before) > bands.seamLength.silent) return before > 0 ? 'b' : 'a';
	if (eased.longer === 'rounder') {
		const [a, b] = [roundness(draft, seam, 'a'), roundness(draft, seam, 'b')];
		return a === b ? undefined : b > a ? 'b' : 'a';
	}
	const { piece: word } = eased.longer;
	const holds = (side: SeamSide) => seamRun(draft, seam, side).some(({ piece }) => isCalled(piece, word));
	if (holds('a') === holds('b')) return undefined;
	return holds('b') ? 'b' : 'a';
}

/** How far a side bulges outward, mm² between its edges and their chords. */
function roundness(draft: Draft, seam: Seam, side: SeamSide): number {
	return seamRun(draft, seam, side).reduce(
		(sum, { edge }) => sum + signedArea([...edge.path, line(pathEnd(edge.path), pathStart(edge.path))]),
		0
	);
}
