import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { counted } from './counted.ts';

/** A station of a garment's life, as far as its words go. The journal's own stations have these shapes, and more. */
export type StationSaid =
	| {
			readonly kind: 'version';
			readonly version: {
				readonly number: number;
				readonly reason: 'base' | 'carried' | 'withdrawn';
				readonly source: string | null;
				readonly sourceName: string;
				readonly unsettled: readonly { readonly severity: string }[];
			};
	  }
	| {
			readonly kind: 'toile';
			readonly toile: { readonly number: number; readonly cloth: string; readonly allowance: number };
	  }
	| {
			readonly kind: 'fitting';
			readonly fitting: {
				readonly kind: 'fitting' | 'table';
				readonly number: number;
				readonly closedAt: string | null;
				readonly carriedInto: number | null;
			};
			readonly alterations: number;
	  }
	| { readonly kind: 'lining'; readonly lining: { readonly version: number; readonly cloth: string } };

/** “Draft”, “Toile 1”, “Fitting 2”, “Table work 1”, “Version 2”, “Lining”. */
export function stationName(station: StationSaid): string {
	switch (station.kind) {
		case 'version':
			return station.version.number === 0 ? 'Draft' : `Version ${station.version.number}`;
		case 'toile':
			return `Toile ${station.toile.number}`;
		case 'fitting':
			return fittingName(station.fitting);
		case 'lining':
			return 'Lining';
	}
}

/** “Fitting 2”, “Table work 1”. */
export function fittingName({ kind, number }: { readonly kind: 'fitting' | 'table'; readonly number: number }): string {
	return `${kind === 'table' ? 'Table work' : 'Fitting'} ${number}`;
}

/** Where a base draft came from, in the words of who brought it in where there are any. */
const sources: Readonly<Record<string, string>> = {
	file: 'from a draft file',
	demo: 'drawn for the demo',
	starter: 'drawn to the measures',
	table: 'from a table of points',
	svg: 'from a drawing',
	photo: 'from a photo',
	version: 'from another garment'
};

/** A few words about a station, each of them a line. */
export function stationNotes(station: StationSaid, unit: Unit): readonly string[] {
	switch (station.kind) {
		case 'version': {
			const { version } = station;
			if (version.reason === 'base') return [sources[version.source ?? ''] ?? 'brought in'];
			const open = version.unsettled.filter(({ severity }) => severity !== 'note').length;
			const state = open > 0 ? `${counted(open, 'query', 'queries')} to settle` : 'nothing left to settle';
			return version.reason === 'withdrawn' ? ['an alteration taken back out', state] : [state];
		}
		case 'toile': {
			const { cloth, allowance } = station.toile;
			const around = `${formatLength(allowance, unit).text} at the seams`;
			return [cloth === '' ? around : `${cloth}, ${around}`];
		}
		case 'fitting': {
			const { fitting, alterations } = station;
			const did = alterations === 0 ? 'no alterations' : counted(alterations, 'alteration', 'alterations');
			return [fitting.closedAt === null ? `${did} kept, still open` : did];
		}
		case 'lining': {
			const { version, cloth } = station.lining;
			return [version === 0 ? 'from the draft' : `from version ${version}`, ...(cloth === '' ? [] : [cloth])];
		}
	}
}

/** A station that is still to come. */
export interface StationToCome {
	readonly name: string;
	readonly note: string;
}

/**
 * What is still to come before a garment is done, after the last of its stations: at the least what follows next, at the end
 * the lining. Nothing once the lining is chosen.
 */
export function stationsToCome(life: readonly StationSaid[]): readonly StationToCome[] {
	const last = life[life.length - 1];
	const toile = Math.max(0, ...life.map((one) => (one.kind === 'toile' ? one.toile.number : 0))) + 1;
	const fitting =
		Math.max(
			0,
			...life.map((one) => (one.kind === 'fitting' && one.fitting.kind === 'fitting' ? one.fitting.number : 0))
		) + 1;
	const version = Math.max(-1, ...life.map((one) => (one.kind === 'version' ? one.version.number : -1))) + 1;
	const toToile = { name: `Toile ${toile}`, note: 'not cut yet' };
	const toFitting = { name: `Fitting ${fitting}`, note: 'when the toile is sewn' };
	const toVersion = { name: `Version ${version}`, note: 'when the pins are carried to paper' };
	const toLining = { name: 'Lining', note: 'no version chosen' };
	if (!last) return [toToile, toFitting, toVersion, toLining];
	switch (last.kind) {
		case 'version':
			return last.version.number === 0 ? [toToile, toFitting, toVersion, toLining] : [toLining];
		case 'toile':
			return [toFitting, toVersion, toLining];
		case 'fitting':
			return last.fitting.closedAt === null ? [toVersion, toLining] : [toLining];
		case 'lining':
			return [];
	}
}
