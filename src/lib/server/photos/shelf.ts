import { randomBytes } from 'node:crypto';
import {
	closeSync,
	existsSync,
	fsyncSync,
	mkdirSync,
	openSync,
	readdirSync,
	renameSync,
	rmSync,
	writeSync
} from 'node:fs';
import { dirname, join } from 'node:path';
import type { Picture } from './picture.ts';

/**
 * The folder of pictures beside the database. A picture is two files named by its content, `ab/abcd….jpg` and
 * `ab/abcd….small.jpg`; either is there whole or not at all, whenever the machine stops.
 */
export interface PhotoShelf {
	/** Puts both files there, on the disk before it returns; a picture that is there already is left as it is. */
	put(picture: Pick<Picture, 'hash' | 'jpeg' | 'thumbnail'>): void;
	/** Takes both files away, with what a broken-off `put` left of them. */
	erase(hash: string): void;
	/** Path of one of the files, whether or not it is there. */
	pathOf(hash: string, which: 'whole' | 'small'): string;
	/** Folder for files that are still coming in; it is on the same disk, and emptied at each opening. */
	readonly incoming: string;
	/** Takes away what was still coming in when the server last stopped. */
	clearIncoming(): void;
}

export function photoShelf(folder: string): PhotoShelf {
	const incoming = join(folder, 'incoming');
	const pathOf = (hash: string, which: 'whole' | 'small') =>
		join(folder, hash.slice(0, 2), `${hash}${which === 'whole' ? '' : '.small'}.jpg`);
	return {
		incoming,
		pathOf,
		put({ hash, jpeg, thumbnail }) {
			putWhole(pathOf(hash, 'small'), thumbnail);
			putWhole(pathOf(hash, 'whole'), jpeg);
		},
		erase(hash) {
			const shelf = dirname(pathOf(hash, 'whole'));
			if (!existsSync(shelf)) return;
			for (const name of readdirSync(shelf)) if (name.startsWith(hash)) rmSync(join(shelf, name));
		},
		clearIncoming: () => rmSync(incoming, { recursive: true, force: true })
	};
}

/** Writes a file under another name and gives it its own when all of it is on the disk. */
function putWhole(path: string, bytes: Uint8Array): void {
	if (existsSync(path)) return;
	mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
	const half = `${path}.${randomBytes(6).toString('hex')}.half`;
	const file = openSync(half, 'wx', 0o600);
	try {
		for (let written = 0; written < bytes.length;) written += writeSync(file, bytes, written);
		fsyncSync(file);
	} finally {
		closeSync(file);
	}
	renameSync(half, path);
	// The new name is on the disk only when the folder is. Windows cannot open folders and does it by itself.
	if (process.platform !== 'win32') syncFolder(dirname(path));
}

function syncFolder(folder: string): void {
	const opened = openSync(folder, 'r');
	try {
		fsyncSync(opened);
	} finally {
		closeSync(opened);
	}
}
