import { describe, expect, it } from 'vitest';
import { carry } from '../../../../src/lib/engine/review/carry-and-check.ts';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { parseAlteration } from '../../../../src/lib/engine/alteration/parse.ts';
import { parseDraft } from '../../../../src/lib/engine/draft/file/parse.ts';
import { line } from '../../../../src/lib/engine/geometry/segment.ts';
import type { Draft } from '../../../../src/lib/engine/draft/types.ts';
import { plainBodice, plainBodiceFile } from '../../../support/plain-bodice.ts';
import { altered, asked, settled } from '../altered.ts';

/** The bodice with one edge of the front led another way between its ends, past the reader, which would refuse it. */
function ledAstray(id: string, through: readonly [number, number]): Draft {
	const draft = plainBodice();
	const [front, ...others] = draft.pieces;
	const edges = front.edges.map((edge) => {
		if (edge.id !== id) return edge;
		const [from, to] = [edge.path[0].from, edge.path[edge.path.length - 1].to];
		return { ...edge, path: [line(from, through), line(through, to)] };
	});
	return { ...draft, pieces: [{ ...front, edges }, ...others] };
}

describe('an outline', () => {
	it('that crosses itself is an error that names the edges', () => {
		const [query] = check(ledAstray('side', [100, 600]));
		expect(query).toMatchObject({ code: 'crosses', severity: 'error', settle: [] });
		expect(query.sentence).toBe('The front cannot be cut: its side crosses its hem.');
	});

	it('that does not is not asked about', () => {
		expect(asked('crosses', plainBodice())).toEqual([]);
	});
});

describe('what the carry left over', () => {
	const nowhere = { id: 'four', kind: 'seam', seam: 'side', pins: [{ at: { level: 'knee' }, a: 3, b: 3 }] };
	const cut = (move: number) => ({
		id: 'five',
		kind: 'edge',
		edge: 'front/neck',
		pins: [{ at: { end: 'start' }, move }]
	});

	it('is told with the place that it waits for', () => {
		const { queries, unplaced } = carry(plainBodice(), [parseAlteration(nowhere)]);
		const [query] = queries.filter(({ code }) => code === 'unplaced');
		expect(query).toMatchObject({ severity: 'warning', where: 'side' });
		expect(query.sentence).toBe(unplaced[0].sentence);
	});

	it('bends too sharply, or finds no corner, under a code of its own, with what would work', () => {
		const { queries } = carry(plainBodice(), [parseAlteration(cut(60))]);
		const own = queries.filter(({ code }) => code === 'too-tight' || code === 'no-join');
		expect(own).toHaveLength(1);
		expect(own[0].where).toBe('front/neck');
		expect(own[0].settle.length).toBeGreaterThan(0);
		const again = carry(plainBodice(), own[0].settle.slice(0, 1));
		expect(again.unplaced).toEqual([]);
	});
});

describe('a notch', () => {
	const near = () => {
		const file = structuredClone(plainBodiceFile);
		file.pieces[0].notches = [{ id: 'n1', edge: 'side', at: 290, mate: 'back/n1' }];
		file.pieces[1].notches = [{ id: 'n1', edge: 'side', at: 10, mate: 'front/n1' }];
		return parseDraft(file);
	};
	const shorter = { id: 'one', kind: 'edge', edge: 'front/hem', pins: [{ at: { end: 'start' }, move: -20 }] };

	it('that was trimmed off is told once', () => {
		const { queries } = carry(near(), [parseAlteration(shorter)]);
		const lost = queries.filter(({ code }) => code === 'notch-lost');
		expect(lost).toHaveLength(1);
		expect(lost[0]).toMatchObject({ severity: 'warning', where: 'front/n1' });
	});

	it('that was trimmed off is settled by taking the other off, for its edge no longer reaches so far', () => {
		const { draft, queries } = carry(near(), [parseAlteration(shorter)]);
		const [query] = queries.filter(({ code }) => code === 'notch-lost');
		expect(query.settle.map(({ id }) => id)).toEqual(['settle-notch-lost-back-n1-off']);
		expect(asked('notch-lost', settled(draft, query), { base: near() })).toEqual([]);
	});

	it('that was taken off by itself can be marked again where its fellow is met', () => {
		const without = altered(near(), { id: 'off', kind: 'mark', piece: 'front', remove: 'n1' });
		const [query] = asked('notch-lost', without, { base: near() });
		expect(query.settle.map(({ id }) => id)).toEqual([
			'settle-notch-lost-front-n1-again',
			'settle-notch-lost-back-n1-off'
		]);
		const again = settled(without, query);
		expect(again.pieces[0].notches[0].at).toBeCloseTo(290, 6);
		for (const after of [again, settled(without, query, 1)]) {
			expect(asked('notch-lost', after, { base: near() })).toEqual([]);
		}
	});

	it('whose fellow is gone is told without the carry’s remarks', () => {
		const { draft } = carry(near(), [parseAlteration(shorter)]);
		expect(asked('notch-lost', draft, { base: near() })).toMatchObject([{ where: 'back/n1' }]);
		expect(asked('notch-lost', draft)).toEqual([]);
		expect(asked('notch-lost', near(), { base: near() })).toEqual([]);
	});

	it('lost on one side of the wearer is told of that side', () => {
		const { draft, queries } = carry(near(), [parseAlteration({ ...shorter, on: 'left' })]);
		expect(queries.filter(({ code }) => code === 'notch-lost').map(({ where }) => where)).toEqual(['front@left/n1']);
		expect(asked('notch-lost', draft, { base: near() })).toHaveLength(1);
	});
});

describe('two notches', () => {
	const apart = (by: number, ease = 0, hem = 450) => {
		const file = structuredClone(plainBodiceFile);
		file.pieces[1].notches[0].at = hem - 150 - 100 - by;
		file.pieces[1].edges[4].path = `M 0 ${hem} L 0 150`;
		file.pieces[1].edges[3].path = `M 250 450 L 0 ${hem}`;
		file.seams[0].ease = ease;
		return parseDraft(file);
	};

	it('may miss each other by 3 mm on a plain seam', () => {
		expect(asked('notch-walk', apart(2.9))).toEqual([]);
		const [query] = asked('notch-walk', apart(-3.2));
		expect(query).toMatchObject({ severity: 'warning', where: 'front/n1' });
		expect(query.figure).toBeCloseTo(-3.2, 6);
		expect(query.sentence).toBe('Side seam: two notches miss each other by 1/8″ when the seam is walked.');
	});

	it('are settled by moving either of them', () => {
		for (const draft of [apart(-5), apart(6), apart(14, 10, 460)]) {
			const [query] = asked('notch-walk', draft);
			expect(query.settle.map(({ id }) => id)).toEqual(['settle-notch-walk-back-n1', 'settle-notch-walk-front-n1']);
			for (const which of [0, 1]) expect(asked('notch-walk', settled(draft, query, which))).toEqual([]);
		}
	});

	it('may lie anywhere inside the fullness that is eased between them, and as they do in the base draft', () => {
		expect(asked('notch-walk', apart(8, 10, 460))).toEqual([]);
		expect(asked('notch-walk', apart(-8, 10, 460))).toHaveLength(1);
		expect(asked('notch-walk', apart(8), { base: apart(9) })).toEqual([]);
	});
});
