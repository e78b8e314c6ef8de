/** Points on a photo, in parts of its width and height, 0 to 1 from the upper left corner. */
export interface PhotoPoint {
	readonly x: number;
	readonly y: number;
}

export interface Size {
	readonly width: number;
	readonly height: number;
}

/** How far one step of an arrow moves a pin, and a large one. */
const step = { small: 0.005, large: 0.04 };

export const directions = ['left', 'right', 'up', 'down'] as const;
export type Direction = (typeof directions)[number];

const ways: Readonly<Record<Direction, PhotoPoint>> = {
	left: { x: -1, y: 0 },
	right: { x: 1, y: 0 },
	up: { x: 0, y: -1 },
	down: { x: 0, y: 1 }
};

/** A point a step further, never off the picture. Steps are as long upwards as sideways: parts of its longer side. */
export function nudged(point: PhotoPoint, direction: Direction, { width, height }: Size, large = false): PhotoPoint {
	const by = (large ? step.large : step.small) * Math.max(width, height);
	const { x, y } = ways[direction];
	return { x: onPicture(point.x + (x * by) / width), y: onPicture(point.y + (y * by) / height) };
}

export const onPicture = (part: number): number => Math.min(1, Math.max(0, part));

/**
 * The sizes in which a photo is shown to be marked: each the largest that fits its box, in whole CSS pixels. They are fixed,
 * since a tap on a picture in a form is sent in pixels of what is shown, and only so is it known which part of it they are.
 */
const boxes = { narrow: { width: 336, height: 600 }, wide: { width: 660, height: 720 } } as const;
export type ShownSize = keyof typeof boxes;

export function sizesShown(photo: Size): Readonly<Record<ShownSize, Size>> {
	const fit = (box: Size): Size => {
		const scale = Math.min(box.width / photo.width, box.height / photo.height);
		const whole = (side: number) => Math.max(1, Math.round(side * scale));
		return { width: whole(photo.width), height: whole(photo.height) };
	};
	return { narrow: fit(boxes.narrow), wide: fit(boxes.wide) };
}

/**
 * The point of a tap that a form sent in pixels of one of the shown sizes. A picture that is pressed by the keyboard sends
 * the corner, 0 and 0: the pin is then put in the middle, to be moved from there.
 */
export function tapped(photo: Size, size: ShownSize, pixel: PhotoPoint): PhotoPoint {
	if (pixel.x === 0 && pixel.y === 0) return { x: 0.5, y: 0.5 };
	const { width, height } = sizesShown(photo)[size];
	return { x: onPicture(pixel.x / width), y: onPicture(pixel.y / height) };
}
