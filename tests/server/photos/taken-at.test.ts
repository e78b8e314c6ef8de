import fc from 'fast-check';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { takenAt } from '../../../src/lib/server/photos/taken-at.ts';
import { redAndBlue } from './support/pictures.ts';

const exifOf = async (DateTimeOriginal: string) => {
	const bytes = await redAndBlue()
		.withExif({ IFD0: { Make: 'x'.repeat(40), DateTime: '2001:01:01 01:01:01' }, IFD2: { DateTimeOriginal } })
		.jpeg()
		.toBuffer();
	return (await sharp(bytes).metadata()).exif!;
};

test('the day and time that another program wrote are read', async () => {
	expect(takenAt(await exifOf('2026:03:10 14:32:05'))).toBe('2026-03-10T14:32:05');
});

test('the same in the other order of bytes', () => {
	// By hand, after TIFF 6.0, section 2: header; one folder with one entry that points to the Exif folder; there one entry
	// of 20 letters.
	const tiff = Buffer.alloc(64);
	tiff.write('MM\0*', 'latin1');
	tiff.writeUInt32BE(8, 4);
	tiff.writeUInt16BE(1, 8);
	tiff.writeUInt16BE(0x8769, 10);
	tiff.writeUInt32BE(26, 18);
	tiff.writeUInt16BE(1, 26);
	tiff.writeUInt16BE(0x9003, 28);
	tiff.writeUInt32BE(44, 36);
	tiff.write('2025:12:31 23:59:59\0', 44, 'latin1');
	expect(takenAt(tiff)).toBe('2025-12-31T23:59:59');
});

test.each(['0000:00:00 00:00:00', '    :  :     :  :  ', '2026:02:30 10:00:00', '2026:03:10 25:00:00'])(
	'“%s” is no time',
	async (written) => {
		expect(takenAt(await exifOf(written))).toBeNull();
	}
);

test('no Exif is no time, and any bytes at all are read without harm', async () => {
	expect(takenAt(undefined)).toBeNull();
	const good = await exifOf('2026:03:10 14:32:05');
	fc.assert(
		fc.property(
			fc.array(fc.tuple(fc.nat(good.length - 1), fc.integer({ min: 0, max: 255 })), { maxLength: 12 }),
			fc.nat(good.length),
			(spoilt, length) => {
				const bytes = Buffer.from(good.subarray(0, length));
				for (const [at, value] of spoilt) if (at < length) bytes[at] = value;
				const read = takenAt(bytes);
				expect(read === null || /^[12]\d{3}(-\d\d){2}T\d\d(:\d\d){2}$/.test(read)).toBe(true);
			}
		)
	);
});
