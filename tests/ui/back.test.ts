import { expect, it } from 'vitest';
import { pageToReturnTo } from '../../src/lib/ui/back.ts';

it('goes back to a page of this site, with what was asked of it', () => {
	expect(pageToReturnTo('/garments/abc/fittings/2?side=left')).toBe('/garments/abc/fittings/2?side=left');
});

it('goes to the workroom when the way back leads elsewhere, or nowhere', () => {
	for (const sent of [
		'//elsewhere.example',
		'/\\elsewhere.example',
		'https://elsewhere.example',
		'garments',
		'',
		'/a\nb',
		null
	]) {
		expect(pageToReturnTo(sent)).toBe('/');
	}
});
