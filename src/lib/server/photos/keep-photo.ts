import type { Answer } from '../journal/answer.ts';
import type { Journal } from '../journal/journal.ts';
import type { NewPhoto } from '../journal/photo-changes.ts';
import type { Photo } from '../journal/photo-records.ts';
import { turnOver } from './decode.ts';
import { receivePicture } from './receive.ts';
import { photoSentences, type PhotoProblem } from './sentences.ts';

/** A file that was not taken, with what would be right and the status that says so. */
export interface NotTaken {
	readonly status: 400 | 413 | 415;
	readonly sentence: string;
}

const statuses: Readonly<Record<PhotoProblem, NotTaken['status']>> = {
	empty: 400,
	broken: 400,
	tooLarge: 413,
	bomb: 413,
	notAnImage: 415,
	heic: 415
};

/**
 * Receives a picture and keeps it with an open fitting at which the wearer agreed. Whether it may be kept is asked before a
 * byte of it is read, and again when it is there.
 */
export async function keepPhoto(
	journal: Journal,
	fittingId: string,
	stream: ReadableStream<Uint8Array> | null,
	input: NewPhoto = {}
): Promise<Answer<Photo, unknown> | NotTaken> {
	const may = journal.mayAddPhotos(fittingId);
	if (!may.ok) return may;
	const received = await receivePicture(journal.incomingPictures(), stream, { mirrored: input.mirrored ?? false });
	if ('problem' in received) return { status: statuses[received.problem], sentence: photoSentences[received.problem] };
	return journal.addPhoto(fittingId, received, input);
}

/** Turns a photo over, left to right, as one that was (or after all was not) taken in a mirror. */
export async function turnPhoto(journal: Journal, photo: Photo, revision: number): Promise<Answer<Photo>> {
	return journal.turnPhoto(photo.id, revision, await turnOver(journal.pictureFile(photo.hash, 'whole')!));
}
