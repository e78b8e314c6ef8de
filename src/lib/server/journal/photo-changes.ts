import type { Picture } from '../photos/picture.ts';
import type { Day } from './records.ts';

/** What is asked of the journal about photos; read on as `changes.ts` says. */

/** What the wearer said when asked, each by itself. */
export interface NewConsent {
	readonly taking: boolean;
	readonly keeping: boolean;
	readonly showing: boolean;
	readonly date: Day;
}

export interface NewPhoto {
	/** The picture was taken in a mirror and has been turned over already. Default no. */
	readonly mirrored?: boolean;
	readonly note?: string;
}

export interface PhotoFields {
	readonly note?: string;
	/** Whether this one may be shown to others; only where the wearer agreed at the fitting. */
	readonly showing?: boolean;
}

/** A picture that was made from the one that is kept. */
export type TurnedPicture = Pick<Picture, 'hash' | 'jpeg' | 'thumbnail' | 'width' | 'height'>;

export interface NewPhotoPin {
	/** In parts of the picture's width and height, 0 to 1. */
	readonly x: number;
	readonly y: number;
	/** Id of an alteration or of an observation of the same garment; not both. */
	readonly alteration?: string | null;
	readonly observation?: string | null;
	readonly note?: string;
}
