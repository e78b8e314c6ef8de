/** What is always so of queries, walks and comparisons, over random drafts and histories. The seed stands in each test's name. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cuttingLines } from '../../../src/lib/engine/cutting/cutting-lines.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { carry } from '../../../src/lib/engine/review/carry-and-check.ts';
import { compare } from '../../../src/lib/engine/review/compare.ts';
import { easeTable } from '../../../src/lib/engine/review/ease-table.ts';
import { story } from '../../../src/lib/engine/review/story.ts';
import { walk } from '../../../src/lib/engine/review/walk.ts';
import { withdraw } from '../../../src/lib/engine/review/withdraw.ts';
import type { AlterationBase } from '../../../src/lib/engine/alteration/types.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { alterationFrom, recipe } from '../../support/arbitrary-alteration.ts';
import { arbitraryDraft } from '../../support/arbitrary-draft.ts';

const seed = Number(process.env.LAW_SEED ?? 20261125);
const numRuns = Number(process.env.LAW_RUNS ?? 60);
const named = (law: string) => `${law} (seed ${seed}, ${numRuns} runs)`;

function hold(law: (draft: Draft, alterations: AlterationBase[]) => void): void {
	const history = fc.array(recipe, { minLength: 1, maxLength: 5 });
	fc.assert(
		fc.property(arbitraryDraft, history, (draft, recipes) => {
			const alterations = recipes.flatMap((one, i) => {
				const json = alterationFrom(draft, one, `alteration-${i + 1}`);
				return json ? [parseAlteration(json)] : [];
			});
			law(draft, alterations);
		}),
		{ seed, numRuns }
	);
}

const said = (draft: Draft) => ({
	measures: { waist: 300, hem: 500 },
	bands: ['close over stays', 'usual sleeve'],
	toile: { draft, allowances: { default: 12 }, boned: draft.seams.map(({ id }) => id) }
});

it(named('every query says something, twice the same, and offers only alterations that can be read'), () => {
	hold((draft, alterations) => {
		const { queries, unplaced } = carry(draft, alterations, said(draft));
		expect(JSON.stringify(carry(draft, alterations, said(draft)).queries)).toBe(JSON.stringify(queries));
		for (const query of queries) {
			expect(query.sentence).toMatch(/^\S.{15,}[.?]$/);
			expect(query.sentence).not.toMatch(/NaN|undefined|Infinity/);
			if (!unplaced.some(({ sentence }) => sentence === query.sentence)) expect(query.sentence).not.toContain('@');
			if (query.figure !== undefined) expect(Number.isFinite(query.figure)).toBe(true);
			for (const one of query.settle)
				expect(parseAlteration(JSON.parse(JSON.stringify(one)))).toMatchObject({ id: one.id });
		}
		expect(queries.filter(({ code }) => ['unplaced', 'no-join', 'too-tight'].includes(code))).toHaveLength(
			unplaced.length
		);
	});
});

it(named('a draft holds no query against itself but what it can be asked without a base'), () => {
	hold((draft) => {
		const codes = new Set(carry(draft, [], said(draft)).queries.map(({ code }) => code));
		for (const code of [
			'seam-length',
			'notch-walk',
			'notch-lost',
			'dart-legs',
			'dart-wide',
			'seam-corner',
			'let-out-no-cloth',
			'narrow'
		])
			expect(codes).not.toContain(code);
	});
});

it(named('walks, rounds and comparisons are finite, and a comparison turned about has the areas turned about'), () => {
	hold((draft, alterations) => {
		const { draft: after } = carry(draft, alterations, { queries: false });
		const there = compare(draft, after);
		const back = compare(after, draft);
		for (const text of [there, back, walk(after), easeTable(after, {})].map((one) => JSON.stringify(one)))
			expect(text).not.toMatch(/null|NaN|Infinity/);
		const area = (list: typeof there.pieces, which: 'areaBefore' | 'areaAfter') =>
			list.reduce((sum, piece) => sum + (piece[which] ?? 0), 0);
		expect(area(back.pieces, 'areaBefore')).toBeCloseTo(area(there.pieces, 'areaAfter'), 6);
		for (const edge of there.edges) {
			expect(edge.moves[0].at).toBe('start');
			for (const { move } of edge.moves)
				expect(Math.abs(move)).toBeLessThanOrEqual(Math.abs(edge.greatest.move) + 1e-9);
		}
	});
});

it(named('whatever was carried can be cut'), () => {
	hold((draft, alterations) => {
		const { draft: after, queries } = carry(draft, alterations);
		if (queries.some(({ severity }) => severity === 'error')) return;
		for (const piece of cuttingLines(after, { default: 12.7 })) {
			expect(piece.area).toBeGreaterThan(0);
			expect(piece.outline).not.toMatch(/NaN|Infinity/);
		}
	});
});

it(named('a withdrawn alteration is as if it had never been made, and tells no story'), () => {
	hold((draft, alterations) => {
		if (alterations.length === 0) return;
		const [first, ...others] = alterations;
		const without = withdraw(draft, alterations, [first.id], { queries: false });
		expect(JSON.stringify(without.draft)).toBe(JSON.stringify(carry(draft, others, { queries: false }).draft));
		for (const seam of draft.seams.slice(0, 1))
			expect(story(draft, others, seam.id).map(({ alteration }) => alteration)).not.toContain(first.id);
	});
});
