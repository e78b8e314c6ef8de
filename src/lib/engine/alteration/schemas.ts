/** How each kind of alteration is written in files: a line for each line of registry.ts, which the compiler asks for. */
import type { z } from 'zod';
import { bustSpreadSchema } from './kinds/bust-spread.ts';
import { dartSchema } from './kinds/dart.ts';
import { dartSetSchema } from './kinds/dart-set.ts';
import { dartSwingSchema } from './kinds/dart-swing.ts';
import { edgeSchema } from './kinds/edge.ts';
import { foldDartSchema } from './kinds/fold-dart.ts';
import { markSchema } from './kinds/mark.ts';
import { seamSchema } from './kinds/seam.ts';
import { smoothSchema } from './kinds/smooth.ts';
import { spreadSchema } from './kinds/spread.ts';
import { trueDartSchema } from './kinds/true-dart.ts';
import { trueSeamSchema } from './kinds/true-seam.ts';
import type { Alteration } from './registry.ts';

const schemas: { readonly [K in Alteration['kind']]: () => z.ZodType<Extract<Alteration, { readonly kind: K }>> } = {
	seam: seamSchema,
	edge: edgeSchema,
	dart: dartSchema,
	'dart-set': dartSetSchema,
	'dart-swing': dartSwingSchema,
	'fold-dart': foldDartSchema,
	'bust-spread': bustSpreadSchema,
	mark: markSchema,
	smooth: smoothSchema,
	spread: spreadSchema,
	'true-dart': trueDartSchema,
	'true-seam': trueSeamSchema
};

const made = new Map<Alteration['kind'], z.ZodType<Alteration>>();

/** The file form of a kind, made once, when it is first asked for. */
export function schemaOf(kind: Alteration['kind']): z.ZodType<Alteration> {
	const schema = made.get(kind) ?? schemas[kind]();
	made.set(kind, schema);
	return schema;
}
