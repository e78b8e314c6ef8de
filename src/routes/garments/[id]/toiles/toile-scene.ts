import { cuttingLines } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { AllowancesByEdge } from '$lib/ui/allowances/usual-allowances.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { shownAllowance } from '$lib/ui/toile/toile-words.ts';
import { toilePreset } from '$lib/ui/toile/toile-allowances.ts';

/** A toile as its cloth lies on the table: calico, out to the cutting lines of these allowances. */
export function toileScene(draft: Draft, allowances: AllowancesByEdge, unit: Unit) {
	return layTable(draft, { unit, material: 'calico', cut: cutPaths(cuttingLines(draft, allowances)) });
}

/** The usual allowances in a few words, for the button that fills them in. */
export function presetWords(unit: Unit): string {
	return `${shownAllowance(toilePreset.long, unit)} at the seams, ${shownAllowance(toilePreset.close, unit)} at neck and armhole`;
}
