import { counted } from '$lib/ui/garment/counted.ts';
import { photosHere } from './photos/photos-here.ts';

/** Prints that lie on the table of the fitting: the others are on their own page. */
const most = 3;

export type PhotosTold = ReturnType<typeof photosTold>;

/** The latest photos of a fitting, and what the way to all of them says. */
export function photosTold(...fitting: Parameters<typeof photosHere>) {
	const { at, shown, contents } = photosHere(...fitting);
	const open = contents.fitting.closedAt === null;
	const here = shown.length === 0 ? '' : counted(shown.length, 'photo', 'photos');
	return {
		at,
		latest: shown.slice(-most),
		words: open ? (here ? `${here}: add, or mark` : 'Add photos') : here || 'No photo was kept of it'
	};
}
