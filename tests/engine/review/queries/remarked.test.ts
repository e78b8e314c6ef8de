import { describe, expect, it } from 'vitest';
import { carry, parseAlteration } from '../../../../src/lib/engine/index.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';

/** Slashed across a curved armhole, so that the opening leaves two corners in it. */
const slashed = parseAlteration({
	id: 'one',
	kind: 'spread',
	cuts: [
		{
			piece: 'front',
			from: { edge: 'front/armhole', fraction: 0.5 },
			to: { edge: 'front/centre', end: 'start', offset: 250 },
			gapFrom: 12,
			gapTo: 0,
			keep: 'front/hem'
		}
	]
});

describe('what a carry remarks is asked as a query', () => {
	it('an edge bridged straight where it was slashed, with how far, and smoothing there settles it', () => {
		const { draft, queries } = carry(plainBodice(), [slashed]);
		const bridge = queries.find((query) => query.code === 'bridge' && query.where === 'front/armhole')!;
		expect(bridge.figure).toBeGreaterThan(10);
		expect(bridge.sentence).toMatch(/bridged straight/);
		expect(bridge.settle).toHaveLength(1);
		const [way] = bridge.settle;
		const again = carry(draft, [parseAlteration(JSON.parse(JSON.stringify(way)))]);
		expect(again.unplaced).toEqual([]);
		expect(again.queries.filter((query) => query.code === 'bridge')).toEqual([]);
	});

	it('nothing is asked where nothing was remarked', () => {
		const { queries } = carry(plainBodice(), []);
		expect(queries.filter((query) => query.code === 'bridge')).toEqual([]);
	});
});
