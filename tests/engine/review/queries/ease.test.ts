import { describe, expect, it } from 'vitest';
import { check } from '../../../../src/lib/engine/review/check.ts';
import { easeTable } from '../../../../src/lib/engine/review/ease-table.ts';
import { movePiece } from '../../../../src/lib/engine/draft/turn-piece.ts';
import { scaling } from '../../../../src/lib/engine/geometry/motion.ts';
import { bodice } from '../../../support/drafts.ts';
import { plainBodice } from '../../../support/plain-bodice.ts';
import { asked, settled } from '../altered.ts';

// Round 920 at the bust and 660 at the waist.
const body = (bust: number, waist: number) => ({ measures: { bust: 920 - bust, waist: 660 - waist } });
const inch = 25.4;

describe('ease at the balance lines', () => {
	it('is not asked about unless the bands say what is wanted', () => {
		expect(check(bodice, body(-20, 300)).filter(({ code }) => code.startsWith('ease'))).toEqual([]);
	});

	// Published figures do not agree with one another (bust 1 1/2 to 4 in): each is a preset, and one is as good as silent where
	// the other speaks.
	it.each([
		['close over stays', 1 * inch, 0.5 * inch, []],
		['close over stays', 2.5 * inch, 0.5 * inch, ['ease-high bust']],
		['close over stays', 0.25 * inch, 1.5 * inch, ['ease-low bust', 'ease-high waist']],
		['jacket over a blouse', 2.5 * inch, 2 * inch, ['ease-low bust']],
		['jacket over a blouse', 3.5 * inch, 2 * inch, []],
		['dress bodice', 1.75 * inch, 0.8 * inch, []],
		['easy bodice', 1.75 * inch, 0.8 * inch, ['ease-low bust']]
	])('%s: %d at the bust, %d at the waist', (bands, bust, waist, told) => {
		const found = check(bodice, { ...body(bust, waist), bands }).filter(({ code }) => code.startsWith('ease'));
		expect(found.map(({ code, where }) => `${code} ${where}`)).toEqual(told);
		expect(found.every(({ severity }) => severity === 'note')).toBe(true);
	});

	it('may be asked for in a workroom’s own figures', () => {
		const bands = { ease: { bust: { least: 30, most: 35 } } };
		const [query] = asked('ease-high', bodice, { ...body(40, 20), bands });
		expect(query.figure).toBeCloseTo(40, 6);
		expect(query.sentence).toBe('There is 1 9/16″ of ease at the bust; 1 3/16″ to 1 3/8″ is wanted.');
	});

	it('is settled by letting out or taking in the side seam', () => {
		for (const [bust, waist] of [
			[5, 10],
			[60, 10],
			[25, 40]
		]) {
			const options = { ...body(bust, waist), bands: 'close over stays' };
			const found = check(bodice, options).filter(({ code }) => code.startsWith('ease'));
			expect(found).toHaveLength(1);
			const after = settled(bodice, found[0]);
			expect(
				check(after, options).filter(({ code, where }) => code.startsWith('ease') && where === found[0].where)
			).toEqual([]);
		}
	});
});

describe('a proposal', () => {
	it('is made only where the seam can carry it', () => {
		// The centre back is the only seam that crosses the bust line: it can be taken in by 3/4″ a layer, not by half the back.
		const [query] = asked('ease-high', bodice, { ...body(80, 10), bands: 'close over stays' });
		expect(query).toMatchObject({ where: 'bust', settle: [{ seam: 'centre-back' }] });
		expect(asked('ease-high', bodice, { ...body(600, 10), bands: 'close over stays' })[0].settle).toEqual([]);
	});
});

describe('a waist smaller than the body', () => {
	it('is noted to 1/2″ under, and beyond it carries the care sentence', () => {
		expect(asked('waist-under-body', bodice, body(20, 0))).toEqual([]);
		const [note] = asked('waist-under-body', bodice, body(20, -12.7));
		expect(note).toMatchObject({ severity: 'note', where: 'waist' });
		expect(note.sentence).toBe('The waist is 1/2″ under the one measured over the same foundation.');
		const [warning] = asked('waist-under-body', bodice, body(20, -13));
		expect(warning.severity).toBe('warning');
		expect(warning.figure).toBeCloseTo(-13, 6);
		expect(warning.sentence).toContain('Never lace or fasten tighter than the wearer can breathe and sit in.');
	});

	it('is meant in stays, which are held against the measure that the wearer is used to', () => {
		const stays = { ...body(20, -60), bands: 'stays' };
		expect(asked('waist-under-body', bodice, stays)).toEqual([]);
		expect(asked('waist-under-body', bodice, { ...stays, accustomed: 655 })).toEqual([]);
		expect(asked('waist-under-body', bodice, { ...stays, accustomed: 680 })).toHaveLength(1);
	});

	it('is settled by letting it out', () => {
		const options = body(20, -15);
		const [query] = asked('waist-under-body', bodice, options);
		expect(asked('waist-under-body', settled(bodice, query), options)).toEqual([]);
	});
});

describe('a doubt about the scale', () => {
	const enlarged = (k: number) => ({
		...plainBodice(),
		pieces: plainBodice().pieces.map((piece) => movePiece(piece, scaling(k)))
	});
	// Round 960 at both lines, laps of 20 mm being left out.
	const measures = { bust: 900, waist: 910 };

	it('arises where every round is wrong by the same plain factor', () => {
		expect(easeTable(plainBodice(), {}).map(({ garment }) => Math.round(garment))).toEqual([960, 960]);
		expect(asked('scale-doubt', plainBodice(), { measures })).toEqual([]);
		// A drawing at 1:8 enlarged only four times.
		const [query] = asked('scale-doubt', enlarged(0.5), { measures });
		expect(query.severity).toBe('warning');
		expect(query.sentence).toContain('half of it');
		expect(asked('scale-doubt', enlarged(2.54), { measures })).toHaveLength(1);
		expect(asked('scale-doubt', enlarged(0.75), { measures })).toEqual([]);
	});

	it('does not arise at a single line that is wide on purpose', () => {
		expect(asked('scale-doubt', enlarged(2), { measures: { waist: 910 } })).toEqual([]);
		expect(asked('scale-doubt', enlarged(2), { measures })).toHaveLength(1);
	});
});

describe('fittings carried together', () => {
	it('over different things are a warning; over the same thing they are not', () => {
		const [query] = asked('foundation-differs', bodice, {
			foundations: ['chemise and corset', 'shift', 'chemise and corset']
		});
		expect(query.sentence).toContain('(chemise and corset and shift)');
		expect(asked('foundation-differs', bodice, { foundations: ['corset', 'corset '] })).toEqual([]);
	});
});
