import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	allowanceGroups,
	allowanceLines,
	allowanceOf,
	allowancesByEdge
} from '../../../src/lib/ui/allowances/allowance-groups.ts';
import { altered, demoDraft } from '../demo-versions.ts';

const groups = allowanceGroups(demoDraft);

test('every edge of a draft is in one group: both sides of a seam together, necks and hems by their name', () => {
	const edges = demoDraft.pieces.flatMap((piece) => piece.edges.map(({ id }) => `${piece.id}/${id}`));
	expect(groups.flatMap((group) => group.edges).sort()).toEqual([...edges].sort());
	const named = Object.fromEntries(groups.map(({ key, edges: all }) => [key, all]));
	expect(named['seam.side']).toEqual(['under-arm/side', 'front/side']);
	expect(named['edge.neck']).toEqual(['back/neck', 'front/neck']);
	expect(named['edge.hem']).toHaveLength(4);
});

test('right and left of a divided seam keep one allowance', () => {
	const divided = altered(demoDraft, {
		kind: 'seam',
		seam: 'side',
		on: 'left',
		pins: [{ at: { level: 'waist' }, a: -3, b: -3 }]
	});
	const side = allowanceGroups(divided).find(({ key }) => key === 'seam.side')!;
	expect([...side.edges].sort()).toEqual([
		'front@left/side',
		'front@right/side',
		'under-arm@left/side',
		'under-arm@right/side'
	]);
});

test('allowances given by group come back as they were given, whatever they are', () => {
	const some = fc.record(Object.fromEntries(groups.map(({ key }) => [key, fc.integer({ min: 0, max: 300 })])));
	fc.assert(
		fc.property(some, (lengths) => {
			const given = allowancesByEdge(groups, lengths);
			for (const group of groups) expect(allowanceOf(group, given), group.key).toBe(lengths[group.key]);
			const lines = allowanceLines(groups, given);
			expect(lines.map(({ mm }) => mm)).toEqual([...new Set(Object.values(lengths))].sort((a, b) => b - a));
			expect(lines.flatMap(({ names }) => names)).toHaveLength(groups.length);
		})
	);
});
