import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { divide } from '../../../../src/lib/engine/draft/divide.ts';
import { formatDraft } from '../../../../src/lib/engine/draft/file/format.ts';
import { formats } from '../../../../src/lib/engine/draft/file/formats.ts';
import { parseDraft, parseDraftText } from '../../../../src/lib/engine/draft/file/parse.ts';
import { mirrorDraft } from '../../../../src/lib/engine/draft/turn-piece.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { arbitraryDraft } from '../../../support/arbitrary-draft.ts';
import { bodice, bodiceFile, draftFile, rectangleFile } from '../../../support/drafts.ts';

const fixtures = join(import.meta.dirname, '../../../fixtures/drafts');

/** There and back, as an object and as text. */
function expectSame(draft: Draft): void {
	const file = formatDraft(draft);
	expect(parseDraft(file)).toStrictEqual(draft);
	expect(parseDraftText(JSON.stringify(file))).toStrictEqual(draft);
}

describe('[FILE] a draft written and read is the draft to the bit', () => {
	it('for random drafts', () => {
		fc.assert(fc.property(arbitraryDraft, expectSame), { seed: 20_004, numRuns: 150 });
	});

	it('divided for one side', () => {
		fc.assert(
			fc.property(arbitraryDraft, fc.nat(4), fc.nat(4), (draft, one, other) => {
				const ids = [one, other].map((k) => draft.pieces[k % draft.pieces.length].id);
				expectSame(divide(draft, ids.slice(0, 1)));
				expectSame(divide(draft, [...new Set(ids)]));
			}),
			{ seed: 20_005, numRuns: 60 }
		);
	});

	it('mirrored', () => {
		fc.assert(
			fc.property(arbitraryDraft, (draft) => expectSame(mirrorDraft(draft))),
			{ seed: 20_006, numRuns: 60 }
		);
	});

	it('divided, with ids and names as long as they may be', () => {
		const long = (id: string) => id.padEnd(200, 'x');
		const piece = rectangleFile({ id: long('p'), name: long('Panel ') });
		const [top, side, hem, centre] = piece.edges;
		const file = {
			...piece,
			cut: 'fold',
			edges: [top, { ...side, id: long('s'), name: long('Side ') }, hem, { ...centre, kind: 'fold' }]
		};
		expectSame(divide(parseDraft(draftFile([file])), [piece.id]));
		expectSame(divide(parseDraft(draftFile([piece])), [piece.id]));
	});

	it('for the bodice, whole and in every way divided', () => {
		expectSame(bodice);
		for (const ids of [['back'], ['front', 'sleeve'], ['collar'], ['back', 'front', 'sleeve', 'collar']]) {
			expectSame(divide(bodice, ids));
		}
		expectSame(divide(divide(bodice, ['collar']), ['back']));
	});
});

describe('the written file', () => {
	it('leaves out what is at its default', () => {
		const [back] = formatDraft(bodice).pieces;
		expect(Object.keys(back)).toEqual(['id', 'name', 'cut', 'edges', 'darts', 'notches', 'levels', 'grain']);
		expect(Object.keys(back.edges[0])).toEqual(['id', 'name', 'kind', 'path']);
	});

	it('of a file that is clockwise says what the file said', () => {
		expect(parseDraft(formatDraft(parseDraft(bodiceFile)))).toStrictEqual(bodice);
		expect(formatDraft(bodice).seams).toEqual(bodiceFile.seams);
	});
});

describe('files of every format ever released', () => {
	const released = formats.map(({ number }) => `format-${number}`);

	it('are kept', () => {
		expect(readdirSync(fixtures).filter((name) => name.startsWith('format-'))).toEqual(released);
		for (const folder of released) expect(readdirSync(join(fixtures, folder)).length).toBeGreaterThan(0);
	});

	it.each(released.flatMap((folder) => readdirSync(join(fixtures, folder)).map((name) => join(folder, name))))(
		'%s is read, and written again as the same draft',
		(name) => {
			const draft = parseDraftText(readFileSync(join(fixtures, name), 'utf8'));
			expect(draft.pieces.length).toBeGreaterThan(0);
			expectSame(draft);
		}
	);
});
