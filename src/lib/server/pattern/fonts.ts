import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Fonts } from '../../output/pdf-text.ts';

/** The scripts that garments are named in, the most usual first; one file of the family holds one script. */
const scripts = ['latin', 'latin-ext', 'cyrillic', 'greek', 'vietnamese'];

const weights = { regular: 400, bold: 600 } as const;

let read: Fonts | undefined;

/** The font files that are embedded in everything printed, read from their package once. */
export function printedFonts(): Fonts {
	return (read ??= { regular: filesOf('regular'), bold: filesOf('bold') });
}

function filesOf(weight: keyof typeof weights): readonly Uint8Array[] {
	const folder = dirname(createRequire(import.meta.url).resolve('@fontsource/commissioner/package.json'));
	return scripts.map((script) =>
		readFileSync(join(folder, 'files', `commissioner-${script}-${weights[weight]}-normal.woff`))
	);
}
