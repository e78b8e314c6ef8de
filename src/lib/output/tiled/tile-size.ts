/** What stays free of the drawing on each sheet, mm: more than a home printer keeps clear, and room for words. */
export const margins = { left: 10, top: 10, right: 10, bottom: 18 } as const;

/**
 * How much of the drawing two neighbouring sheets both show, mm; their joint runs down the middle of it. A printed A4 may be
 * off by 2 mm (ISO 216), so that it must be more.
 */
export const overlap = 12;
