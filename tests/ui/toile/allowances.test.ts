import { describe, expect, it } from 'vitest';
import { parseDraft } from '../../../src/lib/engine/index.ts';
import demoDraft from '../../../src/lib/intake/demo-draft.json' with { type: 'json' };
import { allowanceRows } from '../../../src/lib/ui/toile/allowance-rows.ts';
import { toileAllowances } from '../../../src/lib/ui/toile/toile-allowances.ts';
import { otherAllowances } from '../../../src/lib/ui/toile/toile-words.ts';
import { plainBodice as drafted } from '../../support/plain-bodice.ts';
import { jacket } from '../jacket.ts';

const plainBodice = drafted();

const allEdges = (draft: typeof jacket) =>
	draft.pieces.flatMap((piece) =>
		piece.edges.filter(({ kind }) => kind !== 'fold').map((edge) => `${piece.id}/${edge.id}`)
	);

describe('the table of allowances', () => {
	it.each([
		['a plain bodice', plainBodice],
		['a jacket', jacket]
	])('has every edge of %s that is not a fold, once', (_, draft) => {
		const named = allowanceRows(draft).flatMap(({ edges }) => edges.map(({ edge }) => edge));
		expect([...named].sort()).toEqual([...allEdges(draft)].sort());
	});

	it('names seams as the draft does, with the pieces on both sides; open edges of one name stand together', () => {
		const rows = allowanceRows(plainBodice);
		expect(rows.map(({ name, kind, edges }) => [name, kind, edges.map(({ label }) => label).join(' ')])).toEqual([
			['Side seam', 'seam', 'Front Back'],
			['Shoulder seam', 'seam', 'Front Back'],
			['Centre-back seam', 'seam', 'Back'],
			['Armhole', 'open', 'Front Back'],
			['Hem', 'open', 'Front Back'],
			['Centre front', 'open', 'Front'],
			['Neck', 'open', 'Front Back']
		]);
	});
});

describe('the usual allowances of a fitting toile', () => {
	it('are 1″, and 1/4″ round neck and armhole', () => {
		expect(toileAllowances(plainBodice)).toEqual({
			default: 25.4,
			edges: { 'front/armhole': 6.35, 'front/neck': 6.35, 'back/neck': 6.35, 'back/armhole': 6.35 }
		});
	});

	it('know an armhole by the sleeve that is set into it, whatever it is called; the sleeve’s head keeps its inch', () => {
		const text = JSON.stringify(demoDraft).replaceAll('armhole', 'round').replaceAll('Armhole', 'Round');
		const { edges } = toileAllowances(parseDraft(JSON.parse(text)));
		expect(Object.keys(edges).sort()).toEqual(
			['back/neck', 'back/round', 'front/neck', 'front/round', 'side-back/round', 'under-arm/round'].sort()
		);
	});
});

describe('allowances in words', () => {
	const rows = allowanceRows(plainBodice);

	it('say only what differs, the widest first, whole rows by their name', () => {
		const edges = { 'front/neck': 6.35, 'back/neck': 6.35, 'back/side': 38.1, 'front/hem': 25.4 };
		expect(otherAllowances(rows, 25.4, edges)).toEqual([
			{ mm: 38.1, where: 'Side seam (Back)' },
			{ mm: 6.35, where: 'Neck' }
		]);
	});

	it('are none where every edge has the same', () => {
		expect(otherAllowances(rows, 25.4, {})).toEqual([]);
	});
});
