/**
 * What is seen on the cloth at a fitting, and what usually cures it. The rows say what the cloth does, never how the wearer
 * is made; a remedy is a suggestion with no amount, and nothing is done by itself.
 *
 * Read in: The New Dressmaker (1921), ch. 4 and p. 39; The Dressmaker (2nd ed., c. 1916), using patterns, parts 4 to 8;
 * Fitting Dresses (US Department of Agriculture, rev. 1946); Garment Fitting, E.M. 2246 (1962). The words are our own. The
 * two shoulder cures for a sagging front or back follow fitting practice: the shoulder edge is taken in, most at the neck.
 */
import { backObservations } from './observations-back.ts';
import { frontObservations } from './observations-front.ts';
import { shoulderObservations } from './observations-shoulder.ts';
import { sleeveObservations } from './observations-sleeve.ts';
import { waistObservations } from './observations-waist.ts';

/** The primitive things that can be done to a pattern. */
export type Primitive =
	| 'take in'
	| 'let out'
	| 'dart wider'
	| 'dart narrower'
	| 'dart moved'
	| 'lengthen'
	| 'shorten'
	| 'slope'
	| 'lower'
	| 'raise'
	| 'spread'
	| 'lap'
	| 'off the pattern';

/** The kind of alteration that records it. */
export type RemedyKind =
	'seam' | 'edge' | 'dart' | 'dart-set' | 'dart-swing' | 'fold-dart' | 'spread' | 'bust-spread' | 'mark';

export interface Remedy {
	readonly op: Primitive;
	/** Where and how, in words that follow the primitive. */
	readonly at: string;
	/** Absent when it is settled without the pattern. */
	readonly kind?: RemedyKind;
}

export type ObservationGroup = 'shoulder and neck' | 'front' | 'back' | 'waist and sides' | 'armhole and sleeve';

export interface Observation {
	readonly key: string;
	readonly group: ObservationGroup;
	readonly what: string;
	/** Where the folds point, or where the cloth stands off. */
	readonly folds?: string;
	readonly causes: readonly string[];
	readonly remedies: readonly Remedy[];
	readonly source: string;
}

export const observations: readonly Observation[] = [
	...shoulderObservations,
	...frontObservations,
	...backObservations,
	...waistObservations,
	...sleeveObservations
];

export const observationGroups: readonly ObservationGroup[] = [
	'shoulder and neck',
	'front',
	'back',
	'waist and sides',
	'armhole and sleeve'
];

/** How folds are read in general (common practice, no source). */
export const readingFolds: readonly string[] = [
	'Slanting folds point at the place that wants room.',
	'Folds across say too tight round there, or too long.',
	'Loose folds up and down want taking in; tight ones want length.',
	'The crosswise grain runs level at bust and hip, and the side seams hang plumb.'
];

export function findObservation(key: string): Observation | undefined {
	return observations.find((observation) => observation.key === key);
}
