import { kindNamed } from '../alteration/registry.ts';
import type { Draft } from '../draft/types.ts';
import { bandsFor } from './bands.ts';
import type { CheckOptions } from './inquiry.ts';
import { inquiries } from './queries/registry.ts';
import type { Query, Severity } from './types.ts';

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/**
 * Everything that still needs a look before a draft is cut: errors first, then warnings, then notes. Amounts in mm, with
 * sentences in inches. What an option would be needed for is not asked without it: no ease without measures, no let-out
 * without the cloth. The draft itself is taken to be sound, as a parsed or a carried one is.
 */
export function check(draft: Draft, options: CheckOptions = {}): Query[] {
	const inspection = { draft, options, bands: bandsFor(options.bands) };
	return inquiries
		.flatMap((ask) => ask(inspection))
		.map((query) => ({ ...query, settle: query.settle.filter(({ kind }) => kindNamed(kind) !== undefined) }))
		.sort((a, b) => gravity[a.severity] - gravity[b.severity]);
}
