import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { decodePicture, turnOver } from '../../../src/lib/server/photos/decode.ts';
import type { Picture } from '../../../src/lib/server/photos/picture.ts';
import { sniff } from '../../../src/lib/server/photos/sniff.ts';
import { fileOf, noise, quarters, redAndBlue } from './support/pictures.ts';

const decoded = (bytes: Uint8Array, mirrored = false) => decodePicture(fileOf(bytes), sniff(bytes)!, { mirrored });

async function picture(bytes: Uint8Array, mirrored = false): Promise<Picture> {
	const made = await decoded(bytes, mirrored);
	if ('problem' in made) throw new Error(made.problem);
	return made;
}

/** The markers of a JPEG file in order, up to the start of its scan (ISO/IEC 10918-1, B.1.1.3). */
function markersOf(jpeg: Uint8Array): string[] {
	const found: string[] = [];
	for (let at = 2; jpeg[at] === 0xff; at += 2 + jpeg[at + 2] * 256 + jpeg[at + 3]) {
		found.push(jpeg[at + 1].toString(16));
		if (jpeg[at + 1] === 0xda) return found;
	}
	throw new Error('The file has no scan.');
}

/**
 * Where the stored left (red) and right (blue) are seen, from the meaning of each orientation: “the 0th row is the visual
 * top (right, bottom, left), the 0th column the visual left (…)” (TIFF 6.0, section 8, Orientation).
 */
const seen: readonly [orientation: number, upright: readonly string[], size: readonly [number, number]][] = [
	[1, ['red', 'blue', 'red', 'blue'], [40, 20]],
	[2, ['blue', 'red', 'blue', 'red'], [40, 20]],
	[3, ['blue', 'red', 'blue', 'red'], [40, 20]],
	[4, ['red', 'blue', 'red', 'blue'], [40, 20]],
	[5, ['red', 'red', 'blue', 'blue'], [20, 40]],
	[6, ['red', 'red', 'blue', 'blue'], [20, 40]],
	[7, ['blue', 'blue', 'red', 'red'], [20, 40]],
	[8, ['blue', 'blue', 'red', 'red'], [20, 40]]
];

test.each(seen)('orientation %i is turned upright', async (orientation, upright, [width, height]) => {
	const made = await picture(await redAndBlue().withMetadata({ orientation }).jpeg().toBuffer());
	expect([made.width, made.height]).toEqual([width, height]);
	expect(await quarters(made.jpeg)).toEqual(upright);
	expect(await quarters(made.thumbnail)).toEqual(upright);
});

test('a picture taken in a mirror is turned over after it is turned upright', async () => {
	const made = await picture(await redAndBlue().withMetadata({ orientation: 8 }).jpeg().toBuffer(), true);
	expect(await quarters(made.jpeg)).toEqual(['blue', 'blue', 'red', 'red']);
	const flat = await picture(await redAndBlue().jpeg().toBuffer(), true);
	expect(await quarters(flat.jpeg)).toEqual(['blue', 'red', 'blue', 'red']);
});

test('turned over twice, right and left are where they were', async () => {
	const once = await turnOver(fileOf(await redAndBlue().jpeg().toBuffer()));
	expect(await quarters(once.jpeg)).toEqual(['blue', 'red', 'blue', 'red']);
	expect(await quarters((await turnOver(fileOf(once.jpeg))).jpeg)).toEqual(['red', 'blue', 'red', 'blue']);
});

test('place, camera and every other note of the file are gone; only the day and time are read, apart from the picture', async () => {
	const bytes = await redAndBlue(400, 200)
		.withExif({
			IFD0: { Make: 'Secret camera', Copyright: 'somebody' },
			IFD2: { DateTimeOriginal: '2026:03:10 14:32:05' },
			IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' }
		})
		.withXmp('<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"/>')
		.withIccProfile('p3')
		.jpeg()
		.toBuffer();
	expect(markersOf(bytes)).toEqual(expect.arrayContaining(['e1', 'e2']));
	expect(bytes.includes('Secret camera')).toBe(true);

	const made = await picture(bytes);
	expect(made.takenAt).toBe('2026-03-10T14:32:05');
	for (const kept of [made.jpeg, made.thumbnail]) {
		// JFIF's own header, tables, frame and scan; no application data (e1 to ef), no comment (fe).
		for (const marker of markersOf(kept)) expect(['db', 'c0', 'c2', 'c4', 'dd', 'da', 'e0']).toContain(marker);
		expect(Buffer.from(kept).includes('Secret camera')).toBe(false);
	}
});

test.each(['jpeg', 'png', 'webp', 'avif'] as const)('%s is taken, and kept as JPEG', async (format) => {
	const made = await picture(await redAndBlue(64, 32).toFormat(format, { quality: 90 }).toBuffer());
	expect(made.kind).toBe(format === 'avif' ? 'heif' : format);
	expect(sniff(made.jpeg)).toEqual({ kind: 'jpeg', heic: false });
	expect(await quarters(made.jpeg)).toEqual(['red', 'blue', 'red', 'blue']);
});

test('no side is longer than 1600, nor of the small one 320; a small picture is not blown up', async () => {
	const large = await picture(await noise(2400, 1200).jpeg({ quality: 30 }).toBuffer());
	expect([large.width, large.height]).toEqual([1600, 800]);
	expect(await sharp(large.jpeg).metadata()).toMatchObject({ width: 1600, height: 800, format: 'jpeg' });
	expect(await sharp(large.thumbnail).metadata()).toMatchObject({ width: 320, height: 160, format: 'jpeg' });
	const small = await picture(await redAndBlue(8, 300).png().toBuffer());
	expect([small.width, small.height]).toEqual([8, 300]);
});

test('what was clear is white, and 16 bits or four inks become what a browser shows', async () => {
	const clear = { create: { width: 20, height: 20, channels: 4, background: '#00000000' } } as const;
	expect(await quarters((await picture(await sharp(clear).png().toBuffer())).jpeg)).toEqual(Array(4).fill('white'));
	const inks = await picture(await redAndBlue(64, 32).toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer());
	expect((await sharp(inks.jpeg).metadata()).space).toBe('srgb');
	const deep = await picture(await redAndBlue(64, 32).toColourspace('rgb16').png().toBuffer());
	expect(await quarters(deep.jpeg)).toEqual(['red', 'blue', 'red', 'blue']);
});

test('the name is the SHA-256 of the kept picture, and the same file gives the same', async () => {
	const bytes = await noise(200, 100).jpeg().toBuffer();
	const [one, two] = [await picture(bytes), await picture(bytes)];
	const digest = await crypto.subtle.digest('SHA-256', Buffer.from(one.jpeg));
	expect(one.hash).toBe(Buffer.from(digest).toString('hex'));
	expect(two.hash).toBe(one.hash);
	expect((await picture(bytes, true)).hash).not.toBe(one.hash);
});

describe('what cannot be read to its last pixel is refused', () => {
	test.each(['jpeg', 'png', 'webp', 'avif'] as const)('%s that breaks off half-way', async (format) => {
		const bytes = await noise(300, 200).toFormat(format).toBuffer();
		expect(await decoded(bytes.subarray(0, bytes.length >> 1))).toEqual({ problem: 'broken' });
	});

	test('a picture whose pixels are spoilt', async () => {
		const bytes = await noise(300, 200).png().toBuffer();
		bytes.fill(0x5a, bytes.length >> 1, (bytes.length >> 1) + 200);
		expect(await decoded(bytes)).toEqual({ problem: 'broken' });
	});

	test('a few first bytes and nothing after them', async () => {
		expect(await decoded(Buffer.from([0xff, 0xd8, 0xff, 0xe0]))).toEqual({ problem: 'broken' });
	});

	test('a bomb: a file of 200 kB that would be 63 million pixels', async () => {
		const white = { create: { width: 9000, height: 7000, channels: 3, background: '#fff' } } as const;
		const bytes = await sharp(white).png({ compressionLevel: 9 }).toBuffer();
		expect(bytes.length).toBeLessThan(250_000);
		expect(await decoded(bytes)).toEqual({ problem: 'bomb' });
	});

	test('a telephone’s HEIC, which has its own sentence', async () => {
		const bytes = await noise(64, 64).avif({ effort: 0 }).toBuffer();
		bytes.write('heic', 8, 'latin1');
		for (let at = bytes.indexOf('av01'); at >= 0; at = bytes.indexOf('av01')) bytes.write('hvc1', at, 'latin1');
		expect(sniff(bytes)).toEqual({ kind: 'heif', heic: true });
		expect(await decoded(bytes)).toEqual({ problem: 'heic' });
	});
});

test('the readers of all other kinds of file are closed', async () => {
	const gif = Buffer.from('R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7', 'base64');
	const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
	const tiff = await redAndBlue().tiff().toBuffer();
	for (const bytes of [gif, svg, tiff]) await expect(sharp(bytes).metadata()).rejects.toThrow(/unsupported/);
});
