import { describe, expect, it } from 'vitest';
import { layTable } from '../../../src/lib/ui/drawing/lay-table.ts';
import { pinsOfAlteration } from '../../../src/lib/ui/drawing/pins-of-alteration.ts';
import { carry } from '../../../src/lib/engine/review/carry-and-check.ts';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { cutPaths } from '../../../src/lib/ui/drawing/cut-paths.ts';
import { textWidth } from '../../../src/lib/ui/drawing/clearance.ts';
import type { PinOnDrawing, PinScene } from '../../../src/lib/ui/drawing/scene.ts';
import { carryEach } from '../../../src/lib/ui/fitting/carried/carry-each.ts';
import { asAlterations, readAlteration } from '../../../src/lib/ui/fitting/form/read-alteration.ts';
import { demoDraft } from '../demo-versions.ts';
import { jacket } from '../jacket.ts';
import { partsOf } from './read-path.ts';
import { rectangle } from './rectangle.ts';

const alterations = [
	{
		id: 'a1',
		kind: 'seam',
		on: 'both',
		seam: 'side-back',
		pins: [
			{ at: { level: 'waist' }, a: 0, b: 0 },
			{ at: { end: 'finish' }, a: 6.35, b: 6.35 }
		]
	},
	{
		id: 'a2',
		kind: 'dart',
		on: 'both',
		edge: 'front/armhole',
		at: { fraction: 0.55 },
		intake: 9.525,
		point: { from: { edge: 'front/armhole', fraction: 0.55 }, in: 95 }
	},
	{
		id: 'a3',
		kind: 'edge',
		on: 'both',
		edge: 'front/neck',
		pins: [
			{ at: { end: 'start' }, move: 0 },
			{ at: { end: 'finish' }, move: -9.525 }
		]
	},
	{
		id: 'a4',
		kind: 'seam',
		on: 'both',
		seam: 'side',
		pins: [
			{ at: { end: 'start' }, a: -3.175, b: -3.175 },
			{ at: { level: 'waist' }, a: -6.35, b: -6.35 },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		]
	}
];

function pinned() {
	let draft = jacket;
	const pins: PinOnDrawing[] = [];
	alterations.forEach((alteration, i) => {
		const done = carry(draft, [alteration] as never);
		expect(done.unplaced).toEqual([]);
		const touched = done.applied[0].touched.map(({ feature }) => feature);
		pins.push(...pinsOfAlteration({ number: i + 1, before: draft, after: done.draft, touched }));
		draft = done.draft;
	});
	return { pins, draft };
}

const { pins, draft } = pinned();
const cut = cutPaths(cuttingLines(jacket, { default: 25.4, edges: { 'front/neck': 9.525, 'front/armhole': 9.525 } }));
const scene = layTable(draft, { unit: 'in', before: jacket, cut, pins });

describe('the pins of a fitting', () => {
	it('are one through each layer of a seam, one through an edge, one through a dart', () => {
		expect(pins.map(({ number, feature }) => `${number} ${feature}`)).toEqual([
			'1 back/side-back',
			'1 side-back/side-back',
			'2 front/a2',
			'3 front/neck',
			'4 under-arm/side',
			'4 front/side'
		]);
	});

	it('say the way and the amount that were pinned', () => {
		const said = Object.fromEntries(scene.pins.map(({ feature, label }) => [feature, label]));
		expect(said).toEqual({
			'back/side-back': 'out 1/4',
			'side-back/side-back': 'out 1/4',
			'front/a2': 'in 3/8',
			'front/neck': 'lower 3/8',
			'under-arm/side': 'in 1/4',
			'front/side': 'in 1/4'
		});
	});

	it('say them in millimetres to whoever reads centimetres', () => {
		const metric = layTable(draft, { unit: 'cm', before: jacket, pins });
		expect(metric.pins.find(({ feature }) => feature === 'front/side')?.label).toBe('in 6.5 mm');
	});

	it('have heads and words that lie on the table and on no other head or words', () => {
		const boxes = scene.pins.flatMap((pin) => [headBox(pin), labelBox(pin)]);
		boxes.forEach((box, i) => {
			expect(box.left).toBeGreaterThanOrEqual(0);
			expect(box.right).toBeLessThanOrEqual(scene.width);
			expect(box.top).toBeGreaterThanOrEqual(0);
			expect(box.bottom).toBeLessThanOrEqual(scene.measure!.top);
			for (const other of boxes.slice(0, i)) {
				const apart =
					box.left >= other.right || other.left >= box.right || box.top >= other.bottom || other.top >= box.bottom;
				expect(apart).toBe(true);
			}
		});
	});

	it('have an arrow the way of the move where the band is narrow, and none where it is wide enough to tell', () => {
		const arrowOf = (more: number) => {
			const after = rectangle({ right: more });
			const pin = { number: 1, feature: 'front/right', way: 'out', word: 'out', amount: more, s: 100 } as const;
			return layTable(after, { unit: 'in', before: rectangle(), pins: [pin] }).pins[0].arrow;
		};
		expect(arrowOf(20)).toBeUndefined();
		const [shaft] = partsOf(arrowOf(4)!, 1000);
		expect(shaft[shaft.length - 1][0] - shaft[0][0]).toBeGreaterThan(5);
	});
});

describe('the word for the way', () => {
	const wordFor = (before: Parameters<typeof rectangle>[0], after: Parameters<typeof rectangle>[0], edge: string) => {
		const done = { number: 1, before: rectangle(before), after: rectangle(after), touched: [`front/${edge}`] };
		return pinsOfAlteration(done).map(({ way, word, amount = 0 }) => [way, word, Math.round(amount * 1000) / 1000]);
	};

	it.each([
		['a seam that went in', { right: 6 }, {}, 'right', 'in', 'in', 6],
		['a seam that went out', {}, { right: 6 }, 'right', 'out', 'out', 6],
		['an open upper edge that went down', { top: 4 }, {}, 'top', 'in', 'lower', 4],
		['an open lower edge that went down', {}, { bottom: 10 }, 'bottom', 'out', 'longer', 10],
		['an open lower edge that went up', { bottom: 10 }, {}, 'bottom', 'in', 'shorter', 10]
	])('is right for %s', (_, before, after, edge, way, word, amount) => {
		expect(wordFor(before, after, edge)).toEqual([[way, word, amount]]);
	});

	it('is left out for what did not move, and for what was not touched', () => {
		expect(wordFor({}, {}, 'right')).toEqual([]);
		expect(wordFor({}, { right: 6 }, 'top')).toEqual([]);
	});
});

function headBox({ head: [x, y], radius }: PinScene) {
	return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
}

function labelBox({ label, labelAt: [x, y], labelAnchor }: PinScene) {
	const width = textWidth(label, 13.5, true);
	const left = labelAnchor === 'start' ? x : labelAnchor === 'end' ? x - width : x - width / 2;
	return { left, right: left + width, top: y - 10, bottom: y + 1 };
}

it('puts a pin at the edge of the table into the cloth rather than off the drawing', () => {
	const read = readAlteration(demoDraft, { act: 'folded-across', across: 'waist', first: '3/8' }, 'in');
	if (!('read' in read)) throw new Error(JSON.stringify(read.problems));
	const [one] = carryEach(demoDraft, asAlterations(read.read.intents));
	const pins = pinsOfAlteration({
		number: 1,
		before: demoDraft,
		after: one.after,
		touched: one.step!.touched.map(({ feature }) => feature)
	});
	const { pins: placed, width } = layTable(one.after, { unit: 'in', before: demoDraft, pins });
	expect(placed.length).toBeGreaterThan(3);
	for (const { label, labelAt, labelAnchor, head, radius } of placed) {
		const wide = textWidth(label, 14, true);
		const left = labelAt[0] - { start: 0, middle: wide / 2, end: wide }[labelAnchor];
		expect(left).toBeGreaterThan(0);
		expect(left + wide).toBeLessThan(width + 1);
		expect(head[0] + radius).toBeLessThan(width);
	}
});
