import { describe, expect, it } from 'vitest';
import { carry, parseAlteration, parseDraft, type Draft } from '../../../../src/lib/engine/index.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';

/** The plain bodice with a neck that is a quarter of a circle of radius 40. */
function roundNeck(): Draft {
	const file = JSON.parse(JSON.stringify(plainBodiceFile));
	file.pieces[0].edges[4].path = 'M 0 450 L 0 40';
	file.pieces[0].edges[5].path = 'M 0 40 C 22.09139 40 40 22.09139 40 0';
	return parseDraft(file);
}

const edge = (id: string, pins: readonly object[]) => ({ id: 'one', kind: 'edge', edge: `front/${id}`, pins });
const one = (move: number) => [{ at: { fraction: 0.5 }, move }];
const faded = (move: number) => [{ at: { end: 'start' }, move: 0 }, ...one(move), { at: { end: 'finish' }, move: 0 }];

/** An alteration that waits is asked about under the code given, with ways to settle it, each of which is carried without a query. */
describe('an alteration that cannot be carried as it was asked', () => {
	it.each<[string, string, () => Draft, object]>([
		// A circle moved inward by more than its radius turns back on itself.
		['bends too sharply', 'too-tight', roundNeck, edge('neck', faded(60))],
		// The hem is 250 mm wide; moved in by more than that, the side finds no corner with it.
		['finds no corner with its neighbour', 'no-join', plainBodice, edge('side', one(-300))],
		['would make the outline cross itself', 'unplaced', plainBodice, edge('side', faded(-260))]
	])('%s: %s', (_, code, draft, json) => {
		const { queries, unplaced } = carry(draft(), [parseAlteration(json)]);
		expect(unplaced).toHaveLength(1);
		const [query, ...others] = queries.filter((found) => found.code === code);
		expect(others).toEqual([]);
		expect(query).toMatchObject({ severity: 'warning', sentence: unplaced[0].sentence });
		expect(query.settle.length).toBeGreaterThan(0);
		for (const way of query.settle) {
			const again = carry(draft(), [parseAlteration(JSON.parse(JSON.stringify(way)))]);
			expect(again.unplaced).toEqual([]);
			expect(again.queries.filter((found) => found.code === code || found.code === 'crosses')).toEqual([]);
		}
	});

	it('and one that is not read yet: unplaced, settled by reading it', () => {
		const unread = edge('side', [{ at: { fraction: 0.5 } }]);
		const asked = carry(plainBodice(), [parseAlteration(unread)]);
		expect(asked.unplaced).toMatchObject([{ why: 'not-read' }]);
		expect(asked.queries.filter(({ code }) => code === 'unplaced')).toHaveLength(1);
		const read = carry(plainBodice(), [parseAlteration(edge('side', one(-6)))]);
		expect(read.queries.filter(({ code }) => code === 'unplaced')).toEqual([]);
	});
});
