import { expect, test } from 'vitest';
import { check } from '../../../src/lib/engine/index.ts';
import { changedPieces } from '../../../src/lib/ui/version/changed-pieces.ts';
import { checkRows } from '../../../src/lib/ui/version/check-rows.ts';
import { queryRows } from '../../../src/lib/ui/version/query-rows.ts';
import { saidOn } from '../../../src/lib/ui/version/said-on.ts';
import { settleWords } from '../../../src/lib/ui/version/settle-words.ts';
import { walkRows } from '../../../src/lib/ui/version/walk-rows.ts';
import { altered, atLevel, demoDraft } from '../demo-versions.ts';

test('seams of equal sides walk, a shoulder has the fullness that is meant, the sleeve head comes last', () => {
	const rows = walkRows(demoDraft, 'in', []);
	const said = Object.fromEntries(rows.map(({ seam, verdict }) => [seam, verdict]));
	expect(said['side-back']).toBe('walks');
	expect(said.shoulder).toBe('1/4″ fullness');
	expect(said.armhole).toBe('1 1/2″ fullness');
	expect(rows[rows.length - 1]).toMatchObject({ seam: 'armhole', sleeveHead: true });
	// A centre seam is sewn to its own mirror image: there is nothing to lay together.
	expect(said['centre-back']).toBeUndefined();
});

test('a side that became longer is said to be eased in, by how much; one that is asked about is marked', () => {
	const after = altered(demoDraft, atLevel('under-arm-back', 'waist', 6.35, -6.35));
	const row = walkRows(after, 'in', ['under-arm-back']).find(({ seam }) => seam === 'under-arm-back')!;
	expect(row.b - row.a).toBeGreaterThan(25.4 / 16);
	expect(row.verdict).toMatch(/^\d+\/\d+″ eased in$/);
	expect(row.asked).toBe(true);
	expect(walkRows(after, 'cm', []).find(({ seam }) => seam === 'side')!.asked).toBe(false);
});

test('only the pieces that a seam is sewn of are changed by it', () => {
	expect(changedPieces(demoDraft, altered(demoDraft, atLevel('side', 'waist', -6.35)))).toEqual(['under-arm', 'front']);
	expect(changedPieces(demoDraft, demoDraft)).toEqual([]);
});

test('darts and corners hold unless a query says otherwise', () => {
	expect(checkRows(demoDraft, [], 'in')).toMatchObject([
		{ what: 'Darts true', words: 'front and second darts: legs alike to 1/16″', asked: 0 },
		{ what: 'Corners smooth', asked: 0 }
	]);
	const asked = [
		{ code: 'dart-legs', where: 'front/front-dart' },
		{ code: 'seam-corner', where: 'side' },
		{ code: 'seam-corner', where: 'shoulder' }
	];
	expect(checkRows(demoDraft, asked, 'cm').map((row) => row.asked)).toEqual([1, 2]);
});

const query = (code: string, where: string) =>
	({ code, where, severity: 'note', sentence: `${where}: asked.`, settle: [] }) as const;
const settled = (code: string, where: string, how: 'left' | 'altered') =>
	({ code, where, how, alteration: null, sentence: 'Side seam: it was asked.', note: '', at: '2026-03-11' }) as const;

test('queries have letters, those to settle first, those that an alteration settled before last', () => {
	const rows = queryRows(
		[query('seam-length', 'side'), query('unplaced', 'front'), query('ease-low', 'waist')],
		[settled('seam-length', 'side', 'left'), settled('notch-walk', 'side', 'altered')],
		'in'
	);
	expect(rows.map(({ letter, where, settled: how, waits }) => [letter, where, how?.how, waits])).toEqual([
		['A', 'front', undefined, true],
		['B', 'waist', undefined, false],
		['C', 'side', 'left', false],
		['D', 'side', 'altered', false]
	]);
	expect(rows[3].head).toBe('Side seam');
});

test('each way to true a seam is told apart: the shorter lengthened, the longer shortened, or shared', () => {
	const after = altered(demoDraft, atLevel('under-arm-back', 'waist', 9.525, -9.525));
	const asked = check(after, { base: demoDraft }).find(({ where }) => where === 'under-arm-back')!;
	expect(asked.figure).toBeGreaterThan(0);
	const ways = ['a', 'b', 'half'].map((take) => ({
		id: take,
		kind: 'true-seam',
		on: 'both' as const,
		seam: 'under-arm-back',
		end: 'finish',
		take
	}));
	const words = ways.map((way) => settleWords(after, asked, way, 'in'));
	expect(words[0]).toMatch(/^Lengthen the side back by \d+\/\d+″$/);
	expect(words[1]).toMatch(/^Shorten the under-arm by \d+\/\d+″$/);
	expect(words[2]).toMatch(/^Share it: .* off the under-arm, onto the side back$/);
	const turned = settleWords(after, { ...asked, figure: -asked.figure! }, ways[0], 'in');
	expect(turned).toMatch(/^Shorten the side back/);
});

test('truing a dart that the same fitting added is told on the draft that has it', () => {
	const dart = {
		kind: 'dart',
		edge: 'front/armhole',
		at: { notch: 'armhole-front' },
		intake: 9.525,
		point: { from: { edge: 'front/armhole', notch: 'armhole-front' }, in: 95.25 }
	};
	const after = altered(demoDraft, dart);
	expect(saidOn(demoDraft, after, { kind: 'true-dart', dart: 'front/a1' })).toBe(after);
	expect(saidOn(demoDraft, after, { kind: 'dart-set', dart: 'front/front-dart', intake: 15 })).toBe(demoDraft);
	expect(saidOn(demoDraft, after, { kind: 'seam', seam: 'side' })).toBe(demoDraft);
});
