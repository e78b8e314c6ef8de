import { describe, expect, it } from 'vitest';
import { carryAlterations } from '../../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../../src/lib/engine/alteration/parse.ts';
import { floorToTape } from '../../../src/lib/engine/draft/say.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';
import { bodice } from '../../support/drafts.ts';
import { plainBodice } from '../../support/plain-bodice.ts';
import { notCarried } from '../../support/alteration-law.ts';

/** The plain front is 250 mm wide; its centre stays. */
const hollowed = (move: number) => ({
	id: 'one',
	kind: 'edge',
	edge: 'front/side',
	pins: [
		{ at: { end: 'start' }, move: 0 },
		{ at: { fraction: 0.5 }, move },
		{ at: { end: 'finish' }, move: 0 }
	]
});

describe('an outline that would cross itself', () => {
	it('is refused, with the edges that would cross', () => {
		const refusal = notCarried(plainBodice(), hollowed(-260));
		expect(refusal.code).toBe('crosses');
		expect(refusal.sentence).toBe(
			'The front could not be cut any more: its side would cross its centre front. Do less there, or do it elsewhere.'
		);
	});

	it('comes with the greatest amount that works, on the tape and to 1/32 of what was asked', () => {
		const asked = 320;
		const [offer, ...others] = notCarried(plainBodice(), hollowed(-asked)).settle as unknown as ReturnType<
			typeof hollowed
		>[];
		expect(others).toEqual([]);
		const works = -offer.pins[1].move;
		expect(carryAlterations(plainBodice(), [parseAlteration(offer)]).unplaced).toEqual([]);
		expect(works).toBeCloseTo(floorToTape(works), 9);
		// At 250 mm the side meets the centre.
		expect(works).toBeLessThan(250);
		expect(works).toBeGreaterThanOrEqual(250 - asked / 32 - 25.4 / 16);
		notCarried(plainBodice(), hollowed(-(works + asked / 32 + 25.4 / 16)));
	});
});

describe('an offer that would be refused itself', () => {
	const offers = (draft: Draft, json: object) => notCarried(draft, json).settle;

	it('is not made: keeping 0 at an end that would not meet even so', () => {
		const all = { id: 'one', kind: 'edge', edge: 'front/side', pins: [{ at: { fraction: 0.5 }, move: -400 }] };
		const refusal = notCarried(plainBodice(), all);
		expect(refusal.code).toBe('no-join');
		for (const offer of refusal.settle) expect(carryAlterations(plainBodice(), [offer]).unplaced).toEqual([]);
		expect(refusal.settle).toHaveLength(1);
	});

	it('gives way to a smaller amount, whatever the kind', () => {
		const fold = {
			id: 'fold',
			kind: 'fold-dart',
			piece: 'front',
			ends: [
				{ from: { edge: 'front/side', fraction: 0.3 }, in: 60 },
				{ from: { edge: 'front/side', fraction: 0.8 }, in: 60 }
			],
			widest: { at: 0.5, intake: 300 }
		};
		const [offer] = offers(bodice, fold) as unknown as (typeof fold)[];
		expect(offer.widest.intake).toBeGreaterThan(0);
		expect(offer.widest.intake).toBeLessThan(300);
	});

	it('is none where no amount works', () => {
		const nowhere = { ...hollowed(-5), edge: 'front/none' };
		expect(offers(plainBodice(), nowhere)).toEqual([]);
	});
});
