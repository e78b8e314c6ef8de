/**
 * The one helper through which every kind of alteration is tried. It carries the alteration and holds, whatever the kind:
 *
 *   [CLOSED]   the outline stays closed, finite and clockwise; the draft given is never changed; the same again to the bit
 *   [NOTHING]  all amounts zero: the very same draft
 *   [MIRROR]   mirror then alter = alter then mirror; a shifted and turned draft alters alike
 *   [REPORTED] the alteration is in exactly one of applied and unplaced
 *   [FILE]     the result comes back from its file to the bit
 *
 * and gives the result to the test for what is the kind's own.
 */
import { expect } from 'vitest';
import { carryAlterations, type Carried } from '../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../src/lib/engine/alteration/parse.ts';
import { kindOf } from '../../src/lib/engine/alteration/registry.ts';
import type { AlterationBase } from '../../src/lib/engine/alteration/types.ts';
import { formatDraft } from '../../src/lib/engine/draft/file/format.ts';
import { parseDraft } from '../../src/lib/engine/draft/file/parse.ts';
import { mirrorDraft, movePiece } from '../../src/lib/engine/draft/turn-piece.ts';
import type { Draft, Piece } from '../../src/lib/engine/draft/types.ts';
import { signedArea } from '../../src/lib/engine/geometry/area.ts';
import { compose, rotation, translation } from '../../src/lib/engine/geometry/motion.ts';
import { pathLength, pointAt } from '../../src/lib/engine/geometry/path.ts';
import type { Point } from '../../src/lib/engine/geometry/types.ts';

export interface LawOptions {
	/** The alteration uses bare coordinates, which do not turn with the draft. */
	readonly bareCoordinates?: boolean;
	/** mm within which two ways to the same result must agree. */
	readonly within?: number;
}

/** Carries one alteration that must be applied, holds the laws, and returns what came of it. */
export function carried(draft: Draft, json: object, options: LawOptions = {}): Carried {
	const alteration = parseAlteration(json);
	const within = options.within ?? 0.02;
	const before = JSON.stringify(draft);
	const result = carryAlterations(deepFrozen(draft), [alteration]);
	expect(result.unplaced, 'nothing unplaced').toEqual([]);
	expect(result.applied.map((step) => step.alteration)).toEqual([alteration.id]);
	expect(JSON.stringify(draft), 'the draft given is not changed').toBe(before);
	expectSound(result.draft);
	expect(JSON.stringify(carryAlterations(draft, [alteration]).draft), 'the same again').toBe(
		JSON.stringify(result.draft)
	);
	expectFileRoundTrip(result.draft);
	expectNothingAtZero(draft, alteration);
	const mirrored = kindOf(alteration).mirrored(alteration);
	expectAlike(carryAlterations(mirrorDraft(draft), [mirrored]).draft, mirrorDraft(result.draft), within);
	if (!options.bareCoordinates) {
		const motion = compose(rotation(0.7, [30, -40]), translation(123.4, -56.7));
		const turn = (one: Draft): Draft => ({ ...one, pieces: one.pieces.map((piece) => movePiece(piece, motion)) });
		expectAlike(carryAlterations(turn(draft), [alteration]).draft, turn(result.draft), within);
	}
	return result;
}

/** Carries one alteration that must be refused or find no place, and holds that it changes nothing. */
export function notCarried(draft: Draft, json: object): Carried['unplaced'][number] {
	const alteration = parseAlteration(json);
	const result = carryAlterations(deepFrozen(draft), [alteration]);
	expect(result.applied).toEqual([]);
	expect(result.unplaced).toHaveLength(1);
	expect(result.draft, 'the draft is as it was').toBe(draft);
	expect(result.unplaced[0].sentence.length).toBeGreaterThan(10);
	return result.unplaced[0];
}

/** [CLOSED]: closed to the bit, finite, clockwise, every position on its edge. */
export function expectSound(draft: Draft): void {
	for (const piece of draft.pieces) {
		const outline = piece.edges.flatMap((edge) => [...edge.path]);
		outline.forEach((segment, i) => {
			const next = outline[(i + 1) % outline.length];
			expect(next.from, `${piece.id} closes`).toEqual(segment.to);
		});
		expect(JSON.stringify(piece), `${piece.id} is finite`).not.toMatch(/null|NaN|Infinity/);
		expect(signedArea(outline), `${piece.id} runs clockwise`).toBeGreaterThan(0);
	}
}

/** [FILE] */
export function expectFileRoundTrip(draft: Draft): void {
	// JSON has no negative zero, so the draft goes through text as well.
	const text = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
	expect(text(parseDraft(text(formatDraft(draft))))).toEqual(text(draft));
}

/** [NOTHING]: the very same draft, to the bit. */
export function expectNothingAtZero(draft: Draft, alteration: AlterationBase): void {
	const kind = kindOf(alteration);
	if (!kind.scaled) return;
	const result = carryAlterations(draft, [kind.scaled(alteration, 0)]);
	expect(result.draft, 'all amounts zero change nothing').toBe(draft);
	expect(result.applied).toHaveLength(1);
}

/** The same pieces and seams, every outline within `within` mm of the other's, marks and darts at the same places. */
export function expectAlike(found: Draft, wanted: Draft, within: number): void {
	expect(found.pieces.map((piece) => piece.id)).toEqual(wanted.pieces.map((piece) => piece.id));
	expect(found.seams).toEqual(wanted.seams);
	found.pieces.forEach((piece, i) => {
		const others = namedPoints(wanted.pieces[i]);
		for (const [name, point] of namedPoints(piece))
			expect(apart(point, others.get(name) ?? [NaN, NaN]), `${piece.id}/${name} lies alike`).toBeLessThanOrEqual(
				within
			);
		expect(piece.darts.map((dart) => dart.id)).toEqual(wanted.pieces[i].darts.map((dart) => dart.id));
		expect(piece.notches.map((notch) => notch.id)).toEqual(wanted.pieces[i].notches.map((notch) => notch.id));
	});
}

/** Points along each edge, mouth ends and notches on it, dart points, fold ends and marks, by name. */
function namedPoints(piece: Piece): Map<string, Point> {
	const on = (edgeId: string, s: number) => pointAt(piece.edges.find(({ id }) => id === edgeId)!.path, s);
	return new Map<string, Point>([
		...piece.edges.flatMap(({ id, path }) =>
			[0, 0.21, 0.5, 0.83].map((share) => [`${id} at ${share}`, pointAt(path, share * pathLength(path))] as const)
		),
		...piece.darts.flatMap(
			({ id, edge, from, to, point }) =>
				[
					[id, point],
					[`${id} from`, on(edge, from)],
					[`${id} to`, on(edge, to)]
				] as const
		),
		...piece.notches.map(({ id, edge, at }) => [id, on(edge, at)] as const),
		...piece.foldDarts.flatMap((dart) => dart.ends.map((end, i) => [`${dart.id} ${i}`, end] as const)),
		...piece.marks.map((mark) => [mark.id, mark.at] as const)
	]);
}

function apart(a: Point, b: Point): number {
	return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function deepFrozen<T>(value: T): T {
	if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
		Object.freeze(value);
		Object.values(value).forEach(deepFrozen);
	}
	return value;
}
