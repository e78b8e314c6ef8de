import { expect, it } from 'vitest';
import { bandsFor, presets, usualBands } from '../../../src/lib/engine/review/bands.ts';

it('bands are the usual ones unless others are chosen, and several choices are laid one over another', () => {
	expect(bandsFor()).toEqual(usualBands);
	const both = bandsFor(['close over stays', 'wool sleeve']);
	expect(both.ease).toEqual(presets['close over stays'].ease);
	expect(both.sleeveHead).toEqual({ least: 25.4, most: 50.8 });
	expect(both.seamLength).toEqual(usualBands.seamLength);
	expect(bandsFor(['close sleeve', { sleeveHead: { least: 5, most: 10 } }]).sleeveHead).toEqual({ least: 5, most: 10 });
	expect(bandsFor({ notchWalk: { silent: 5 } }).notchWalk.silent).toBe(5);
});

it('a preset that does not exist is our own mistake', () => {
	expect(() => bandsFor('loose over nothing')).toThrow('loose over nothing');
	expect(() => bandsFor('toString')).toThrow();
});
