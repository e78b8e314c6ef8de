import type { Day, Instant } from './records.ts';

/** Photos of a fitting and what is placed on them; read on as `records.ts` says. */

/** What the wearer agreed to when asked at a fitting. */
export interface PhotoConsent {
	/** Counts what was said at this fitting; 0 before anything was. */
	readonly revision: number;
	readonly taking: boolean;
	readonly keeping: boolean;
	readonly showing: boolean;
	/** The day on which it was said; `null` before anything was. */
	readonly date: Day | null;
}

export interface Photo {
	readonly id: string;
	readonly revision: number;
	readonly fitting: string;
	/** “Photo 2”. */
	readonly number: number;
	/** SHA-256 of the kept picture, hexadecimal: its address is `/photos/<hash>`. */
	readonly hash: string;
	/** Of the kept picture, upright, in pixels; and its size in bytes. */
	readonly width: number;
	readonly height: number;
	readonly bytes: number;
	/** What it came as; all are kept as JPEG. */
	readonly kind: 'jpeg' | 'png' | 'webp' | 'heif';
	/** Day and time by the camera's clock, `2026-03-10T14:32:05`, where the picture said so. */
	readonly takenAt: string | null;
	/** It was taken in a mirror and has been turned over, so that right and left are as they are seen. */
	readonly mirrored: boolean;
	readonly note: string;
	/** The days on which the wearer agreed to its being taken, kept and shown to others; `null`: not agreed. */
	readonly taking: Day | null;
	readonly keeping: Day | null;
	readonly showing: Day | null;
	readonly pins: readonly PhotoPin[];
	readonly addedAt: Instant;
}

export interface PhotoPin {
	readonly id: string;
	readonly revision: number;
	readonly photo: string;
	/** Its number on the photo. */
	readonly number: number;
	/** In parts of the picture's width and height, 0 to 1, from the upper left corner. */
	readonly x: number;
	readonly y: number;
	/** Ids of the alteration or the observation that it marks; neither where it only has a note. */
	readonly alteration: string | null;
	readonly observation: string | null;
	readonly note: string;
}

/** The photos of one fitting. */
export interface PhotosOfFitting {
	readonly consent: PhotoConsent;
	/** By number. */
	readonly photos: readonly Photo[];
}
