/**
 * How much of anything is still right: the bands that the queries ask by, in mm and degrees. They are the habits of a workroom, not
 * laws, so every one can be changed; published figures for ease do not agree with one another and are presets to choose from.
 */

const inch = 25.4;

export interface Range {
	readonly least: number;
	readonly most: number;
}

/** A seam on which a little more length on one side is eased in as a matter of course. */
export interface EasedSeam {
	/** A word of the seam's id or name: `shoulder`. */
	readonly called: string;
	/** The side that is meant to be the longer where no fullness is set: the piece called so, or the side that is cut rounder. */
	readonly longer: { readonly piece: string } | 'rounder';
}

export interface Bands {
	readonly seamLength: {
		/** Beyond the meant fullness: nothing said up to here, a note up to there, a warning above. */
		readonly silent: number;
		readonly note: number;
		/** Eased in without a word, on these seams, where the longer side is the one meant. */
		readonly eased: number;
		readonly easedSeams: readonly EasedSeam[];
	};
	readonly notchWalk: { readonly silent: number };
	/** Degrees off a smooth run across a seam; from `meant` on it is a corner on purpose (a collar's end on a neck). */
	readonly seamCorner: { readonly silent: number; readonly armhole: number; readonly meant: number };
	readonly dartLegs: { readonly silent: number };
	/** How far short of the bust point a dart ends, for darts that are aimed within `aimed` of it. */
	readonly dartPoint: { readonly aimed: number; readonly usual: Range; readonly farthest: number };
	/** The widest that one dart should be, by a word of the edge that it opens on. */
	readonly dartWide: Readonly<Record<string, number>>;
	/** Allowance that is to be left for sewing. */
	readonly left: { readonly plain: number; readonly boned: number; readonly closing: number };
	/** Garment smaller than the body: a note up to here, a warning beyond. */
	readonly underBody: { readonly note: number };
	/** Wanted ease, by level. None: ease is not asked about. */
	readonly ease: Readonly<Record<string, Range>>;
	/** Wanted fullness of a sleeve head over its armhole. None: it is held to the fullness that the seam says. */
	readonly sleeveHead?: Range;
	/** Stays and the like are cut smaller than the body on purpose: held against the wearer's accustomed lacing. */
	readonly laced: boolean;
}

/** Bands with only the parts that differ from the default. */
export type BandChanges = { readonly [K in keyof Bands]?: Bands[K] };

/** A name of a preset, changes of one's own, or several of either, later ones winning. */
export type BandChoice = string | BandChanges | readonly (string | BandChanges)[];

/**
 * Common practice, no source, but for: the back shoulder 1/4 in longer than the front and eased in (Baldt, Clothing for Women,
 * 1916); a dart 1/2 in to 2 1/2 in short of the bust point (Threads 181, 2015, and teaching notes); allowances kept when a seam is let
 * out (Construction of Clothing, University of Wisconsin digital collection).
 */
export const usualBands: Bands = {
	seamLength: {
		silent: inch / 16,
		note: inch / 8,
		eased: inch / 4,
		easedSeams: [
			{ called: 'shoulder', longer: { piece: 'back' } },
			{ called: 'side-back', longer: 'rounder' }
		]
	},
	notchWalk: { silent: 3 },
	seamCorner: { silent: 8, armhole: 12, meant: 45 },
	dartLegs: { silent: inch / 16 },
	dartPoint: { aimed: inch, usual: { least: inch / 2, most: 2.5 * inch }, farthest: 3 * inch },
	dartWide: { waist: 1.5 * inch, shoulder: inch, armhole: 0.75 * inch, neck: 0.75 * inch },
	left: { plain: inch / 4, boned: inch / 2, closing: inch },
	underBody: { note: inch / 2 },
	ease: {},
	laced: false
};

export const presets: Readonly<Record<string, BandChanges>> = {
	usual: {},
	/** Common practice, no source. */
	'close over stays': {
		ease: {
			bust: { least: inch / 2, most: 2 * inch },
			waist: { least: 0, most: inch },
			hip: { least: inch, most: 3 * inch }
		}
	},
	/** Common practice, no source. */
	'jacket over a blouse': {
		ease: { bust: { least: 3 * inch, most: 4 * inch }, waist: { least: 1.5 * inch, most: 3 * inch } }
	},
	/** Central Washington University, costume text, chapter 16, “Ease in Clothing”. */
	'dress bodice': {
		ease: {
			bust: { least: 1.5 * inch, most: 2 * inch },
			waist: { least: 0.75 * inch, most: inch },
			hip: { least: 2 * inch, most: 2.75 * inch }
		}
	},
	/** New Mexico State University, Pattern Alteration, Guide C-228, table 1. */
	'easy bodice': { ease: { bust: { least: 3 * inch, most: 4 * inch } } },
	stays: { laced: true },
	/** Teaching notes on sleeve-head ease: 1/2 in to 3/4 in for a close head. */
	'close sleeve': { sleeveHead: { least: inch / 2, most: 0.75 * inch } },
	/** The same notes: 1 in to 1 1/2 in in usual woven cloth. */
	'usual sleeve': { sleeveHead: { least: inch, most: 1.5 * inch } },
	/** Up to 2 in in wool, which shrinks under the iron: from memory. */
	'wool sleeve': { sleeveHead: { least: inch, most: 2 * inch } }
};

/** The bands for a choice. Thrown: a preset that does not exist, which is our own mistake. */
export function bandsFor(choice: BandChoice = 'usual'): Bands {
	const list: readonly (string | BandChanges)[] = isList(choice) ? choice : [choice];
	return list.reduce<Bands>(
		(bands, one) => ({ ...bands, ...(typeof one === 'string' ? preset(one) : one) }),
		usualBands
	);
}

function preset(name: string): BandChanges {
	if (!Object.hasOwn(presets, name)) throw new Error(`There are no bands called ${name}.`);
	return presets[name];
}

function isList(choice: BandChoice): choice is readonly (string | BandChanges)[] {
	return Array.isArray(choice);
}
