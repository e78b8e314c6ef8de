import { expect, test } from 'vitest';
import { compare, cuttingLines, reuse } from '../../../src/lib/engine/index.ts';
import type { Draft } from '../../../src/lib/engine/index.ts';
import { allowanceGroups } from '../../../src/lib/ui/allowances/allowance-groups.ts';
import { lessAllowance } from '../../../src/lib/ui/lining/less-allowance.ts';
import { answerWords, verdictRows } from '../../../src/lib/ui/lining/verdict-rows.ts';
import { altered, demoDraft } from '../demo-versions.ts';

const inch = 25.4;

/** The body alone: no sleeve sets its armhole. */
const body: Draft = {
	...demoDraft,
	pieces: demoDraft.pieces.filter(({ limb }) => !limb),
	seams: demoDraft.seams.filter(({ id }) => !/sleeve|armhole/.test(id))
};
const groups = allowanceGroups(body);

/** The side-back seam opened 1/4 in all along, on both its layers. */
const opened = altered(body, { kind: 'seam', seam: 'side-back', pins: [{ at: { level: 'waist' }, a: 6.35, b: 6.35 }] });

/** Neck and armhole are cut 1/4 in from the line, on the toile and for the lining. */
const narrow = Object.fromEntries(
	body.pieces.flatMap((piece) =>
		piece.edges.filter(({ id }) => /neck|armhole/.test(id)).map(({ id }) => [`${piece.id}/${id}`, 6.35])
	)
);

function laid(toile: number, wanted: number) {
	const cloth = cuttingLines(body, { default: toile, edges: narrow });
	const allowances = { default: wanted, edges: narrow };
	const verdicts = reuse(cloth, cuttingLines(opened, allowances));
	const rows = verdictRows({
		...{ draft: opened, cloth, changes: compare(body, opened), verdicts, wanted: allowances, unit: 'in' as const }
	});
	return { rows, less: lessAllowance(cloth, opened, groups, allowances, inch / 8) };
}

test('with 1 in on the toile a seam opened 1/4 in has 3/4 in left: where that is wanted, all is restitched', () => {
	const { rows, less } = laid(inch, 0.75 * inch);
	expect(rows.map(({ verdict }) => verdict)).toEqual(['restitch', 'restitch', 'restitch', 'restitch']);
	expect(rows.find(({ piece }) => piece === 'back')!.words).toBe('side back 1/4″ out');
	expect(rows.find(({ piece }) => piece === 'front')!.words).toBe('as it is');
	expect(answerWords(rows).firm).toBe('Yes, all of it.');
	expect(less).toBeUndefined();
});

test('where 1 in is wanted the two pieces of that seam fall short by 1/4 in, and less there settles it', () => {
	const { rows, less } = laid(inch, inch);
	const short = rows.filter(({ shortBy }) => shortBy !== undefined);
	expect(short.map(({ piece }) => piece).sort()).toEqual(['back', 'side-back']);
	for (const row of short) {
		expect(row.verdict).toBe('narrow');
		expect(row.shortBy!).toBeGreaterThanOrEqual(6.35 - 0.01);
		expect(row.words).toMatch(/^side-back seam, at the .*: 3\/4″ left of the 1″ wanted$/);
	}
	expect(short.map(({ letter }) => letter)).toEqual(['A', 'B']);
	expect(less!.less.map(({ name }) => name)).toContain('Side-back seam');
	expect(less!.allowances.edges['back/side-back']).toBeLessThanOrEqual(0.75 * inch + 1e-9);
	const again = reuse(cuttingLines(body, { default: inch, edges: narrow }), cuttingLines(opened, less!.allowances));
	expect(again.every(({ shortBy }) => shortBy === 0)).toBe(true);
});

test('a toile without the cloth for a seam is cut again, and no lesser allowance is offered', () => {
	const { rows, less } = laid(8, 8);
	const recut = rows.filter(({ verdict }) => verdict === 'recut').map(({ name }) => name);
	expect(recut.sort()).toEqual(['Back', 'Side back']);
	expect(less).toBeUndefined();
	const { firm, rest } = answerWords(rows);
	expect(firm).toBe('Yes, but for two pieces.');
	expect(rest).toMatch(
		/^Two pieces are restitched on the new lines\. (Back and side back|Side back and back) are cut again\./
	);
});

test('a neck that wants more than it has gives way itself, not the shoulder that meets it', () => {
	const cloth = cuttingLines(body, { default: inch, edges: narrow });
	const wider = Object.fromEntries(Object.keys(narrow).map((edge) => [edge, 9.525]));
	const wanted = { default: 0.75 * inch, edges: wider };
	const names = lessAllowance(cloth, body, groups, wanted, inch / 8)!.less.map(({ name }) => name);
	expect(names).toContain('Neck');
	expect(names.filter((name) => !/neck|armhole/i.test(name))).toEqual([]);
});

test('a piece that the toile never had is said so', () => {
	const cloth = cuttingLines(body, { default: inch }).filter(({ piece }) => piece !== 'front');
	const verdicts = reuse(cloth, cuttingLines(body, { default: inch }));
	const rows = verdictRows({
		...{
			draft: body,
			cloth,
			changes: compare(body, body),
			verdicts,
			wanted: { default: inch, edges: {} },
			unit: 'in' as const
		}
	});
	expect(rows[0]).toMatchObject({ piece: 'front', verdict: 'recut', words: 'the toile has no such piece' });
	expect(answerWords([rows[0]])).toEqual({ firm: 'No.', rest: 'Every piece has to be cut again.' });
});
