import { expect, test } from 'vitest';
import { patternFileName } from '../../../src/lib/server/pattern/file-name.ts';

const title = { garment: 'Governess jacket', wearer: 'Ines Varrow', version: 2, date: '2026-03-11', lining: false };

test('a file is called by garment, version and the wearer’s initials', () => {
	expect(patternFileName(title, 'pdf')).toBe('governess-jacket-version-2-iv.pdf');
	expect(patternFileName({ ...title, version: 0 }, 'json')).toBe('governess-jacket-draft-iv.json');
	expect(patternFileName({ ...title, lining: true }, 'svg')).toBe('governess-jacket-lining-version-2-iv.svg');
	expect(patternFileName(title, 'pdf', 'cutting-list')).toBe('governess-jacket-version-2-iv-cutting-list.pdf');
});

test.each([
	['Ines’s jacket, Varrow no. 2', 'Ines Varrow', 'jacket-no-2-version-2-iv.pdf'],
	['Ínes', 'Ines Varrow', 'garment-version-2-iv.pdf'],
	['../../etc "x"; y\r\nz', '', 'etc-x-y-z-version-2.pdf'],
	['Куртка', 'Вера', 'garment-version-2.pdf']
])('%s of %s names nobody and nothing that a system or a header would trip over', (garment, wearer, name) => {
	expect(patternFileName({ ...title, garment, wearer }, 'pdf')).toBe(name);
});
