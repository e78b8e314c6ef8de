/** Largest file that is taken as a photo, in bytes: 30 MB. */
export const largestPhoto = 30 * 1024 * 1024;

/** Most pixels that a picture may have: a file of a few bytes can ask for a thousand times its size in memory. */
export const mostPixels = 60e6;

/** Why a file is not taken as a photo, each with what would be right. */
export const photoSentences = {
	empty: 'This file is empty. Choose the picture again.',
	tooLarge:
		'This is larger than 30 MB, the most that a photo may have. Take it in a smaller size, or cut it down first.',
	notAnImage:
		'This is not a picture of a kind that is taken here: JPEG, PNG, WebP or AVIF. Save it as JPEG and add that.',
	heic: 'This is a HEIC picture, which cannot be opened here. Send it as JPEG: set the camera to its most compatible kind, or save a copy as JPEG.',
	bomb: 'This picture has more than 60 million pixels. Make it smaller and add that.',
	broken: 'This picture cannot be read to its end: part of the file is missing or spoilt. Send it once more.'
} as const;

export type PhotoProblem = keyof typeof photoSentences;
