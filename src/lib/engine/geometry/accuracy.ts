/**
 * The named accuracies, in mm. There is no global tolerance: an approximate function takes one of these (or the caller's
 * own share of one) as its last argument, and its comment says which distance it bounds.
 */

/** Lengths, positions and crossings. */
export const measured = 1e-6;

/** When two corners are one. */
export const joined = 1e-4;

/** A drawn curve against the exact one, both ways. */
export const fitted = 0.01;

/** A polyline against the curve that it is cut from. */
export const cut = 0.01;

/** Tangents that differ by more than this make a corner inside a path, in radians (0.5°). */
export const cornerAngle = (0.5 * Math.PI) / 180;
