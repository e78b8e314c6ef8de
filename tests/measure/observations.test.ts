import { describe, expect, it } from 'vitest';
import { allCautions, cautionsFor, notMedicalAdvice, pinsMissing } from '../../src/lib/measure/cautions.ts';
import { findObservation, observationGroups, observations } from '../../src/lib/measure/observations.ts';

describe('observations', () => {
	it('have keys of their own, a group that is shown, a cause, a remedy and a source', () => {
		expect(new Set(observations.map(({ key }) => key)).size).toBe(observations.length);
		for (const { key, group, causes, remedies, source } of observations) {
			expect(observationGroups, key).toContain(group);
			expect(causes.length, key).toBeGreaterThan(0);
			expect(remedies.length, key).toBeGreaterThan(0);
			expect(source, key).not.toBe('');
		}
	});

	it('speak of the cloth, never of the figure', () => {
		const figure =
			/\b(fat|thin|stout|plump|flat[- ]chested|sway ?back|stoop|hump|saggy|breasts?|she|her|his|buttocks?|belly)\b/i;
		for (const { key, what, folds = '', causes, remedies } of observations)
			expect([what, folds, ...causes, ...remedies.map(({ at }) => at)].join(' '), key).not.toMatch(figure);
	});

	it('give a remedy on the pattern the kind of alteration that records it', () => {
		for (const { key, remedies } of observations)
			for (const { op, kind } of remedies) if (op !== 'off the pattern') expect(kind, `${key}: ${op}`).toBeDefined();
	});

	// Fitting practice: a front or back that sags is taken in at its shoulder edge, most at the neck, and the neck redrawn.
	it.each(['front-sags-below-bust', 'back-sags'])('cure %s at the shoulder, inward, and redraw the neck', (key) => {
		const [first, second] = findObservation(key)?.remedies ?? [];
		expect(first).toMatchObject({ op: 'slope', kind: 'seam' });
		expect(first.at).toMatch(/shoulder edge: take in, most at the neck/);
		expect(second.at).toMatch(/neck, redrawn/);
	});

	// The New Dressmaker (1921): a body that twists is pinned again on its waist marks; the pattern stays.
	it('leave the pattern alone where pinning again is the cure', () => {
		expect(findObservation('twists')?.remedies.every(({ kind }) => kind === undefined)).toBe(true);
	});

	// The sway back alteration (2016): folds at a back waist that is tight below must not be tucked.
	it('never tuck a back waist that is only tight below', () => {
		expect(findObservation('back-waist-folds-skirt-tight')?.remedies.map(({ op }) => op)).toEqual(['let out']);
	});
});

describe('cautions', () => {
	it('are one sentence each', () => {
		for (const caution of [...allCautions, notMedicalAdvice]) expect(caution).toMatch(/^[A-Z][^.!]*\.$/);
	});

	it('come at the act', () => {
		expect(cautionsFor('slashing').join()).toContain('card behind it');
		expect(cautionsFor('alone').join()).toContain('door unlocked');
	});

	it('count the pins', () => {
		expect(pinsMissing(24, 24)).toBeUndefined();
		expect(pinsMissing(24, 22)).toBe('2 not found: check before the toile comes off.');
		expect(pinsMissing(24, 25)).toContain('count again');
		expect(() => pinsMissing(24.5, 24)).toThrow('whole numbers');
		expect(() => pinsMissing(-1, 0)).toThrow('whole numbers');
	});
});
