import { createHash } from 'node:crypto';
import sharp, { type OutputInfo } from 'sharp';
import { oneAtATime } from '../one-at-a-time.ts';
import type { Picture } from './picture.ts';
import { mostPixels, type PhotoProblem } from './sentences.ts';
import type { Sniffed } from './sniff.ts';
import { takenAt } from './taken-at.ts';

/** Longest side of the kept picture and of its thumbnail, in pixels. */
const longest = { whole: 1600, small: 320 };

const jpegOptions = { quality: 84, chromaSubsampling: '4:2:0' } as const;

// The library reads some twenty kinds of file; whatever is not named here is closed, so that a hole in one of the others
// is no way in.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
	operation: ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp', 'VipsForeignLoadHeif']
});
sharp.cache(false);

const singly = oneAtATime();

/** As much as goes through the decoder of one picture. A picture with the first fault in its pixels is not taken. */
const reading = { limitInputPixels: mostPixels, failOn: 'error' } as const;

/**
 * Makes a picture anew from the pixels of a file: turned upright, no side longer than 1600 px, in sRGB, over white where it
 * was clear, as JPEG without any of the file's other data (place, camera, thumbnail); `mirrored` turns it over left to
 * right. One file at a time. Refused: what cannot be decoded to its last pixel, and more than 60 million pixels.
 */
export function decodePicture(
	file: string,
	{ kind, heic }: Sniffed,
	{ mirrored }: { mirrored: boolean }
): Promise<Picture | { problem: PhotoProblem }> {
	return singly(async () => {
		const made = await madeAnew(file, mirrored).catch((fault: unknown) => ({ problem: problemOf(fault, heic) }));
		return 'problem' in made ? made : { kind, ...made };
	});
}

/** The kept picture turned over, left to right; thrown: a file of our own that cannot be read. */
export function turnOver(file: string): Promise<Omit<Picture, 'kind' | 'takenAt'>> {
	return singly(async () =>
		kept(await sharp(file, reading).flop().jpeg(jpegOptions).toBuffer({ resolveWithObject: true }))
	);
}

async function madeAnew(file: string, mirrored: boolean): Promise<Omit<Picture, 'kind'>> {
	const { exif } = await sharp(file, reading).metadata();
	const upright = sharp(file, reading)
		.autoOrient()
		.flop(mirrored)
		.resize({ width: longest.whole, height: longest.whole, fit: 'inside', withoutEnlargement: true })
		.flatten({ background: '#ffffff' })
		.toColourspace('srgb')
		.jpeg(jpegOptions);
	return { ...(await kept(await upright.toBuffer({ resolveWithObject: true }))), takenAt: takenAt(exif) };
}

async function kept({ data, info }: { data: Buffer; info: OutputInfo }): Promise<Omit<Picture, 'kind' | 'takenAt'>> {
	const thumbnail = await sharp(data)
		.resize({ width: longest.small, height: longest.small, fit: 'inside', withoutEnlargement: true })
		.jpeg(jpegOptions)
		.toBuffer();
	const hash = createHash('sha256').update(data).digest('hex');
	return { hash, jpeg: data, thumbnail, width: info.width, height: info.height };
}

/** What the library says of a file, as one of our sentences. It says it in words only, which are not for the page. */
function problemOf(fault: unknown, heic: boolean): PhotoProblem {
	if (!(fault instanceof Error) || fault.name !== 'Error' || /^Input file is missing/.test(fault.message)) throw fault;
	if (/pixel limit/i.test(fault.message)) return 'bomb';
	return heic ? 'heic' : 'broken';
}
