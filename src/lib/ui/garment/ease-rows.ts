import type { EasePreset } from '../../measure/ease-ranges.ts';
import type { EaseRow } from '../ease-scale.ts';
import { atStart } from '../fitting/casing.ts';

/** A row of the engine's ease table. */
export interface EaseAtLevel {
	readonly level: string;
	readonly limb?: 'both' | 'left' | 'right';
	readonly garment: number;
	readonly body?: number;
	readonly ease?: number;
}

/**
 * Ease at each balance line where the body was measured, with what it was before and what is wanted, as the bars show it;
 * and the lines that were not measured, by name. A band without an upper bound is wanted from its lower one on: it is drawn
 * an inch wide.
 */
export function easeRows(
	now: readonly EaseAtLevel[],
	before: readonly EaseAtLevel[] | undefined,
	preset: EasePreset | undefined
): { readonly rows: readonly EaseRow[]; readonly notMeasured: readonly string[] } {
	const measured = now.filter(({ ease }) => ease !== undefined);
	return {
		rows: measured.map(({ level, limb, body, ease }) => {
			const was = before?.find((row) => row.level === level && sameLimb(row.limb, limb))?.ease;
			const band = preset?.bands[level];
			return {
				name: nameOf(level, limb),
				body,
				ease,
				...(was !== undefined && { before: was }),
				...(band && { wanted: [band.low, band.high ?? band.low + openBand] as const })
			};
		}),
		notMeasured: now.filter(({ ease }) => ease === undefined).map(({ level, limb }) => nameOf(level, limb))
	};
}

/** mm that a band without an upper bound is drawn wide. */
const openBand = 25.4;

/** The sleeves of before, alike, are what each of two unlike ones was. */
const sameLimb = (was: EaseAtLevel['limb'], is: EaseAtLevel['limb']) =>
	was === is || (was === 'both' && is !== undefined);

function nameOf(level: string, limb: EaseAtLevel['limb']): string {
	const name = atStart(level.replaceAll('-', ' '));
	return limb === 'left' || limb === 'right' ? `${name}, ${limb}` : name;
}
