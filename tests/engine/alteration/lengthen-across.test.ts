import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { walk } from '../../../src/lib/engine/review/walk.ts';
import { carried, notCarried } from '../../support/alteration-law.ts';
import { plainBodiceFile } from '../../support/plain-bodice.ts';

/** The back's shoulder 8 mm longer than the front's; below the middle of the front's opens a dart in the hem, 20 mm wide. */
function bodice() {
	const file = JSON.parse(JSON.stringify(plainBodiceFile));
	file.pieces[0].darts = [{ id: 'waist-dart', name: 'Waist dart', edge: 'hem', from: 140, to: 160, point: [100, 300] }];
	file.pieces[1].edges[0].path = 'M 82 0 L 210 0';
	file.pieces[1].edges[5].path = 'M 0 150 C 80 130 82 60 82 0';
	return parseDraft(file);
}

const letIn = (fraction: number) => ({ id: 'one', kind: 'true-seam', seam: 'shoulder', at: { fraction }, take: 'a' });

describe('length let in right across a piece', () => {
	it('beside a dart, leaves the dart as wide as it was', () => {
		const { draft } = carried(bodice(), letIn(0.2));
		expect(Math.abs(walk(draft).find(({ seam }) => seam === 'shoulder')!.difference)).toBeLessThan(1e-6);
		const [{ from, to }] = draft.pieces[0].darts;
		expect(to - from).toBeCloseTo(20, 6);
	});

	it.each([5 / 12, 0.5, 7 / 12])('is refused where straight across lies the mouth of a dart: at %d', (fraction) => {
		const refusal = notCarried(bodice(), letIn(fraction));
		expect(refusal.code).toBe('slash-through-mouth');
		expect(refusal.sentence).toMatch(/mouth of Waist dart/);
	});
});
