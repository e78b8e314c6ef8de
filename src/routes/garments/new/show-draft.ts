import { check, easeTable } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import { measuresByLevel } from '$lib/measure/names.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { MeasurementSheet } from '$lib/server/journal/records.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import { saidInTwo } from '$lib/ui/garment/said-in-two.ts';
import { atStart } from '$lib/ui/fitting/casing.ts';
import type { DraftRead } from './read-draft.ts';
import { draftText } from './read-draft.ts';

/** The draft as it was read, for the page to show before it is kept. */
export type DraftShown = ReturnType<typeof showDraft>;

/**
 * The true drawing of a draft, its rounds against the body as it was last measured, and what the engine asks about it
 * already. The text of its file goes along, so that the same draft is kept that was looked at.
 */
export function showDraft(
	{ draft, source, sourceName }: Extract<DraftRead, { draft: Draft }>,
	sheet: MeasurementSheet | undefined,
	unit: Unit
) {
	const measures = sheet ? measuresByLevel(sheet.measures) : {};
	const darts = draft.pieces.reduce((sum, piece) => sum + piece.darts.length + piece.foldDarts.length, 0);
	return {
		name: draft.name,
		text: draftText(draft),
		source,
		sourceName,
		holds: [
			counted(draft.pieces.length, 'piece', 'pieces'),
			counted(draft.seams.length, 'seam', 'seams'),
			counted(darts, 'dart', 'darts')
		].join(', '),
		pieces: draft.pieces.map(({ name }) => name).join(', '),
		scene: layTable(draft, { unit, material: 'paper' }),
		measured: sheet !== undefined,
		rounds: easeTable(draft, measures).map(({ level, limb, garment, body, ease }) => ({
			name: atStart(level.replaceAll('-', ' ')) + (limb === 'left' || limb === 'right' ? `, ${limb}` : ''),
			garment,
			body,
			ease
		})),
		asks: check(draft, { measures, base: draft })
			.filter(({ severity }) => severity !== 'note')
			.map(({ sentence }) => saidInTwo(sentence, unit))
	};
}
