/** The codes that a drawing is made of, for its legend. */
export type LineCode =
	'stitching' | 'cutting' | 'before' | 'after' | 'in' | 'out' | 'balance' | 'fold' | 'notch' | 'dart';

interface Sample {
	readonly name: string;
	/** Class of the code and path text in a box of 38 × 15 px. */
	readonly paths: readonly { readonly code: string; readonly d: string }[];
}

const across = 'M4 7.5H34';

export const lineCodes: Readonly<Record<LineCode, Sample>> = {
	stitching: { name: 'stitching line', paths: [{ code: 'stitching', d: across }] },
	cutting: { name: 'cutting line', paths: [{ code: 'cutting', d: across }] },
	before: { name: 'line before', paths: [{ code: 'before', d: across }] },
	after: {
		name: 'line after',
		paths: [
			{ code: 'after', d: across },
			{ code: 'holes', d: across }
		]
	},
	in: {
		name: 'taken in',
		paths: [{ code: 'in-strokes', d: 'M6 13.5L10 1.5M12 13.5L16 1.5M18 13.5L22 1.5M24 13.5L28 1.5M30 13.5L34 1.5' }]
	},
	out: { name: 'let out', paths: [{ code: 'out-strokes', d: 'M5 12L9 3L13 12L17 3L21 12L25 3L29 12L33 3' }] },
	balance: { name: 'balance line', paths: [{ code: 'dots', d: across }] },
	fold: { name: 'fold', paths: [{ code: 'fold', d: 'M2 7.5H37' }] },
	notch: { name: 'notch', paths: [{ code: 'notch', d: 'M16.5 2V13M21.5 2V13' }] },
	dart: {
		name: 'dart',
		paths: [
			{ code: 'leg', d: 'M4 3L33 7.5L4 12' },
			{ code: 'crease', d: 'M4 7.5H33' }
		]
	}
};
