import polygonClipping from 'polygon-clipping';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { check, easeTable, formatDraft, parseDraft, walk } from '../../src/lib/engine/index.ts';
import file from '../../src/lib/intake/demo-draft.json';

// The body that the demo is drawn for: tight-fitting foundation waist, two-piece back (Woman's Institute text on close-fitting
// patterns, § 30, c. 1915–20), in inches.
const body = { neck: 13, bust: 38, chest: 14, backWidth: 13.5, backLength: 15, depth: 7, armhole: 15, waist: 25 };
const inch = 25.4;
/** Cloth between the front edge and the centre line that it buttons on. */
const buttonStand = 0.75 * inch;

const draft = parseDraft(file);

// Lengths and points are measured here by a general-purpose library, not by the engine.
function edge(name: string) {
	const [piece, id] = name.split('/');
	const found = file.pieces.find((one) => one.id === piece)?.edges.find((one) => one.id === id);
	if (!found) throw new Error(name);
	return new svgPathProperties(found.path);
}

function length(name: string): number {
	return edge(name).getTotalLength();
}

/** x where an edge that runs steadily up or down crosses a height. */
function crossing(name: string, y: number): number {
	const path = edge(name);
	const total = path.getTotalLength();
	const start = path.getPointAtLength(0).y;
	let low = 0;
	let high = total;
	for (let i = 0; i < 60; i += 1) {
		const middle = (low + high) / 2;
		if (path.getPointAtLength(middle).y < y === start < y) low = middle;
		else high = middle;
	}
	return path.getPointAtLength(low).x;
}

function samples(name: string): { x: number; y: number }[] {
	const path = edge(name);
	const total = path.getTotalLength();
	return Array.from({ length: 400 }, (_, i) => path.getPointAtLength((total * i) / 400));
}

function heightOf(level: string): number {
	for (const { levels } of file.pieces) for (const one of levels) if (one.level === level) return one.line[0][1];
	throw new Error(level);
}

const sides = {
	back: ['back/centre-back', 'back/side-back'],
	'side-back': ['side-back/side-back', 'side-back/under-arm-back'],
	'under-arm': ['under-arm/under-arm-back', 'under-arm/side'],
	front: ['front/side', 'front/front-edge']
} as const;

/** As drawn, less the button stand, on the half-draft. */
function drawnHalf(level: string): number {
	const y = heightOf(level);
	const widths = Object.values(sides).map(([left, right]) => crossing(right, y) - crossing(left, y));
	return widths.reduce((sum, width) => sum + width) - buttonStand;
}

describe('the demo draft', () => {
	it('is written back as it stands', () => {
		expect(JSON.parse(JSON.stringify(formatDraft(draft)))).toEqual(file);
	});

	it('asks no query', () => {
		expect(check(draft)).toEqual([]);
	});

	it('has every seam walk within half a millimetre of the fullness meant', () => {
		const seams = walk(draft);
		expect(seams).toHaveLength(8);
		for (const { seam, difference } of seams) expect(Math.abs(difference), seam).toBeLessThan(0.5);
	});

	it('has every plain seam as long on one side as on the other, by another library', () => {
		const pairs = [
			['back/side-back', 'side-back/side-back'],
			['side-back/under-arm-back', 'under-arm/under-arm-back'],
			['under-arm/side', 'front/side'],
			['top-sleeve/fore', 'under-sleeve/fore'],
			['under-sleeve/hind', 'top-sleeve/hind']
		];
		for (const [a, b] of pairs) expect(Math.abs(length(a) - length(b)), a).toBeLessThan(0.3);
		// Baldt, Clothing for Women (1916), tailored waist: the back shoulder ¼ in longer, eased in.
		expect(length('back/shoulder') - length('front/shoulder')).toBeCloseTo(inch / 4, 2);
	});

	it('has mated notches meet within a millimetre wherever no fullness is meant', () => {
		const plain = file.seams.filter(({ ease = 0 }) => ease === 0).map(({ id }) => id);
		const notched = walk(draft).filter(({ seam }) => plain.includes(seam));
		const gaps = notched.flatMap(({ notches }) => notches.map(({ difference }) => Math.abs(difference)));
		expect(gaps).toHaveLength(10);
		expect(Math.max(...gaps)).toBeLessThan(1);
	});

	it('has a sleeve head 1 1/2″ longer than its armhole', () => {
		const armhole = ['back', 'side-back', 'under-arm', 'front'].map((piece) => length(`${piece}/armhole`));
		const head = ['top-sleeve/head-back', 'under-sleeve/head', 'top-sleeve/head-front'].map(length);
		const sum = (lengths: number[]) => lengths.reduce((total, one) => total + one);
		// Usual woven 1–1½ in, up to 2 in for tailored wool (common figures).
		expect(sum(head) - sum(armhole)).toBeCloseTo(1.5 * inch, 1);
		// Armhole 15 in on the body; a jacket’s is larger by 2 to 3 in (common practice, no source).
		expect(sum(armhole) / inch - body.armhole).toBeGreaterThan(2);
		expect(sum(armhole) / inch - body.armhole).toBeLessThan(3);
	});

	it('has a little ease over the body at bust and waist', () => {
		const rows = easeTable(draft, { bust: body.bust * inch, waist: body.waist * inch });
		const ease = (level: string) => (rows.find((row) => row.level === level)?.ease ?? Number.NaN) / inch;
		expect(ease('bust')).toBeGreaterThan(2);
		expect(ease('bust')).toBeLessThan(3);
		expect(ease('waist')).toBeGreaterThan(1);
		expect(ease('waist')).toBeLessThan(2);
	});

	// The same text: 38 − 25 = 13 in round the body, 6½ in on the half-draft, all of it in darts and seam shaping.
	it('takes 6 1/2″ out between bust and waist on the half-draft, by seams and darts, ease set apart', () => {
		const front = file.pieces.find(({ id }) => id === 'front');
		const waist = heightOf('waist');
		const darts = (front?.darts ?? []).map(({ from, to, point, widths }) => {
			const mouth = edge('front/hem').getPointAtLength((from + to) / 2);
			const [x, y] = point;
			const atWaist = widths.find(({ at }) => Math.abs(mouth.y + (y - mouth.y) * at - waist) < 0.5);
			if (!atWaist) throw new Error('no width at the waist');
			// Half-widths lie square to the fold line; level with the waist they are wider by its lean.
			return ((atWaist.left + atWaist.right) * Math.hypot(x - mouth.x, y - mouth.y)) / Math.abs(y - mouth.y);
		});
		const seams = drawnHalf('bust') - drawnHalf('waist');
		const suppression = seams + darts.reduce((sum, intake) => sum + intake, 0);
		const rows = easeTable(draft, { bust: body.bust * inch, waist: body.waist * inch });
		const ease = (level: string) => rows.find((row) => row.level === level)?.ease ?? Number.NaN;
		expect(Math.abs(suppression - (ease('bust') - ease('waist')) / 2 - 165.1)).toBeLessThan(0.5);
		// A two-piece back and two darts share it: neither may do nearly all.
		expect(seams).toBeGreaterThan(50);
		expect(darts.every((intake) => intake > 15 && intake < 1.5 * inch)).toBe(true);
	});

	it('has the sizes that it is drawn for', () => {
		const waist = heightOf('waist');
		const [neckPoint] = samples('back/neck');
		expect((waist - neckPoint.y) / inch).toBeCloseTo(body.backLength, 1);
		const backWidth = Math.min(...samples('back/armhole').map(({ x }) => x)) * 2;
		expect(Math.abs(backWidth / inch - body.backWidth)).toBeLessThan(0.5);
		const frontArmhole = samples('front/armhole').filter(({ y }) => y < 3.5 * inch);
		const centre = crossing('front/front-edge', 3 * inch) - buttonStand;
		const chest = (centre - Math.max(...frontArmhole.map(({ x }) => x))) * 2;
		expect(Math.abs(chest / inch - body.chest)).toBeLessThan(0.75);
		const neck = 2 * (length('back/neck') + length('front/neck') - buttonStand);
		expect(neck / inch - body.neck).toBeGreaterThan(0);
		expect(neck / inch - body.neck).toBeLessThan(0.75);
		const underarm = Math.max(...samples('under-arm/armhole').map(({ y }) => y)) - neckPoint.y;
		expect(Math.abs(underarm / inch - body.depth)).toBeLessThan(0.5);
	});

	it('runs 3 to 6 in below the waist (Woman’s Institute, Tight Linings and Boning, § 41)', () => {
		for (const piece of Object.keys(sides)) {
			const below = samples(`${piece}/hem`).map(({ y }) => (y - heightOf('waist')) / inch);
			expect(Math.min(...below), piece).toBeGreaterThan(3);
			expect(Math.max(...below), piece).toBeLessThan(6);
		}
	});

	it('has its balance lines at one height on all pieces of a body', () => {
		for (const limb of [false, true])
			for (const level of limb ? ['upper-arm', 'elbow', 'wrist'] : ['bust', 'waist', 'hip']) {
				const pieces = file.pieces.filter((piece) => (piece.limb ?? false) === limb);
				const heights = pieces.flatMap(({ levels }) =>
					levels.filter((one) => one.level === level).flatMap(({ line }) => line.map(([, y]) => y))
				);
				expect(heights).toHaveLength(2 * pieces.length);
				expect(new Set(heights).size, level).toBe(1);
			}
	});

	it('has its bust line through the bust point, 1 to 2″ below the armhole (common practice, no source)', () => {
		const mark = file.pieces.find(({ id }) => id === 'front')?.marks?.[0].at ?? [];
		expect(mark[1]).toBe(heightOf('bust'));
		const armhole = Math.max(...samples('front/armhole').map(({ y }) => y));
		expect(mark[1] - armhole).toBeGreaterThan(inch);
		expect(mark[1] - armhole).toBeLessThan(2 * inch);
	});

	it('has pieces that do not cross themselves, clockwise as seen', () => {
		for (const { id, edges } of file.pieces) {
			const ring = edges.flatMap((one) => samples(`${id}/${one.id}`).map(({ x, y }): [number, number] => [x, y]));
			const shoelace = ring.reduce((sum, [x, y], i) => {
				const [nextX, nextY] = ring[(i + 1) % ring.length];
				return sum + (x * nextY - nextX * y) / 2;
			}, 0);
			expect(shoelace, id).toBeGreaterThan(0);
			// What crosses itself falls into several rings, or loses area.
			const united = polygonClipping.union([ring]);
			expect(united, id).toHaveLength(1);
			expect(united[0], id).toHaveLength(1);
			const area = united[0][0].slice(1).reduce((sum, [x, y], i) => {
				const [beforeX, beforeY] = united[0][0][i];
				return sum + (beforeX * y - x * beforeY) / 2;
			}, 0);
			expect(Math.abs(area)).toBeCloseTo(shoelace, 3);
		}
	});

	it('has its sewn corners run on: neck, armhole and hem turn by two right angles at every seam', () => {
		const angle = (name: string, end: 'start' | 'finish') => {
			const path = edge(name);
			const at = end === 'start' ? 0 : path.getTotalLength();
			const { x, y } = path.getTangentAtLength(at);
			return (Math.atan2(y, x) * 180) / Math.PI;
		};
		/** Inside angle of a clockwise piece where one edge ends and the next begins. */
		const corner = (before: string, after: string) =>
			180 - (((((angle(after, 'start') - angle(before, 'finish')) % 360) + 540) % 360) - 180);
		const corners: [string, number, number][] = [
			['neck', corner('back/neck', 'back/shoulder'), corner('front/shoulder', 'front/neck')],
			['shoulder end', corner('back/shoulder', 'back/armhole'), corner('front/armhole', 'front/shoulder')],
			[
				'side back at armhole',
				corner('back/armhole', 'back/side-back'),
				corner('side-back/side-back', 'side-back/armhole')
			],
			['side back at hem', corner('back/side-back', 'back/hem'), corner('side-back/hem', 'side-back/side-back')],
			['side at armhole', corner('under-arm/armhole', 'under-arm/side'), corner('front/side', 'front/armhole')],
			['side at hem', corner('under-arm/side', 'under-arm/hem'), corner('front/hem', 'front/side')],
			[
				'hind seam at head',
				corner('under-sleeve/head', 'under-sleeve/hind'),
				corner('top-sleeve/hind', 'top-sleeve/head-back')
			],
			[
				'fore seam at head',
				corner('top-sleeve/head-front', 'top-sleeve/fore'),
				corner('under-sleeve/fore', 'under-sleeve/head')
			]
		];
		for (const [name, one, other] of corners) expect(Math.abs(one + other - 180), name).toBeLessThan(8);
	});
});
