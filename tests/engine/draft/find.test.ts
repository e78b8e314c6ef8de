import { describe, expect, it } from 'vitest';
import {
	edgeOf,
	findDart,
	findEdge,
	findFoldDart,
	findMark,
	findNotch,
	findPiece,
	findSeam,
	isTaken,
	levelsOf,
	nameOf,
	neighbouringEdges,
	splitName
} from '../../../src/lib/engine/draft/find.ts';
import { readableName } from '../../../src/lib/engine/draft/readable-name.ts';
import { sideOfName, undividedName } from '../../../src/lib/engine/draft/undivided-name.ts';
import { bodice, pieceOf, rectangleFile } from '../../support/drafts.ts';

const front = findPiece(bodice, 'front')!;

describe('names', () => {
	it('are split at the slash, whatever the sides', () => {
		expect(splitName('front@left/side')).toEqual({ piece: 'front@left', id: 'side' });
		expect(splitName('back/side@right')).toEqual({ piece: 'back', id: 'side@right' });
		expect(splitName('front')).toEqual({ piece: 'front', id: '' });
	});

	it('are put together again', () => {
		expect(nameOf(front, 'side')).toBe('front/side');
		expect(nameOf('front@left', 'side')).toBe('front@left/side');
	});

	it('lose their sides, in the piece and in the id', () => {
		expect(undividedName('front@left/side')).toBe('front/side');
		expect(undividedName('back/side@right')).toBe('back/side');
		expect(undividedName('armhole@left')).toBe('armhole');
		expect(undividedName('front/side')).toBe('front/side');
	});

	it('say a side', () => {
		expect(sideOfName('front@left/side')).toBe('left');
		expect(sideOfName('back/side@right')).toBe('right');
		expect(sideOfName('back/side')).toBeUndefined();
	});

	it('are readable where the file gives none', () => {
		expect(readableName('side-back')).toBe('Side back');
		expect(readableName('under_arm@left')).toBe('Under arm, left');
	});
});

describe('finding', () => {
	it('gives the thing, its piece and where it is', () => {
		expect(findEdge(bodice, 'front/waist')).toEqual({ piece: front, edge: front.edges[4], index: 4 });
		expect(findDart(bodice, 'front/side-dart')).toEqual({ piece: front, dart: front.darts[1], edge: front.edges[4] });
		expect(findNotch(bodice, 'front/side-notch')).toMatchObject({ piece: front, notch: { at: 111.34 } });
		expect(findMark(bodice, 'front/bust-point')?.mark.at).toEqual([167.5, 245]);
		expect(findSeam(bodice, 'side')?.name).toBe('Side seam');
		expect(edgeOf(front, 'neck')).toBe(front.edges[1]);
	});

	it('gives fold darts by their own name', () => {
		const piece = pieceOf(
			rectangleFile({
				foldDarts: [
					{
						id: 'f',
						ends: [
							[50, 50],
							[50, 150]
						],
						widest: { at: 0.5, intake: 12 }
					}
				]
			})
		);
		const draft = { name: '', pieces: [piece], seams: [] };
		expect(findFoldDart(draft, 'panel/f')).toEqual({ piece, foldDart: piece.foldDarts[0] });
		expect(findDart(draft, 'panel/f')).toBeUndefined();
	});

	it('gives nothing for what is not there, or is something else', () => {
		expect(findPiece(bodice, 'hood')).toBeUndefined();
		expect(findEdge(bodice, 'hood/side')).toBeUndefined();
		expect(findEdge(bodice, 'front/brim')).toBeUndefined();
		expect(findEdge(bodice, 'front')).toBeUndefined();
		expect(findEdge(bodice, 'front/front-dart')).toBeUndefined();
		expect(findDart(bodice, 'front/waist')).toBeUndefined();
		expect(findSeam(bodice, 'front/side')).toBeUndefined();
	});

	it('knows the edges that meet an edge, round the outline', () => {
		expect(neighbouringEdges(front, 'shoulder')).toEqual({
			before: edgeOf(front, 'armhole'),
			after: edgeOf(front, 'neck')
		});
		expect(neighbouringEdges(front, 'armhole')?.after.id).toBe('shoulder');
		expect(neighbouringEdges(front, 'brim')).toBeUndefined();
	});

	it('knows which ids a piece has already given away', () => {
		expect(['side', 'front-dart', 'side-notch', 'button-1'].every((id) => isTaken(front, id))).toBe(true);
		expect(isTaken(front, 'side-2')).toBe(false);
	});

	it('lists the levels of a draft once each', () => {
		expect(levelsOf(bodice)).toEqual(['bust', 'waist', 'upper-arm', 'wrist']);
	});
});
