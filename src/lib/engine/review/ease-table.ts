import { measured } from '../geometry/accuracy.ts';
import { remembered } from '../geometry/memo.ts';
import { garmentRounds } from '../draft/round.ts';
import type { Draft } from '../draft/types.ts';

/** The garment's whole measure round the body, or round one limb, at a balance line; mm. */
export interface GarmentRound {
	readonly level: string;
	/** Round a limb: `both` while its two sides are alike. Absent for the body. */
	readonly limb?: 'both' | 'left' | 'right';
	readonly round: number;
}

/** A balance line of the garment against the body there, mm. `body` and `ease` are absent where the body was not measured. */
export interface EaseRow {
	readonly level: string;
	readonly limb?: 'both' | 'left' | 'right';
	readonly garment: number;
	readonly body?: number;
	/** garment − body. */
	readonly ease?: number;
}

/**
 * The garment's round at every balance line that the draft has, in the order in which the lines first appear: all pieces,
 * both halves, less what darts take there and less the laps of the edges that close on one another. A limb has a row of its
 * own, two once its sides differ.
 */
export const garmentRound: (draft: Draft) => readonly GarmentRound[] = remembered((draft: Draft) => {
	const rounds = garmentRounds(draft);
	const limbs = new Map<string, { both: number; left: number; right: number }>();
	for (const { level, limb, side, round } of rounds) {
		if (!limb) continue;
		const sums = limbs.get(level) ?? { both: 0, left: 0, right: 0 };
		sums[side ?? 'both'] += round;
		limbs.set(level, sums);
	}
	const rows: GarmentRound[] = [];
	for (const { level, limb, round } of rounds) {
		if (!limb) {
			rows.push({ level, round });
			continue;
		}
		const sums = limbs.get(level);
		if (sums === undefined) continue;
		limbs.delete(level);
		const left = sums.both + sums.left;
		const right = sums.both + sums.right;
		if (Math.abs(left - right) <= measured) rows.push({ level, limb: 'both', round: right });
		else rows.push({ level, limb: 'right', round: right }, { level, limb: 'left', round: left });
	}
	return rows;
});

/**
 * What the garment has over the body at every balance line. `measures` are the body's, in mm by level; where a level is found
 * on the body and on a limb as well, the measure is the body's.
 */
export function easeTable(draft: Draft, measures: Readonly<Record<string, number>>): EaseRow[] {
	const rounds = garmentRound(draft);
	const ofBody = new Set(rounds.filter((row) => row.limb === undefined).map((row) => row.level));
	return rounds.map(({ level, limb, round }) => {
		const row = limb === undefined ? { level, garment: round } : { level, limb, garment: round };
		const body = Object.hasOwn(measures, level) ? measures[level] : undefined;
		if (body === undefined || (limb !== undefined && ofBody.has(level))) return row;
		return { ...row, body, ease: round - body };
	});
}
