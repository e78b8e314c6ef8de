import { expect, test } from 'vitest';
import { sniff } from '../../../src/lib/server/photos/sniff.ts';
import { redAndBlue } from './support/pictures.ts';

/** A file type box as ISO/IEC 14496-12 has it: size, `ftyp`, major brand, version, compatible brands. */
function fileType(...brands: string[]): Buffer {
	const [major, ...compatible] = brands;
	const box = Buffer.from(`....ftyp${major}....${compatible.join('')}`, 'latin1');
	box.writeUInt32BE(box.length, 0);
	return Buffer.concat([box, Buffer.from('....metaheic')]);
}

test.each([
	['jpeg', 'jpeg'],
	['png', 'png'],
	['webp', 'webp'],
	['avif', 'heif']
] as const)('%s is known by its first bytes', async (format, kind) => {
	expect(sniff(await redAndBlue().toFormat(format).toBuffer())).toEqual({ kind, heic: false });
});

test.each([
	[['heic', 'mif1', 'heic'], true],
	[['mif1', 'mif1', 'heic'], true],
	[['mif1', 'avif', 'miaf'], false],
	[['avis', 'avif'], false]
])('a HEIF file with the brands %s', (brands, heic) => {
	expect(sniff(fileType(...brands))).toEqual({ kind: 'heif', heic });
});

test.each([
	['a film', fileType('isom', 'mp42')],
	['a GIF', Buffer.from('GIF89a\x01\x00\x01\x00')],
	['an SVG', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')],
	['a PDF', Buffer.from('%PDF-1.7')],
	['a page', Buffer.from('<!doctype html>')],
	['a sound in RIFF', Buffer.from('RIFF....WAVEfmt ')],
	['nothing', Buffer.alloc(0)],
	['one byte', Buffer.from([0xff])]
])('%s is no picture', (_, bytes) => {
	expect(sniff(bytes)).toBeUndefined();
});
