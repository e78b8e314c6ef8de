import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { writePdf } from '../../src/lib/output/pdf.ts';
import { writeSvg } from '../../src/lib/output/svg.ts';
import { fonts, printedInput } from './support/printed-input.ts';

/*
 * Files to open and look at. A change of the drawing fails here; when it is meant, PTP_WRITE_GOLDEN=1 writes them anew, and
 * the new ones are looked at before they are kept. In CI they are only ever read.
 */
const rewrite = process.env.PTP_WRITE_GOLDEN === '1' && process.env.CI === undefined;

function golden(name: string, bytes: Uint8Array): Uint8Array {
	const file = new URL(`../golden/${name}`, import.meta.url);
	if (rewrite) writeFileSync(file, bytes);
	return new Uint8Array(readFileSync(file));
}

test('the small draft is written as the SVG that was looked at', () => {
	const file = writeSvg(printedInput);
	expect(file).toBe(new TextDecoder().decode(golden('pattern.svg', new TextEncoder().encode(file))));
});

test('the small draft is written as the PDF that was looked at', async () => {
	const file = await writePdf(printedInput, fonts);
	expect(Buffer.compare(file, golden('pattern.pdf', file))).toBe(0);
});
