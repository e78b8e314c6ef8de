import { z } from 'zod';

/*
 * The shape of a draft file, format 1: which fields there are and what each holds. Whether what they say makes sense together
 * (edges that close, places that exist) is read-piece.ts and read-seams.ts. Nothing is filled in here.
 */

/** Generous for any garment; what is beyond them is a mistake or an attack. */
export const limits = {
	textLength: 5 * 1024 * 1024,
	pieces: 100,
	edges: 100,
	/** Darts, notches, marks … of one piece; seams of the draft; points of a line; edges of a run. */
	list: 200,
	segments: 20_000,
	/** mm from the origin: 100 m. */
	coordinate: 100_000
} as const;

/** Letters, digits, hyphens, underscores and points, at most 200; `@left` and `@right` end the ids of divided things. */
export const idPattern = /^[A-Za-z0-9][A-Za-z0-9._-]{0,199}(@(left|right))?$/;
const wholeNamePattern = new RegExp(`${idPattern.source.slice(0, -1)}/${idPattern.source.slice(1)}`);
/** At most 200 characters; dividing adds the side. */
const namePattern = /^[^]{0,200}(, (left|right))?$/;

const id = z.string().regex(idPattern);
const wholeName = z.string().regex(wholeNamePattern);
const name = z.string().regex(namePattern).optional();
const millimetres = z.number().min(-limits.coordinate).max(limits.coordinate);
const point = z.tuple([millimetres, millimetres]);

/** A list too long is refused as such, without looking at what is in it. */
function listOf<T extends z.ZodType>(item: T, most: number = limits.list) {
	return z.array(z.unknown()).max(most).pipe(z.array(item));
}

const width = z.strictObject({ at: z.number(), left: millimetres, right: millimetres });

const edgeSchema = z.strictObject({
	id,
	name,
	kind: z.enum(['seam', 'open', 'fold']),
	path: z.string(),
	lap: millimetres.optional(),
	turn: z.boolean().optional()
});

const dartSchema = z.strictObject({
	id,
	name,
	edge: id,
	from: millimetres,
	to: millimetres,
	point,
	widths: listOf(width).optional(),
	press: z.enum(['from', 'to']).optional()
});

const foldDartSchema = z.strictObject({
	id,
	name,
	ends: z.tuple([point, point]),
	widest: z.strictObject({ at: z.number(), intake: millimetres }),
	widths: listOf(width).optional()
});

const notchSchema = z.strictObject({ id, edge: id, at: millimetres, mate: wholeName.optional() });

const levelSchema = z.strictObject({ level: id, line: listOf(point).optional(), edge: id.optional() });

const markSchema = z.strictObject({
	id,
	kind: z.enum(['bust-point', 'button', 'buttonhole', 'point']),
	at: point,
	to: point.optional()
});

const pleatSchema = z.strictObject({
	id: id.optional(),
	edge: id,
	from: millimetres,
	to: millimetres,
	turned: millimetres,
	stitchedDown: millimetres.optional()
});

const pieceSchema = z.strictObject({
	id,
	name,
	cut: z.enum(['pair', 'fold', 'single']),
	side: z.enum(['both', 'left', 'right']).optional(),
	limb: z.boolean().optional(),
	edges: listOf(edgeSchema, limits.edges),
	darts: listOf(dartSchema).optional(),
	foldDarts: listOf(foldDartSchema).optional(),
	notches: listOf(notchSchema).optional(),
	levels: listOf(levelSchema).optional(),
	marks: listOf(markSchema).optional(),
	pleats: listOf(pleatSchema).optional(),
	grain: z.tuple([point, point]).optional()
});

const run = listOf(z.strictObject({ edge: wholeName, reversed: z.boolean().optional() }));

const seamSchema = z.strictObject({
	id,
	name,
	a: run,
	b: z.union([z.literal('mirror'), run]),
	ease: millimetres.optional()
});

export const draftSchema = z.strictObject({
	format: z.string(),
	name,
	pieces: listOf(pieceSchema, limits.pieces),
	seams: listOf(seamSchema).optional()
});

export type DraftFile = z.output<typeof draftSchema>;
export type PieceFile = z.output<typeof pieceSchema>;
export type EdgeFile = z.output<typeof edgeSchema>;
export type SeamFile = z.output<typeof seamSchema>;
