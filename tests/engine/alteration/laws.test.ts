/** The engine's laws over random drafts and random histories of up to twelve alterations. The seed stands in each test's name. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { kindOf } from '../../../src/lib/engine/alteration/registry.ts';
import type { AlterationBase } from '../../../src/lib/engine/alteration/types.ts';
import { formatDraft } from '../../../src/lib/engine/draft/file/format.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { mirrorDraft } from '../../../src/lib/engine/draft/turn-piece.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { signedArea } from '../../../src/lib/engine/geometry/area.ts';
import { check } from '../../../src/lib/engine/review/check.ts';
import { walk } from '../../../src/lib/engine/review/walk.ts';
import { alterationFrom, recipe, type Recipe } from '../../support/arbitrary-alteration.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';
import { expectAlike } from '../../support/alteration-law.ts';

const seed = Number(process.env.LAW_SEED ?? 20261125);
const numRuns = Number(process.env.LAW_RUNS ?? 120);
const named = (law: string) => `${law} (seed ${seed}, ${numRuns} runs)`;
const history = fc.array(recipe, { minLength: 1, maxLength: 12 });
const text = (value: unknown) => JSON.stringify(value, inOrder);

/** Fields in order of name, so that only what they hold is compared. */
function inOrder(_: string, value: unknown): unknown {
	if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
	return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function alterationsFor(draft: Draft, recipes: readonly Recipe[]): AlterationBase[] {
	return recipes.flatMap((one, i) => {
		const json = alterationFrom(draft, one, `alteration-${i + 1}`);
		return json ? [parseAlteration(json)] : [];
	});
}

function hold(law: (draft: Draft, alterations: AlterationBase[], recipes: Recipe[]) => void) {
	fc.assert(
		fc.property(arbitraryDraft, history, (draft, recipes) => law(draft, alterationsFor(draft, recipes), recipes)),
		{ seed, numRuns }
	);
}

describe('the laws over random drafts and histories', () => {
	it(
		named('[CLOSED] outlines stay closed, finite and clockwise or say that they cross; the same again to the bit'),
		() => {
			hold((draft, alterations) => {
				const given = text(draft);
				const result = carryAlterations(draft, alterations).draft;
				expect(text(draft)).toBe(given);
				expect(text(carryAlterations(draft, alterations).draft)).toBe(text(result));
				expect(text(result)).not.toMatch(/null|NaN|Infinity/);
				const crossed = new Set(
					check(result)
						.filter((query) => query.code === 'crosses')
						.map((query) => query.where.split('/')[0])
				);
				for (const piece of result.pieces) {
					const outline = piece.edges.flatMap((edge) => [...edge.path]);
					outline.forEach((segment, i) => expect(outline[(i + 1) % outline.length].from).toEqual(segment.to));
					if (!crossed.has(piece.id)) expect(signedArea(outline)).toBeGreaterThan(0);
				}
			});
		}
	);

	it(named('[REPORTED] every alteration is in exactly one of applied and unplaced'), () => {
		hold((draft, alterations) => {
			const { applied, unplaced } = carryAlterations(draft, alterations);
			const reported = [...applied, ...unplaced].map((one) => one.alteration).sort();
			expect(reported).toEqual(alterations.map((one) => one.id).sort());
			for (const one of unplaced) expect(one.sentence).toMatch(/^\S.{10,}[.?]$/s);
		});
	});

	it(named('[NOTHING] all amounts zero: the very same draft; a withdrawn one is as if never made'), () => {
		hold((draft, alterations) => {
			for (const alteration of alterations) {
				const zero = kindOf(alteration).scaled?.(alteration, 0);
				if (zero) expect(carryAlterations(draft, [zero]).draft).toBe(draft);
			}
			const without = alterations.slice(1);
			expect(text(carryAlterations(draft, without).draft)).toBe(text(carryAlterations(draft, [...without]).draft));
		});
	});

	it(named('[MIRROR] mirror then alter = alter then mirror'), () => {
		hold((draft, alterations) => {
			const straight = carryAlterations(draft, alterations);
			const turned = carryAlterations(
				mirrorDraft(draft),
				alterations.map((one) => kindOf(one).mirrored(one))
			);
			expect(turned.applied.map((step) => step.alteration)).toEqual(straight.applied.map((step) => step.alteration));
			expectAlike(turned.draft, mirrorDraft(straight.draft), 0.05);
		});
	});

	it(named('[FILE] every result that does not cross comes back from its file to the bit'), () => {
		hold((draft, alterations) => {
			const { draft: result } = carryAlterations(draft, alterations);
			if (check(result).some((query) => query.code === 'crosses')) return;
			const there = JSON.parse(text(formatDraft(result)));
			expect(text(parseDraft(there))).toBe(text(JSON.parse(text(result))));
		});
	});

	it(named('[REPLAY] carried at once or in two sittings through the file, the same to the bit'), () => {
		hold((draft, alterations) => {
			const whole = carryAlterations(draft, alterations).draft;
			const half = Math.floor(alterations.length / 2);
			const middle = carryAlterations(draft, alterations.slice(0, half)).draft;
			if (check(middle).some((query) => query.code === 'crosses')) return;
			const reread = parseDraft(JSON.parse(text(formatDraft(middle))));
			expect(text(carryAlterations(reread, alterations.slice(half)).draft)).toBe(text(JSON.parse(text(whole))));
		});
	});

	it(named('[MATCHED] equal amounts on two mirrored sides of a seam leave it matched to 0.1 mm'), () => {
		fc.assert(
			fc.property(arbitraryDraft, recipe, (draft, made) => {
				const json = alterationFrom(draft, { ...made, kind: 'seam', even: true, side: 'both' }, 'one') as
					{ seam: string } | undefined;
				if (!json) return;
				const seam = draft.seams.find((one) => one.id === json.seam)!;
				if (seam.b === 'mirror' || !mirroredShapes(draft, json.seam)) return;
				const before = walk(draft).find((one) => one.seam === json.seam)!;
				const { draft: after, applied } = carryAlterations(draft, [parseAlteration(json)]);
				if (applied.length === 0) return;
				const walked = walk(after).find((one) => one.seam === json.seam)!;
				expect(Math.abs(walked.difference - before.difference)).toBeLessThan(0.1);
			}),
			{ seed, numRuns: numRuns * 3 }
		);
	});
});

/** Whether the two pieces of a seam are one another's mirror image with the same edges. */
function mirroredShapes(draft: Draft, seamId: string): boolean {
	const seam = draft.seams.find((one) => one.id === seamId)!;
	if (seam.b === 'mirror') return false;
	const [a, b] = [seam.a[0], seam.b[0]].map((run) =>
		draft.pieces.find((piece) => piece.id === run.edge.split('/')[0])!
	);
	if (a === b || a.edges.length !== b.edges.length) return false;
	return (
		seam.a.every((run, i) => run.edge.split('/')[1] === (seam.b as typeof seam.a)[i]?.edge.split('/')[1]) &&
		seam.a[0].reversed !== seam.b[0].reversed
	);
}
