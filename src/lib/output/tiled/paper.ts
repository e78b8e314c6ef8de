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

/** What stays free of the drawing on each sheet, mm: more than a home printer keeps clear, and room for words. */
export const margins = { left: 10, top: 10, right: 10, bottom: 18 } as const;

/**
 * How much of the drawing two neighbouring sheets both show, mm; their joint runs down the middle of it. A printed A4 may be
 * off by 2 mm (ISO 216), so that it must be more.
 */
export const overlap = 12;
