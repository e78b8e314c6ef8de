/**
 * The engine's laws over random drafts and random histories of up to twelve alterations, each to be held with any seed for any
 * number of cases: few in every run of the tests, ten thousand in the long one.
 */
import fc from 'fast-check';
import { expect } from 'vitest';
import { carryAlterations, type Carried } from '../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../src/lib/engine/alteration/parse.ts';
import { kindOf } from '../../src/lib/engine/alteration/registry.ts';
import type { AlterationBase } from '../../src/lib/engine/alteration/types.ts';
import { formatDraft } from '../../src/lib/engine/draft/file/format.ts';
import { parseDraft } from '../../src/lib/engine/draft/file/parse.ts';
import { mirrorDraft, movePiece } from '../../src/lib/engine/draft/turn-piece.ts';
import type { Draft } from '../../src/lib/engine/draft/types.ts';
import { signedArea } from '../../src/lib/engine/geometry/area.ts';
import { compose, rotation, translation } from '../../src/lib/engine/geometry/motion.ts';
import { check } from '../../src/lib/engine/review/check.ts';
import { walk } from '../../src/lib/engine/review/walk.ts';
import { alterationFrom, recipe, withPointsMoved, type Recipe } from './arbitrary-alteration.ts';
import { arbitraryDraft } from './arbitrary-draft.ts';
import { expectAlike } from './alteration-law.ts';

export interface Cases {
	readonly seed: number;
	readonly numRuns: number;
	/** The one case to hold again, as fast-check named it. */
	readonly path?: string;
	/** Told what came of every history that was carried whole. */
	readonly tell?: (alterations: readonly AlterationBase[], carried: Carried) => void;
}

export interface Law {
	readonly name: string;
	hold(cases: Cases): void;
}

const history = fc.array(recipe, { minLength: 1, maxLength: 12 });

/** Two ways to the same result must agree to this, mm: the fitted curves of several alterations one after another. */
const within = 0.05;

/** As text, with fields in order of name, so that only what they hold is compared. */
function text(value: unknown): string {
	return JSON.stringify(value, (_, field: unknown) =>
		typeof field !== 'object' || field === null || Array.isArray(field)
			? field
			: Object.fromEntries(Object.entries(field).sort(([a], [b]) => (a < b ? -1 : 1)))
	);
}

function alterationsFor(draft: Draft, recipes: readonly Recipe[]): AlterationBase[] {
	return recipes.flatMap((one, i) => {
		const json = alterationFrom(draft, one, `alteration-${i + 1}`);
		return json ? [parseAlteration(json)] : [];
	});
}

/** A failed case is named by its seed and path at once; with LAW_SHRINK set it is made smaller first, which may take long. */
export function parameters({ seed, numRuns, path }: Cases) {
	return { seed, numRuns, ...(path !== undefined && { path }), endOnFailure: !process.env.LAW_SHRINK };
}

function overHistories(name: string, law: (draft: Draft, alterations: AlterationBase[], cases: Cases) => void): Law {
	return {
		name,
		hold(cases) {
			fc.assert(
				fc.property(arbitraryDraft, history, (draft, recipes) => law(draft, alterationsFor(draft, recipes), cases)),
				parameters(cases)
			);
		}
	};
}

const crossed = (draft: Draft): Set<string> =>
	new Set(
		check(draft)
			.filter((query) => query.code === 'crosses')
			.map((query) => query.where.split('/')[0])
	);

export const laws: readonly Law[] = [
	overHistories(
		'[CLOSED] outlines stay closed, finite and clockwise and do not cross themselves; the draft given is as it was; the same again to the bit',
		(draft, alterations, { tell }) => {
			const given = text(draft);
			const carried = carryAlterations(draft, alterations);
			tell?.(alterations, carried);
			const result = carried.draft;
			expect(text(draft)).toBe(given);
			expect(text(carryAlterations(draft, alterations).draft)).toBe(text(result));
			expect(text(result)).not.toMatch(/null|NaN|Infinity/);
			expect([...crossed(result)]).toEqual([]);
			for (const piece of result.pieces) {
				const outline = piece.edges.flatMap((edge) => [...edge.path]);
				outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
				expect(signedArea(outline)).toBeGreaterThan(0);
			}
		}
	),
	overHistories('[REPORTED] every alteration is in exactly one of applied and unplaced', (draft, alterations) => {
		const { applied, unplaced } = carryAlterations(draft, alterations);
		const reported = [...applied, ...unplaced].map((one) => one.alteration).sort();
		expect(reported).toEqual(alterations.map((one) => one.id).sort());
		for (const one of unplaced) expect(one.sentence).toMatch(/^\S.{10,}[.?]$/s);
	}),
	overHistories(
		'[NOTHING] all amounts zero: the very same draft; a withdrawn one is as if never made',
		(draft, alterations) => {
			for (const alteration of alterations) {
				const zero = kindOf(alteration).scaled?.(alteration, 0);
				if (zero) expect(carryAlterations(draft, [zero]).draft).toBe(draft);
			}
			// The engine remembers lengths and widths of what it has seen: that must not show.
			const fresh = parseDraft(JSON.parse(text(formatDraft(draft))));
			expect(text(carryAlterations(draft, alterations.slice(1)).draft)).toBe(
				text(carryAlterations(fresh, alterations.slice(1)).draft)
			);
		}
	),
	overHistories('[MIRROR] mirror then alter = alter then mirror', (draft, alterations) => {
		const straight = carryAlterations(draft, alterations);
		const over = carryAlterations(
			mirrorDraft(draft),
			alterations.map((one) => kindOf(one).mirrored(one))
		);
		expect(over.applied.map((step) => step.alteration)).toEqual(straight.applied.map((step) => step.alteration));
		expectAlike(over.draft, mirrorDraft(straight.draft), within);
	}),
	overHistories(
		'[TURNED] turn and shift every piece, then alter = alter, then turn and shift',
		(draft, alterations) => {
			const motion = compose(rotation(0.7, [30, -40]), translation(123.4, -56.7));
			const turn = (one: Draft): Draft => ({ ...one, pieces: one.pieces.map((piece) => movePiece(piece, motion)) });
			const straight = carryAlterations(draft, alterations);
			const turned = carryAlterations(
				turn(draft),
				alterations.map((one) => withPointsMoved(one, motion))
			);
			expect(turned.applied.map((step) => step.alteration)).toEqual(straight.applied.map((step) => step.alteration));
			expectAlike(turned.draft, turn(straight.draft), within);
		}
	),
	overHistories('[FILE] every result comes back from its file to the bit', (draft, alterations) => {
		const { draft: result } = carryAlterations(draft, alterations);
		expect(text(parseDraft(JSON.parse(text(formatDraft(result)))))).toBe(text(JSON.parse(text(result))));
	}),
	overHistories(
		'[REPLAY] carried at once or in two sittings through the file, the same to the bit',
		(draft, alterations) => {
			const whole = carryAlterations(draft, alterations).draft;
			const half = Math.floor(alterations.length / 2);
			const middle = carryAlterations(draft, alterations.slice(0, half)).draft;
			const reread = parseDraft(JSON.parse(text(formatDraft(middle))));
			expect(text(carryAlterations(reread, alterations.slice(half)).draft)).toBe(text(JSON.parse(text(whole))));
		}
	),
	{
		name: '[MATCHED] equal amounts on two mirrored sides of a seam leave it matched to 0.1 mm',
		hold(cases) {
			fc.assert(
				fc.property(arbitraryDraft, recipe, (draft, made) => {
					const json = alterationFrom(draft, { ...made, kind: 'seam', even: true, side: 'both' }, 'one') as
						{ seam: string } | undefined;
					if (!json || !mirroredShapes(draft, json.seam)) return;
					const difference = (one: Draft) => walk(one).find(({ seam }) => seam === json.seam)!.difference;
					const { draft: after } = carryAlterations(draft, [parseAlteration(json)]);
					expect(Math.abs(difference(after) - difference(draft))).toBeLessThan(0.1);
				}),
				parameters(cases)
			);
		}
	}
];

/** Whether the two pieces of a seam are one another's mirror image with the same edges. */
function mirroredShapes(draft: Draft, seamId: string): boolean {
	const seam = draft.seams.find((one) => one.id === seamId)!;
	if (seam.b === 'mirror') return false;
	const { b } = seam;
	const idOf = (name: string) => name.split('/')[1];
	const same = seam.a.every((run, i) => b[i] !== undefined && idOf(run.edge) === idOf(b[i].edge));
	return same && seam.a[0].edge !== b[0].edge && seam.a[0].reversed !== b[0].reversed;
}
