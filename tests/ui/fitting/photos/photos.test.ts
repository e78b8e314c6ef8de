import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directions, nudged, sizesShown, tapped } from '../../../../src/lib/ui/fitting/photos/photo-points.ts';
import { nextToMark, photoMarks, photoShown } from '../../../../src/lib/ui/fitting/photos/photos.ts';

const marks = photoMarks(
	[
		{ id: 'a1', number: 1, words: 'side seam, took in 1/4″' },
		{ id: 'a2', number: 2, words: 'front neck, chalked lower' }
	],
	[
		{ id: 'o1', letter: 'a', words: 'drag lines' },
		{ id: 'o9', letter: 'c', words: 'neck stands away', earlier: true }
	]
);
const pin = (id: string, number: number, more: object) => ({
	...{ id, revision: 1, number, x: 0.5, y: 0.5, alteration: null, observation: null, note: '' },
	...more
});
const record = {
	...{
		id: 'p1',
		revision: 3,
		number: 2,
		hash: 'ff00',
		width: 1200,
		height: 1600,
		mirrored: false,
		note: 'from behind'
	},
	pins: [
		pin('x', 1, { alteration: 'a2' }),
		pin('y', 2, { observation: 'o1', note: 'deeper' }),
		pin('z', 3, { note: 'hook' })
	]
};

test('pins say what they mark: an alteration by its number, an observation by its letter, a place by its own number', () => {
	const shown = photoShown(record, '/garments/g/fittings/f/photos', marks);
	expect(shown.pins.map(({ kind, head, name, words, value }) => [kind, head, name, words, value])).toEqual([
		['alteration', '2', 'Alteration 2', 'front neck, chalked lower', 'alteration a2'],
		['observation', 'a', 'Observation a', 'drag lines', 'observation o1'],
		['place', '3', 'Place 3', 'hook', '']
	]);
	expect(shown).toMatchObject({
		...{
			name: 'Photo 2',
			href: '/garments/g/fittings/f/photos/p1',
			whole: '/photos/ff00',
			small: '/photos/ff00?thumb=1'
		},
		described:
			'Photo 2. from behind. marked: Alteration 2, front neck, chalked lower; Observation a, drag lines; Place 3, hook'
	});
});

test('what is offered next is the first of this fitting that no photo shows', () => {
	const shown = photoShown(record, '', marks);
	expect(nextToMark(marks, [])).toBe('alteration a1');
	expect(nextToMark(marks, [shown])).toBe('alteration a1');
	const all = photoShown({ ...record, pins: [...record.pins, pin('w', 4, { alteration: 'a1' })] }, '', marks);
	expect(nextToMark(marks, [all]), 'the earlier observation is not offered by itself').toBe('');
});

const anySize = fc.record({ width: fc.integer({ min: 1, max: 1600 }), height: fc.integer({ min: 1, max: 1600 }) });

test('a tap on the shown picture is the part of it that was tapped, to within half a pixel’s rounding of its size', () => {
	fc.assert(
		fc.property(
			anySize,
			fc.constantFrom('narrow', 'wide'),
			fc.double({ min: 0, max: 1, noNaN: true }),
			(photo, size, part) => {
				const { width, height } = sizesShown(photo)[size as 'narrow'];
				const pixel = { x: Math.round(part * width), y: Math.round(part * height) };
				fc.pre(pixel.x > 0 || pixel.y > 0);
				const point = tapped(photo, size as 'narrow', pixel);
				expect(Math.abs(point.x - part)).toBeLessThanOrEqual(0.5 / width + 1e-12);
				expect(Math.abs(point.y - part)).toBeLessThanOrEqual(0.5 / height + 1e-12);
			}
		)
	);
});

test('both shown sizes keep the picture’s own proportions and fit a phone of 360 and a table of 700', () => {
	expect(sizesShown({ width: 1200, height: 1600 })).toEqual({
		narrow: { width: 336, height: 448 },
		wide: { width: 540, height: 720 }
	});
	expect(sizesShown({ width: 1600, height: 1200 }).wide).toEqual({ width: 660, height: 495 });
});

test('a press of the keyboard, which sends the corner, puts the pin in the middle', () => {
	expect(tapped({ width: 100, height: 50 }, 'wide', { x: 0, y: 0 })).toEqual({ x: 0.5, y: 0.5 });
});

test('steps there and back come to the same place, and none leaves the picture', () => {
	const opposite = { left: 'right', right: 'left', up: 'down', down: 'up' } as const;
	const inside = fc.double({ min: 0.1, max: 0.9, noNaN: true });
	fc.assert(
		fc.property(inside, inside, fc.constantFrom(...directions), fc.boolean(), (x, y, way, large) => {
			const photo = { width: 1200, height: 1600 };
			const back = nudged(nudged({ x, y }, way, photo, large), opposite[way], photo, large);
			expect(back.x).toBeCloseTo(x, 12);
			expect(back.y).toBeCloseTo(y, 12);
			let far = { x, y };
			for (let i = 0; i < 60; i++) far = nudged(far, way, photo, true);
			expect([far.x, far.y].every((part) => part >= 0 && part <= 1)).toBe(true);
			expect([far.x, far.y].some((part) => part === 0 || part === 1)).toBe(true);
		})
	);
});

test('a step upwards is as long on the picture as a step sideways', () => {
	const photo = { width: 400, height: 1600 };
	const [aside, up] = [nudged({ x: 0.5, y: 0.5 }, 'right', photo), nudged({ x: 0.5, y: 0.5 }, 'up', photo)];
	expect((aside.x - 0.5) * photo.width).toBeCloseTo((0.5 - up.y) * photo.height, 9);
});
