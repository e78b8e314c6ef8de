import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { oneAtATime } from '../../../src/lib/server/one-at-a-time.ts';
import { receivePicture } from '../../../src/lib/server/photos/receive.ts';
import { ownFolder } from '../support/journal.ts';
import { noise, redAndBlue } from './support/pictures.ts';

/** A stream of the given pieces that tells how many were taken. */
function streamOf(pieces: Iterable<Uint8Array>) {
	const iterator = pieces[Symbol.iterator]();
	let taken = 0;
	const stream = new ReadableStream<Uint8Array>({
		pull(controller) {
			const next = iterator.next();
			if (next.done) return controller.close();
			taken++;
			controller.enqueue(next.value);
		}
	});
	return { stream, taken: () => taken };
}

function* inPieces(bytes: Uint8Array, size: number) {
	for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

/** What is received into a folder of its own, and what lies in that folder afterwards. */
async function received(stream: ReadableStream<Uint8Array> | null) {
	const incoming = join(ownFolder(), 'incoming');
	const answer = await receivePicture(incoming, stream, { mirrored: false });
	return { answer, left: existsSync(incoming) ? readdirSync(incoming) : [] };
}

test('a picture that comes in pieces of any size is the same, and nothing is left of the file', async () => {
	const bytes = await noise(300, 200).jpeg().toBuffer();
	const hashes = new Set<unknown>();
	for (const size of [1, 7, 1000, bytes.length]) {
		const { answer, left } = await received(streamOf(inPieces(bytes, size)).stream);
		expect(left).toEqual([]);
		hashes.add('hash' in answer && answer.hash);
	}
	expect([...hashes]).toEqual([expect.stringMatching(/^[0-9a-f]{64}$/)]);
});

test('more than 30 MB is read to its end and refused; exactly 30 MB is looked at', async () => {
	const piece = Buffer.alloc(1024 * 1024, 0xff);
	piece.set([0xff, 0xd8, 0xff, 0xe0]);
	const { stream, taken } = streamOf(Array<Buffer>(31).fill(piece));
	expect(await received(stream)).toEqual({ answer: { problem: 'tooLarge' }, left: [] });
	expect(taken()).toBe(31);
	expect(await received(streamOf(Array<Buffer>(30).fill(piece)).stream)).toEqual({
		answer: { problem: 'broken' },
		left: []
	});
});

test.each([
	['nothing at all', null, 'empty'],
	['an empty file', [], 'empty'],
	['words', [Buffer.from('these are words, and not few of them')], 'notAnImage'],
	['a drawing', [Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')], 'notAnImage']
])('%s: %s', async (_, pieces, problem) => {
	expect(await received(pieces && streamOf(pieces).stream)).toEqual({ answer: { problem }, left: [] });
});

test('a stream that breaks off leaves nothing, and the fault is told', async () => {
	const incoming = join(ownFolder(), 'incoming');
	const bytes = await redAndBlue(200, 100).jpeg().toBuffer();
	const stream = new ReadableStream<Uint8Array>({
		start: (controller) => controller.enqueue(bytes),
		pull: (controller) => controller.error(new Error('the network dropped'))
	});
	await expect(receivePicture(incoming, stream, { mirrored: false })).rejects.toThrow('the network dropped');
	expect(readdirSync(incoming)).toEqual([]);
});

test('tasks run one after another in their order, and one that fails holds nobody up', async () => {
	const singly = oneAtATime();
	const heard: string[] = [];
	let open = 0;
	const task = (name: string, fails = false) =>
		singly(async () => {
			expect(++open).toBe(1);
			await new Promise((resolve) => setTimeout(resolve, 5));
			open--;
			heard.push(name);
			if (fails) throw new Error(name);
		});
	const ended = await Promise.allSettled([task('a'), task('b', true), task('c')]);
	expect(heard).toEqual(['a', 'b', 'c']);
	expect(ended.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
});
