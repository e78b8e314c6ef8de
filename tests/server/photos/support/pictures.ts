import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Picture } from '../../../../src/lib/server/photos/picture.ts';
import { ownFolder } from '../../support/journal.ts';

/** Left half red, right half blue, of 40 by 20 unless said otherwise. */
export function redAndBlue(width = 40, height = 20) {
	const data = Buffer.alloc(width * height * 3);
	for (let pixel = 0; pixel < width * height; pixel++) data[pixel * 3 + (pixel % width < width / 2 ? 0 : 2)] = 255;
	return sharp(data, { raw: { width, height, channels: 3 } });
}

/** A picture that does not compress away, so that half of its file is half of the picture. */
export const noise = (width: number, height: number) =>
	sharp({
		create: { width, height, channels: 3, background: '#888', noise: { type: 'gaussian', mean: 128, sigma: 60 } }
	});

/** Puts bytes into a file of its own for one test. */
export function fileOf(bytes: Uint8Array): string {
	const file = join(ownFolder(), 'picture');
	writeFileSync(file, bytes);
	return file;
}

/** The colour in the middle of each quarter of a picture, by name: upper left, upper right, lower left, lower right. */
export async function quarters(bytes: Uint8Array): Promise<string[]> {
	const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
	const at = (x: number, y: number) => {
		const from = (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels;
		const [red, green, blue] = data.subarray(from, from + 3);
		if (red > 200 && green < 60 && blue < 60) return 'red';
		if (blue > 200 && green < 60 && red < 60) return 'blue';
		return red > 240 && green > 240 && blue > 240 ? 'white' : `${red} ${green} ${blue}`;
	};
	return [at(0.25, 0.25), at(0.75, 0.25), at(0.25, 0.75), at(0.75, 0.75)];
}

/** Made-up bytes in the place of a picture, for what does not look into it. */
export function pretended(words: string): Picture {
	const jpeg = Buffer.from(`picture of ${words}`);
	return {
		hash: createHash('sha256').update(jpeg).digest('hex'),
		jpeg,
		thumbnail: Buffer.from(`small picture of ${words}`),
		width: 1200,
		height: 1600,
		kind: 'jpeg',
		takenAt: '2026-01-28T14:32:05'
	};
}
