import type { Photo } from '../journal/photo-records.ts';

/** A picture as it is kept: upright, made anew from its pixels alone, so that nothing of the file it came in is left. */
export interface Picture {
	/** SHA-256 of `jpeg`, hexadecimal. */
	readonly hash: string;
	readonly jpeg: Uint8Array;
	readonly thumbnail: Uint8Array;
	/** Of `jpeg`, in pixels. */
	readonly width: number;
	readonly height: number;
	readonly kind: Photo['kind'];
	/** By the camera's own clock, without a time zone: `2026-03-10T14:32:05`. */
	readonly takenAt: string | null;
}
