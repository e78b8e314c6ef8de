import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import { findSeam } from '../../../src/lib/engine/draft/find.ts';
import { stitchedLength } from '../../../src/lib/engine/draft/length.ts';
import { mateOnSeam, otherSide, runLength, seamRun, seamsOf, sideOf } from '../../../src/lib/engine/draft/seam.ts';
import { bodice, draftFile, rectangleFile } from '../../support/drafts.ts';

const armhole = findSeam(bodice, 'armhole')!;
const centreBack = findSeam(bodice, 'centre-back')!;

describe('a run', () => {
	it('goes edge by edge, each beginning where the one before ends', () => {
		const [back, front] = seamRun(bodice, armhole, 'a');
		expect(back).toMatchObject({ name: 'back/armhole', reversed: true, startsAt: 0 });
		expect(front).toMatchObject({ name: 'front/armhole', reversed: true, startsAt: back.length });
		expect(front.edge).toBe(front.piece.edges[6]);
	});

	it('is as long as its edges are sewn', () => {
		expect(runLength(bodice, armhole.a)).toBe(
			stitchedLength(bodice, 'back/armhole') + stitchedLength(bodice, 'front/armhole')
		);
	});

	it('of side b of a centre seam is that of side a', () => {
		expect(sideOf(centreBack, 'b')).toBe(centreBack.a);
		expect(seamRun(bodice, centreBack, 'b')).toEqual(seamRun(bodice, centreBack, 'a'));
	});

	it('throws where it names an edge that is gone', () => {
		expect(() => runLength(bodice, [{ edge: 'back/hem', reversed: false }])).toThrow('back/hem');
	});
});

describe('the seams of an edge', () => {
	it('say on which side it is, a centre seam once', () => {
		expect(seamsOf(bodice, 'sleeve/head')).toEqual([{ seam: armhole, side: 'b' }]);
		expect(seamsOf(bodice, 'back/centre-back')).toEqual([{ seam: centreBack, side: 'a' }]);
		expect(seamsOf(bodice, 'front/waist')).toEqual([]);
		expect(otherSide('a')).toBe('b');
	});
});

describe('the mate of a notch on a seam', () => {
	it('is found from either side, though only one names the other', () => {
		expect(mateOnSeam(bodice, armhole, 'a', 'front/front-notch')).toBe('sleeve/front-notch');
		expect(mateOnSeam(bodice, armhole, 'b', 'sleeve/front-notch')).toBe('front/front-notch');
	});

	it('on a centre seam is itself', () => {
		expect(mateOnSeam(bodice, centreBack, 'a', 'back/centre-notch')).toBe('back/centre-notch');
	});

	it('is not there for a notch that nothing on the other side names', () => {
		expect(mateOnSeam(bodice, findSeam(bodice, 'side')!, 'a', 'back/back-notch')).toBeUndefined();
	});

	it("is found on a sleeve's own seam, where both are notches of one piece", () => {
		const draft = parseDraft(
			draftFile(
				[
					rectangleFile({
						id: 'sleeve',
						notches: [
							{ id: 'n1', edge: 'side', at: 100, mate: 'sleeve/n2' },
							{ id: 'n2', edge: 'centre', at: 200 }
						]
					})
				],
				[{ id: 's', a: [{ edge: 'sleeve/side' }], b: [{ edge: 'sleeve/centre', reversed: true }] }]
			)
		);
		expect(mateOnSeam(draft, draft.seams[0], 'a', 'sleeve/n1')).toBe('sleeve/n2');
		expect(mateOnSeam(draft, draft.seams[0], 'b', 'sleeve/n2')).toBe('sleeve/n1');
	});
});
