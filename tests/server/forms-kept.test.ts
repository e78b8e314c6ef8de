import { expect, test } from 'vitest';
import { begun, contentOf, kept, rawDatabase, refusalOf, takenIn } from './support/journal.ts';

test('a form that is sent again is answered the same, and done once', () => {
	const { journal, fitting, file } = begun();
	const send = () => journal.once('key-of-the-form', () => journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	const first = kept(send());
	const after = contentOf(rawDatabase(file));
	expect(kept(send())).toEqual(first);
	expect(contentOf(rawDatabase(file))).toEqual(after);
	expect(journal.alteration(first.id)!.number).toBe(1);
});

test('what was refused is not remembered: sent again when it can be done, it is', () => {
	const { journal, fitting } = begun();
	const seen = kept(journal.addObservation(fitting.id, { what: 'Folds' }));
	const send = (what: string) =>
		journal.once('key-of-the-form', () => journal.reviseObservation(seen.id, seen.revision, { what }));
	expect(refusalOf(send('')).code).toBe('refused');
	expect(kept(send('Drag lines'))).toEqual({ id: seen.id });
	expect(journal.observation(seen.id)!.what).toBe('Drag lines');
	// By now its revision is another; the answer of the first time holds.
	expect(kept(send('Drag lines'))).toEqual({ id: seen.id });
});

test('a form that came to something is remembered together with it, or neither is', () => {
	const { journal, fitting, file } = begun();
	expect(() =>
		journal.once('key-of-the-form', () => {
			kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
			throw new Error('the machine stopped');
		})
	).toThrow('the machine stopped');
	const { alterations, forms_kept: forms } = contentOf(rawDatabase(file));
	expect([alterations, forms]).toEqual([[], []]);
});

test('keys are let go of sixty days later, when another comes', () => {
	const { journal, fitting, file } = begun();
	const at = (day: string, key: string) =>
		journal.asOf(`${day}T10:00:00.000Z`, () =>
			kept(journal.once(key, () => journal.addAlteration(fitting.id, { intent: takenIn(1) })))
		);
	at('2026-02-01', 'first');
	at('2026-04-01', 'second');
	const keys = () => rawDatabase(file).prepare('SELECT once FROM forms_kept ORDER BY at').pluck().all();
	expect(keys()).toEqual(['first', 'second']);
	at('2026-04-03', 'third');
	expect(keys()).toEqual(['second', 'third']);
});

test('a key that no browser made is refused, and what came of a form can be asked for', () => {
	const { journal, fitting } = begun();
	const send = (key: string) => journal.once(key, () => journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	expect(refusalOf(send('k'.repeat(65))).sentences).toEqual(['This form has lost its place. Load the page again.']);
	expect(journal.cameTo('k')).toBeUndefined();
	const { id } = kept(send('k'));
	expect(journal.cameTo('k')).toBe(id);
});
