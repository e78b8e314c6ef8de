import type { Typed } from '../typed.ts';

/** Fields of “Add a place”: asked of when its button is pressed, no part of what is typed. */
const asking = /^new(Offset|Toward)?$/;

/** The key of the page that a form was drawn on: no part of it either. */
const ofPage = 'drawn';

/** The fields of a form as they stand in the page, with what its button says if one was pressed; empty ones left out. */
export function typedForm(form: HTMLFormElement, button?: HTMLElement | null): Typed {
	const fields = new FormData(form, button instanceof HTMLButtonElement && button.name !== '' ? button : undefined);
	return saying([...fields], fields.get('do') === 'add');
}

/** The same of fields that were sent. */
export const typedOf = (fields: Typed): Typed => saying(Object.entries(fields), false);

function saying(fields: readonly (readonly [string, unknown])[], adding: boolean): Typed {
	const said = fields.filter((one): one is [string, string] => typeof one[1] === 'string' && one[1].trim() !== '');
	return Object.fromEntries(said.filter(([name]) => name !== ofPage && (adding || !asking.test(name))));
}
