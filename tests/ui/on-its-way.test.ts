import { expect, test } from 'vitest';
import { onItsWay } from '../../src/lib/ui/on-its-way.ts';

/** A form is only told from another here. */
const form = () => ({}) as HTMLFormElement;
const said = { action: '?/keep', fields: { name: 'Jacket' } };

test('a form that is on its way is not sent again with the same, until it has arrived', () => {
	const one = form();
	const arrived = onItsWay(one, said);
	expect(onItsWay(one, { ...said, fields: { ...said.fields } })).toBeUndefined();
	arrived!();
	expect(onItsWay(one, said)).toBeDefined();
});

test('what says something else, and another form, go at the same time', () => {
	const one = form();
	expect(onItsWay(one, said)).toBeDefined();
	expect(onItsWay(one, { ...said, action: '?/leave' })).toBeDefined();
	expect(onItsWay(one, { ...said, fields: { name: 'Coat' } })).toBeDefined();
	expect(onItsWay(form(), said)).toBeDefined();
});
