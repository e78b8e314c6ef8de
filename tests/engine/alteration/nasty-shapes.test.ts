import { describe, expect, it } from 'vitest';
import { kindNames } from '../../../src/lib/engine/alteration/registry.ts';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { everyAlteration } from '../../support/every-alteration.ts';
import { nastyShapes, refusedShapes } from '../../support/nasty-shapes.ts';
import { rightOrRefused } from '../../support/right-or-refused.ts';

const drafts = nastyShapes.map(({ remark, file, more = [] }) => {
	const draft = parseDraft(file);
	return { remark, draft, alterations: everyAlteration(draft, more) as { kind: string }[] };
});

describe('every kind of alteration, moderate or asking too much, is right or refused with a reason, in four rotations and mirrored', () => {
	it.each(drafts)('$remark', { timeout: 120_000 }, ({ draft, alterations }) => {
		const judged = alterations.map((alteration) => rightOrRefused(draft, alteration));
		expect(judged.flatMap(({ faults }) => faults)).toEqual([]);
		const applied = judged.filter(({ verdict }) => verdict === 'applied');
		expect(applied.length, 'not kept by refusing everything').toBeGreaterThan(alterations.length / 3);
	});

	it('and it is every kind that there is', () => {
		const tried = new Set(drafts.flatMap(({ alterations }) => alterations.map(({ kind }) => kind)));
		expect([...tried].sort()).toEqual([...kindNames()].sort());
	});
});

describe('a shape that cannot be a piece is refused by the reader', () => {
	it.each(refusedShapes)('$remark', ({ file, says }) => {
		expect(() => parseDraft(file)).toThrow(says);
	});
});
