/**
 * Photos of a fitting as pages show them. The journal's records have the shapes that are asked for here, and more; the ui
 * never imports the server.
 */

interface PinRecord {
	readonly id: string;
	readonly revision: number;
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly alteration: string | null;
	readonly observation: string | null;
	readonly note: string;
}

interface PhotoRecord {
	readonly id: string;
	readonly revision: number;
	readonly number: number;
	readonly hash: string;
	readonly width: number;
	readonly height: number;
	readonly mirrored: boolean;
	readonly note: string;
	readonly pins: readonly PinRecord[];
}

/** Something that a pin on a photo can mark. */
export interface PhotoMark {
	/** What a form sends for it: `alteration <id>`, `observation <id>`. */
	readonly value: string;
	readonly kind: 'alteration' | 'observation';
	readonly id: string;
	/** What stands in the pin's head: `4`, or `b`. */
	readonly head: string;
	/** “Alteration 4”, “Observation b”. */
	readonly name: string;
	/** What it is, in words. */
	readonly words: string;
	/** Of an earlier fitting: it can be marked, and is not offered first. */
	readonly earlier: boolean;
}

export interface PhotoPinShown {
	readonly id: string;
	readonly revision: number;
	/** In parts of the picture's width and height. */
	readonly x: number;
	readonly y: number;
	/** `place`: it marks only a place, and its own number stands in its head. */
	readonly kind: PhotoMark['kind'] | 'place';
	readonly head: string;
	readonly name: string;
	readonly words: string;
	/** The value of what it marks; '' where that is only a place. */
	readonly value: string;
	readonly note: string;
}

export interface PhotoShown {
	readonly id: string;
	readonly revision: number;
	/** “Photo 2”. */
	readonly name: string;
	readonly href: string;
	/** Addresses of the whole picture and of its thumbnail of 320 px. */
	readonly whole: string;
	readonly small: string;
	readonly width: number;
	readonly height: number;
	readonly mirrored: boolean;
	readonly note: string;
	readonly pins: readonly PhotoPinShown[];
	/** What it shows, for those who do not see it. */
	readonly described: string;
}

/**
 * What pins can mark: alterations by their numbers, then observations by their letters. Each is given with its words, as
 * the page says them; observations that are `earlier` are of an earlier fitting and still open.
 */
export function photoMarks(
	alterations: readonly { readonly id: string; readonly number: number; readonly words: string }[],
	observations: readonly {
		readonly id: string;
		readonly letter: string;
		readonly words: string;
		readonly earlier?: boolean;
	}[]
): readonly PhotoMark[] {
	return [
		...alterations.map(({ id, number, words }) => ({
			...{ value: `alteration ${id}`, kind: 'alteration' as const, id, head: String(number) },
			...{ name: `Alteration ${number}`, words, earlier: false }
		})),
		...observations.map(({ id, letter, words, earlier = false }) => ({
			...{ value: `observation ${id}`, kind: 'observation' as const, id, head: letter },
			...{ name: `Observation ${letter}`, words: earlier ? `${words}, seen at an earlier fitting` : words, earlier }
		}))
	];
}

/** A photo as it is shown; `photos` is the address of the fitting's photos, `/garments/…/fittings/…/photos`. */
export function photoShown(photo: PhotoRecord, photos: string, marks: readonly PhotoMark[]): PhotoShown {
	const pins = photo.pins.map((pin) => pinShown(pin, marks));
	const marked = pins.map(({ name, words }) => (words ? `${name}, ${words}` : name)).join('; ');
	return {
		id: photo.id,
		revision: photo.revision,
		name: `Photo ${photo.number}`,
		href: `${photos}/${photo.id}`,
		whole: `/photos/${photo.hash}`,
		small: `/photos/${photo.hash}?thumb=1`,
		width: photo.width,
		height: photo.height,
		mirrored: photo.mirrored,
		note: photo.note,
		pins,
		described: [`Photo ${photo.number}`, photo.note, marked && `marked: ${marked}`].filter(Boolean).join('. ')
	};
}

function pinShown(pin: PinRecord, marks: readonly PhotoMark[]): PhotoPinShown {
	const { id, revision, x, y, note, number } = pin;
	const mark = marks.find((one) => one.id === (pin.alteration ?? pin.observation));
	const at = { id, revision, x, y, note };
	if (mark) return { ...at, kind: mark.kind, head: mark.head, name: mark.name, words: mark.words, value: mark.value };
	const name = `Place ${number}`;
	return { ...at, kind: 'place', head: String(number), name, words: note, value: '' };
}

/** Of what pins can mark at this fitting, the first that no photo shows yet; '' when every one is shown. */
export function nextToMark(marks: readonly PhotoMark[], photos: readonly PhotoShown[]): string {
	const shown = new Set(photos.flatMap(({ pins }) => pins.map(({ value }) => value)));
	return marks.find(({ value, earlier }) => !earlier && !shown.has(value))?.value ?? '';
}
