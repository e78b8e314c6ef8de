import type { Station, VersionShown } from './journal-shapes.ts';
import { dayWords } from './day-words.ts';

/** Where a garment stands on its way to the lining: stitches sewn, holes to come, and a few words. */
export interface StageNow {
	readonly done: number;
	readonly toCome: number;
	readonly words: string;
}

/** At least draft, toile, fitting, version, lining. */
const whole = 5;

/** Says how far a garment's life has come, from its stations in order. */
export function stageNow(life: readonly Station[], latest: VersionShown): StageNow {
	const last = life[life.length - 1];
	const hasLining = life.some((station) => station.kind === 'lining');
	const done = life.length;
	const toCome = hasLining ? 0 : Math.max(1, whole - done);
	return { done, toCome, words: words(last, latest) };
}

function words(last: Station | undefined, latest: VersionShown): string {
	if (!last) return 'Draft in, toile not cut';
	switch (last.kind) {
		case 'lining':
			return `Lining chosen: version ${last.lining.version}`;
		case 'toile':
			return `Toile ${last.toile.number} cut, not yet fitted`;
		case 'fitting': {
			const name = last.fitting.kind === 'table' ? 'Table work' : 'Fitting';
			return `${name} ${last.fitting.number} of ${dayWords(last.date)}${last.fitting.closedAt ? '' : ', still open'}`;
		}
		case 'version':
			if (latest.number === 0) return 'Draft in, toile not cut';
			return latest.unsettled.length > 0
				? `Version ${latest.number} carried, ${latest.unsettled.length === 1 ? '1 query' : `${latest.unsettled.length} queries`} to settle`
				: `Version ${latest.number} carried, nothing left to settle`;
	}
}
