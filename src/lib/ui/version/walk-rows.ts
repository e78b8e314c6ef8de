import { findSeam, seamRun, walk } from '../../engine/index.ts';
import type { Draft, Seam } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import { inch } from '../../measure/units.ts';
import type { Unit } from '../../measure/units.ts';

/** One seam as it is walked on the table: both sides, and what comes of laying them together. Lengths in mm. */
export interface WalkRow {
	readonly seam: string;
	readonly name: string;
	readonly a: number;
	readonly b: number;
	/** Mated notches, mm from the seam's start on each side. */
	readonly notches: readonly (readonly [a: number, b: number])[];
	/** “walks”, “1/4″ fullness”, “3/16″ eased in”. */
	readonly verdict: string;
	/** It is asked about, and nobody has settled it. */
	readonly asked: boolean;
	/** A sleeve head and its armhole. */
	readonly sleeveHead: boolean;
}

/** Seams match by eye within this much: common practice, no source. */
const alike = inch / 16;
/** mm: what is asked for in sixteenths is written in sixteenths. */
const almost = 0.05;

/**
 * Every seam of two sides, walked; sleeve heads last. A centre seam is sewn to its own mirror image and has nothing to walk.
 * `asked`: what queries about a seam's length or notches name.
 */
export function walkRows(draft: Draft, unit: Unit, asked: readonly string[]): readonly WalkRow[] {
	const rows = walk(draft).flatMap((walked): WalkRow[] => {
		const seam = findSeam(draft, walked.seam);
		if (!seam || seam.b === 'mirror') return [];
		return [
			{
				seam: seam.id,
				name: seam.name.replace(/ seam$/i, ''),
				a: walked.a,
				b: walked.b,
				notches: walked.notches.map(({ atA, atB }) => [atA, atB] as const),
				verdict: verdict(walked.b - walked.a, walked.ease, unit),
				asked: asked.includes(seam.id),
				sleeveHead: joinsLimb(draft, seam)
			}
		];
	});
	return [...rows.filter(({ sleeveHead }) => !sleeveHead), ...rows.filter(({ sleeveHead }) => sleeveHead)];
}

function verdict(longer: number, meant: number, unit: Unit): string {
	const said = formatLength(longer, unit, { denominator: 16, sign: 'never' }).text;
	if (Math.abs(meant) > almost) return `${said} fullness`;
	return Math.abs(longer) < alike - almost ? 'walks' : `${said} eased in`;
}

/** Whether a seam sets a limb into the body. */
function joinsLimb(draft: Draft, seam: Seam): boolean {
	const limb = (side: 'a' | 'b') => seamRun(draft, seam, side).every(({ piece }) => piece.limb);
	return limb('a') !== limb('b');
}
