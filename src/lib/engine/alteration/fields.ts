/** The fields that several kinds share, as they are written in files. Amounts in mm; zod refuses NaN and infinite numbers. */
import { z } from 'zod';
import type { EdgePlace, InnerPoint, Place } from '../draft/types.ts';
import type { Point as PointOfPiece } from '../geometry/types.ts';

/** A new dart or mark takes its alteration's id, so it is written as the draft file writes ids. */
export const id = z
	.string()
	.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/, 'is letters, digits, dots and dashes, such as fitting-1-alteration-2');
export const on = z.enum(['both', 'left', 'right']).default('both');
export const amount = z.number().min(-1000).max(1000);

/** `front/side`: an edge, dart or notch of a piece, named whole. */
export const feature = z.string().regex(/^[^/\s]+\/[^/\s]+$/, 'should name piece and edge, like front/side');

const offset = z.number().optional();

const placeForms = [
	z.strictObject({ end: z.enum(['start', 'finish']), offset }),
	z.strictObject({ level: z.string().min(1), offset, nth: z.number().int().min(1).optional() }),
	z.strictObject({ notch: z.string().min(1), offset }),
	z.strictObject({ fraction: z.number().min(0).max(1), offset })
] as const;

/** A place on a named edge or seam. */
export const place: z.ZodType<Place> = z.union(placeForms);

/** A place with its edge: `{ "edge": "front/side", "level": "waist" }`. */
export const edgePlace: z.ZodType<EdgePlace> = z.union([
	placeForms[0].extend({ edge: feature }),
	placeForms[1].extend({ edge: feature }),
	placeForms[2].extend({ edge: feature }),
	placeForms[3].extend({ edge: feature })
]);

export const point: z.ZodType<PointOfPiece> = z.tuple([z.number(), z.number()]);

/** A point inside a piece. */
export const innerPoint: z.ZodType<InnerPoint> = z.union([
	point,
	z.strictObject({ mark: z.string().min(1), toward: edgePlace, short: z.number().optional() }),
	z.strictObject({ from: edgePlace, in: z.number() })
]);
