import { expect, test } from 'vitest';
import { begun, kept, refusalOf, takenIn } from './support/journal.ts';

const typed = { act: 'took-in', seam: 'side', 'amount.level:waist': '1/' };

test('what is typed is kept word for word, one hand for each device, and says which alteration it will be', () => {
	const { journal, fitting } = begun();
	const one = kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	kept(journal.holdHand(fitting.id, 'tablet', { ...typed, act: 'let-out' }));
	kept(journal.holdHand(fitting.id, 'tablet', typed));
	kept(journal.holdHand(fitting.id, 'phone', { ...typed, alteration: one.id }));
	expect(journal.hands(fitting.id)).toMatchObject([
		{ device: 'phone', number: 1 },
		{ device: 'tablet', typed, number: 2 }
	]);
	expect(journal.workroom().waiting[0]).toMatchObject({ what: 'fitting-open', inHand: [1, 2] });
	kept(journal.letGoOfHand(fitting.id, 'phone'));
	expect(journal.hands(fitting.id).map(({ device }) => device)).toEqual(['tablet']);
});

test('a hand makes nobody’s preview old, and is when the fitting was last kept', () => {
	const { journal, fitting } = begun();
	expect(journal.lastKept(fitting.id)).toBeNull();
	kept(journal.addAlteration(fitting.id, { intent: takenIn(1) }));
	const kept1 = journal.lastKept(fitting.id)!;
	const drawn = journal.fitting(fitting.id)!.wholeRevision;
	const { savedAt } = kept(journal.holdHand(fitting.id, 'tablet', typed));
	expect(savedAt > kept1).toBe(true);
	expect(journal.lastKept(fitting.id)).toBe(savedAt);
	expect(journal.fitting(fitting.id)!.wholeRevision).toBe(drawn);
});

test('the ninth device’s hand takes the place of the one not heard of longest', () => {
	const { journal, fitting } = begun();
	for (let n = 1; n <= 9; n++) kept(journal.holdHand(fitting.id, `device ${n}`, typed));
	expect(journal.hands(fitting.id).map(({ device }) => device)).toEqual(
		[9, 8, 7, 6, 5, 4, 3, 2].map((n) => `device ${n}`)
	);
});

test('there is nothing to hold at a fitting that is none', () => {
	const { journal } = begun();
	expect(refusalOf(journal.holdHand('none', 'tablet', typed)).code).toBe('unknown');
	expect(refusalOf(journal.letGoOfHand('none', 'tablet')).code).toBe('unknown');
});
