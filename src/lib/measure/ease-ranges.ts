import { inch } from './units.ts';

/** What the garment may measure over the body at a balance line, in mm. Without `high` there is no upper bound. */
export interface EaseBand {
	readonly low: number;
	readonly high?: number;
}

/** Wanted ease by balance line. Published figures differ: a band is a reason to look, never a rule. */
export interface EasePreset {
	readonly id: string;
	readonly name: string;
	readonly bands: Readonly<Record<string, EaseBand>>;
	readonly source: string;
}

export const easePresets: readonly EasePreset[] = [
	{
		id: 'close-over-stays',
		name: 'Close, over stays or a corset',
		bands: { bust: inches(1 / 2, 2), waist: inches(0, 1), hip: inches(1, 3), 'upper-arm': inches(2) },
		source: 'common practice, no source'
	},
	{
		id: 'jacket-over-blouse',
		name: 'Jacket over a blouse',
		bands: { bust: inches(3, 4), waist: inches(1.5, 3), 'upper-arm': inches(2) },
		source: 'common practice, no source'
	},
	{
		id: 'everyday-bodice',
		name: 'Bodice as modern handbooks give it',
		// Bust 1½–2 in, waist ¾–1 in (½–¾ in for skirts), hip 2–2¾ in: Central Washington University costume text, ch. 16,
		// Ease in Clothing. Bust 3–4 in: Pattern Alteration, Guide C-228, New Mexico State University, table 1. Hip to 3 in:
		// from memory. Upper arm: Threads, Set-in sleeve solutions, 2021. The bands are their union.
		bands: { bust: inches(1.5, 4), waist: inches(1 / 2, 1), hip: inches(2, 3), 'upper-arm': inches(2) },
		source:
			'Central Washington University costume text, ch. 16; New Mexico State University, Guide C-228; Threads, 2021'
	}
];

export function findEasePreset(id: string): EasePreset | undefined {
	return easePresets.find((preset) => preset.id === id);
}

function inches(low: number, high?: number): EaseBand {
	return high === undefined ? { low: low * inch } : { low: low * inch, high: high * inch };
}
