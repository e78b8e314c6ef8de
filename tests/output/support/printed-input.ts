import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { PatternSheetInput } from '../../../src/lib/output/pattern-input.ts';
import type { Fonts } from '../../../src/lib/output/pdf-text.ts';
import { printedDraft } from './printed-draft.ts';

/** The small draft as a lining of version 2, with allowances as checks and common practice have them: ½ in, hems 1½ in. */
export const printedInput: PatternSheetInput = {
	draft: printedDraft,
	allowances: { default: 12.7, edges: { 'front/front': 25.4, 'front/hem': 38.1, 'back/hem': 38.1 } },
	title: {
		garment: 'Governess jacket',
		wearer: 'Ines Varrow',
		version: 2,
		wornUnder: 'chemise, corset at 25 3/4″',
		date: '2026-03-11',
		lining: true
	},
	unit: 'in',
	lines: 'with allowances'
};

const folder = join(dirname(createRequire(import.meta.url).resolve('@fontsource/commissioner/package.json')), 'files');

/** One static font file of the family that the sheets are set in. */
export function fontFile(script: string, weight: 400 | 600): Uint8Array {
	return new Uint8Array(readFileSync(join(folder, `commissioner-${script}-${weight}-normal.woff`)));
}

const scripts = ['latin', 'latin-ext', 'cyrillic', 'greek', 'vietnamese'];

export const fonts: Fonts = {
	regular: scripts.map((script) => fontFile(script, 400)),
	bold: scripts.map((script) => fontFile(script, 600))
};
