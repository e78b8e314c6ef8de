import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import Amount from '../../src/lib/ui/Amount.svelte';
import Cautions from '../../src/lib/ui/Cautions.svelte';
import Choice from '../../src/lib/ui/Choice.svelte';
import ChoiceLinks from '../../src/lib/ui/ChoiceLinks.svelte';
import EaseBars from './EaseBarsInInches.svelte';
import Field from '../../src/lib/ui/Field.svelte';
import Fraction from '../../src/lib/ui/Fraction.svelte';
import Head from '../../src/lib/ui/Head.svelte';
import LifeStrip from '../../src/lib/ui/LifeStrip.svelte';
import ObservationRing from '../../src/lib/ui/ObservationRing.svelte';
import PinMark from '../../src/lib/ui/PinMark.svelte';
import QuerySlip from '../../src/lib/ui/QuerySlip.svelte';
import SeamWalk from '../../src/lib/ui/SeamWalk.svelte';
import TableDrawing from '../../src/lib/ui/drawing/TableDrawing.svelte';
import { layTable } from '../../src/lib/ui/drawing/lay-table.ts';
import { layThin } from '../../src/lib/ui/drawing/lay-thin.ts';
import { jacket } from './jacket.ts';

/** What is left for who copies or hears it. */
const plain = (html: string) =>
	html
		.replace(/<!--.*?-->/gs, '')
		.replace(/<[^>]*>/g, '')
		.replace(/\s+/g, ' ')
		.trim();

const count = (html: string, what: RegExp) => html.match(what)?.length ?? 0;

describe('an amount', () => {
	it('is copied as it is typed', () => {
		expect(plain(render(Amount, { props: { mm: 34.925, unit: 'in' } }).body)).toBe('1 3/8″');
		expect(plain(render(Amount, { props: { mm: 34.9, unit: 'cm' } }).body)).toBe('3.5 cm');
	});

	it('may leave out the mark of inches, never that of millimetres or centimetres', () => {
		const bare = (mm: number, unit: 'in' | 'cm') => plain(render(Amount, { props: { mm, unit, bare: true } }).body);
		expect(bare(6.35, 'in')).toBe('1/4');
		expect(bare(6, 'cm')).toBe('6 mm');
		expect(bare(60, 'cm')).toBe('6 cm');
	});

	it('wraps the fraction alone', () => {
		expect(render(Amount, { props: { mm: 34.925, unit: 'in' } }).body).toMatch(/<span class="f"[^>]*>3\/8<\/span/);
	});

	it('is the plain sentence, fractions and all', () => {
		const { body } = render(Fraction, { props: { text: 'short by 1/4, 1 1/2 left <b>' } });
		expect(plain(body)).toBe('short by 1/4, 1 1/2 left &lt;b>');
	});
});

describe('marks say in words what they show', () => {
	it.each([
		['Alteration 4', render(PinMark, { props: { number: 4 } })],
		['Alteration 4, not read yet', render(PinMark, { props: { number: 4, state: 'not-read' } })],
		['Alteration 4, withdrawn', render(PinMark, { props: { number: 4, state: 'withdrawn' } })],
		['Observation c, open', render(ObservationRing, { props: { letter: 'c' } })],
		['Observation a, answered', render(ObservationRing, { props: { letter: 'a', closed: true } })],
		['Query A', render(QuerySlip, { props: { letter: 'A' } })],
		['Query A, settled', render(QuerySlip, { props: { letter: 'A', settled: true } })]
	])('%s', (name, { body }) => {
		expect(body).toContain(`role="img" aria-label="${name}"`);
	});

	it('and show it without colour: an open ring is broken, a settled slip struck through', () => {
		const ring = (closed: boolean) => render(ObservationRing, { props: { letter: 'c', closed } }).body;
		expect(ring(false)).toContain('stroke-dasharray');
		expect(ring(true)).not.toContain('stroke-dasharray');
		const slip = (settled: boolean) => count(render(QuerySlip, { props: { letter: 'A', settled } }).body, /<path/g);
		expect(slip(true)).toBe(slip(false) + 1);
	});
});

describe('a field', () => {
	const { body } = render(Field, {
		props: {
			name: 'waist',
			label: 'Waist line',
			value: '9/8" onfocus="x',
			hint: 'inches and eighths',
			error: 'Eighths go up to 7: 9/8 is 1 1/8. Write 1 1/8?'
		}
	});

	it('keeps what was typed, as text', () => {
		expect(body).toContain('value="9/8&quot; onfocus=&quot;x"');
	});

	it('ties label, hint and sentence to itself', () => {
		const id = /<input[^>]* id="([^"]+)"/.exec(body)![1];
		expect(body).toContain(`for="${id}"`);
		expect(body).toContain(`aria-describedby="${id}-hint ${id}-wrong"`);
		expect(body).toContain(`id="${id}-hint"`);
		expect(body).toContain(`id="${id}-wrong"`);
		expect(body).toContain('aria-invalid="true"');
	});

	it('of several lines keeps its text, and a list its choice', () => {
		expect(render(Field, { props: { name: 'n', label: 'Note', lines: 3, value: 'a\n<b>' } }).body).toContain(
			'a\n&lt;b>'
		);
		const list = render(Field, {
			props: {
				name: 'p',
				label: 'Place',
				value: 'b',
				options: [
					{ value: 'a', label: 'Armhole' },
					{ value: 'b', label: 'Waist line' }
				]
			}
		}).body;
		expect(list).toMatch(/<option value="b" selected[^>]*>Waist line/);
		expect(count(list, / selected/g)).toBe(1);
	});
});

describe('a choice', () => {
	it('is a group of radio buttons with a name, one of them set', () => {
		const { body } = render(Choice, {
			props: {
				name: 'on',
				legend: 'Pinned on the right side',
				value: 'one',
				options: [
					{ value: 'both', label: 'Carry to both' },
					{ value: 'one', label: 'Right only' }
				]
			}
		});
		expect(body).toMatch(/<fieldset.*<legend[^>]*>Pinned on the right side<\/legend>/s);
		expect(count(body, /type="radio" name="on"/g)).toBe(2);
		expect(body).toMatch(/value="one" checked/);
		expect(count(body, / checked/g)).toBe(1);
	});

	it('in links says which one is here', () => {
		const { body } = render(ChoiceLinks, {
			props: {
				label: 'Side',
				options: [
					{ name: 'Right', href: '?side=right', here: true },
					{ name: 'Left', href: '?side=left' }
				]
			}
		});
		expect(count(body, /aria-current="true"/g)).toBe(1);
		expect(body).toMatch(/href="\?side=right" aria-current="true"/);
	});
});

describe('the head', () => {
	const head = { crumbs: [{ name: 'Workroom', href: '/' }, { name: 'Fitting 2' }], dim: true };
	const { body } = render(Head, { props: { head, unit: 'in', dim: false, back: '/garments/a?side=left&x=1' } });

	it('changes the unit by a plain form that comes back to this page', () => {
		expect(body).toMatch(/<form class="unit[^"]*" method="POST" action="\/unit"/);
		expect(body).toContain('name="back" value="/garments/a?side=left&amp;x=1"');
		expect(body).toMatch(/name="unit" value="in" aria-pressed="true"/);
		expect(body).toMatch(/name="unit" value="cm" aria-pressed="false"/);
	});

	it('offers to dim the page only where the page asks for it', () => {
		expect(body).toContain('Dim the page');
		const plainHead = { crumbs: head.crumbs };
		expect(render(Head, { props: { head: plainHead, unit: 'in', dim: false, back: '/' } }).body).not.toContain(
			'Dim the page'
		);
	});

	it('says where the page is', () => {
		expect(body).toMatch(/aria-current="page"[^>]*>Fitting 2/);
	});
});

describe('a seam walk', () => {
	const off = (a: number, b: number) => render(SeamWalk, { props: { a, b } }).body.includes('walk-off');

	it('shows a difference from an eighth of an inch on, and no smaller one', () => {
		expect(off(419.1, 414.3)).toBe(true);
		expect(off(330.2, 333.375)).toBe(true);
		expect(off(330.2, 331.8)).toBe(false);
	});
});

describe('the drawing', () => {
	const scene = layTable(jacket, { unit: 'in', material: 'calico' });
	const edgeHref = (edge: string) => (edge === 'front/side' ? '?edge=front/side' : undefined);
	const { body } = render(TableDrawing, { props: { scene, title: 'Version 1, all pieces', edgeHref, edgeAct: 'Pin' } });

	it('has a title, and each piece in a group of its own name', () => {
		expect(body).toMatch(/<title[^>]*>Version 1, all pieces<\/title>/);
		for (const { title } of scene.pieces) expect(body).toContain(`role="group" aria-label="${title}"`);
	});

	it('makes links of the edges that lead somewhere', () => {
		expect(count(body, /class="edge-link"/g)).toBe(1);
		expect(body).toContain('aria-label="Pin Front, Side seam"');
	});

	it('lays the weave over a toile only', () => {
		expect(body).toContain('-weave)');
		const version = render(TableDrawing, { props: { scene: layTable(jacket, { unit: 'in' }), title: 'x' } }).body;
		expect(version).not.toContain('-weave)');
	});
});

it('nothing carries a style of its own, which the pages would not be allowed', () => {
	const scene = layThin(jacket, { width: 150, height: 120, material: 'calico' });
	const bodies = [
		render(Cautions),
		render(LifeStrip, {
			props: {
				stages: [
					{ name: 'Draft', state: 'done', scene },
					{ name: 'Toile 1', state: 'now', scene, notes: ['1 1/4 at the sides'] },
					{ name: 'Lining', state: 'to come', scene }
				]
			}
		}),
		render(EaseBars, {
			props: {
				rows: [
					{ name: 'Waist', body: 654, ease: 25.4, wanted: [19, 38], before: 50 },
					{ name: 'Bust', ease: -12 }
				]
			}
		}),
		render(TableDrawing, { props: { scene: layTable(jacket, { unit: 'in' }), title: 'x' } })
	].map(({ body }) => body);
	for (const body of bodies) {
		expect(body.length).toBeGreaterThan(100);
		expect(body).not.toMatch(/\sstyle=/);
	}
});
