import { inch } from '../../measure/units.ts';

export type PaperName = 'A4' | 'Letter';

export interface Paper {
	readonly width: number;
	readonly height: number;
}

/** mm. ISO 216; Letter is 8½ by 11 in. */
export const papers: Readonly<Record<PaperName, Paper>> = {
	A4: { width: 210, height: 297 },
	Letter: { width: 8.5 * inch, height: 11 * inch }
};
