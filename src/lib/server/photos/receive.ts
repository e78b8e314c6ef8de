import { randomBytes } from 'node:crypto';
import { mkdirSync, rmSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { decodePicture } from './decode.ts';
import type { Picture } from './picture.ts';
import { largestPhoto, type PhotoProblem } from './sentences.ts';
import { sniff, sniffedBytes } from './sniff.ts';

/**
 * Receives a file as a stream of bytes and makes a picture of it. It goes to the disk as it comes, never more than 30 MB of
 * it, and is gone again when this answers, whatever came of it. What is too large or no picture is still read to its end,
 * so that whoever sends it hears why. Refused, with nothing stored: whatever `photoSentences` names.
 */
export async function receivePicture(
	incoming: string,
	stream: ReadableStream<Uint8Array> | null,
	options: { mirrored: boolean }
): Promise<Picture | { problem: PhotoProblem }> {
	mkdirSync(incoming, { recursive: true, mode: 0o700 });
	const file = join(incoming, randomBytes(12).toString('hex'));
	try {
		const received = await written(file, stream);
		if ('problem' in received) return received;
		const sniffed = sniff(received.first);
		return sniffed ? await decodePicture(file, sniffed, options) : { problem: 'notAnImage' };
	} finally {
		rmSync(file, { force: true });
	}
}

async function written(
	file: string,
	stream: ReadableStream<Uint8Array> | null
): Promise<{ first: Uint8Array } | { problem: PhotoProblem }> {
	if (!stream) return { problem: 'empty' };
	const out = await open(file, 'wx', 0o600);
	let size = 0;
	let first: Uint8Array = new Uint8Array();
	try {
		for await (const chunk of stream) {
			if (first.length < sniffedBytes) first = Buffer.concat([first, chunk.subarray(0, sniffedBytes - first.length)]);
			size += chunk.length;
			if (size <= largestPhoto) await out.writeFile(chunk);
		}
	} finally {
		await out.close();
	}
	if (size === 0) return { problem: 'empty' };
	return size > largestPhoto ? { problem: 'tooLarge' } : { first };
}
