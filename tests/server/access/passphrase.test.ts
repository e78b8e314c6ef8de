import { scryptSync } from 'node:crypto';
import { expect, test } from 'vitest';
import { keepGivenPassphrase } from '../../../src/lib/server/access/given-passphrase.ts';
import { hashPassphrase, isPassphrase, passphraseProblem } from '../../../src/lib/server/access/passphrase.ts';
import { slowDown } from '../../../src/lib/server/access/slow-down.ts';
import { tryPassphrase } from '../../../src/lib/server/access/try-passphrase.ts';
import { JournalRefused } from '../../../src/lib/server/open-journal.ts';
import { ownJournal } from '../support/journal.ts';

const words = 'seven pins in a pumpkin';

test('what is kept is scrypt with N = 2^15, r = 8, p = 1 over a salt of 16 bytes', async () => {
	const kept = await hashPassphrase(words);
	const salt = Buffer.from(kept.salt, 'base64');
	expect([salt.length, kept.cost]).toEqual([16, 32768]);
	const expected = scryptSync(words, salt, 32, { N: 32768, r: 8, p: 1, maxmem: 64 * 1024 * 1024 });
	expect(kept.hash).toBe(expected.toString('base64'));
	expect((await hashPassphrase(words)).salt).not.toBe(kept.salt);
});

test('the same words are the passphrase however a phone wrote them; others are not', async () => {
	const kept = await hashPassphrase('Sieben Nadeln für den Kürbis');
	for (const same of [
		'Sieben Nadeln für den Kürbis',
		'  Sieben  Nadeln für\u00a0den Kürbis ',
		'Sieben Nadeln fu\u0308r den Ku\u0308rbis'
	])
		expect(await isPassphrase(same, kept), same).toBe(true);
	for (const other of ['', 'sieben Nadeln für den Kürbis', 'Sieben Nadeln für den Kürbi', 'x'.repeat(100_000)])
		expect(await isPassphrase(other, kept), other.slice(0, 40)).toBe(false);
});

test.each([
	['', false],
	['pins', false],
	['            ', false],
	['elf  letters', false],
	['twelve letter', true],
	['🧵🪡🧵🪡🧵🪡🧵🪡🧵🪡🧵🪡', true],
	['a'.repeat(401), false]
])('“%s” as a passphrase', (text, good) => {
	expect(passphraseProblem(text) === undefined).toBe(good);
});

/** A journal with the passphrase, and a clock for the waiting. */
async function guarded() {
	const { journal } = ownJournal();
	const clock = { now: 0 };
	const slow = slowDown(() => clock.now);
	journal.access.setPassphrase(await hashPassphrase(words));
	const tries = (given: string, address = '192.168.1.30') =>
		tryPassphrase(journal.access, slow, given, { address, device: 'a phone' });
	return { journal, clock, tries };
}

test('the right passphrase signs in, a wrong one does not, and none is asked for in a sentence', async () => {
	const { journal, tries } = await guarded();
	expect(await tries('seven pins in a pumpkin pie')).toMatchObject({
		status: 403,
		sentence: expect.stringContaining('not the passphrase')
	});
	expect(await tries(' ')).toMatchObject({ status: 400 });
	expect(journal.access.signIns()).toEqual([]);
	const signedIn = await tries(words);
	expect(signedIn).toMatchObject({ signIn: { device: 'a phone', address: '192.168.1.30' } });
	expect(journal.access.signIns()).toHaveLength(1);
});

test('after three wrong ones the address waits, and the right one does not get through meanwhile', async () => {
	const { clock, tries } = await guarded();
	for (let n = 0; n < 3; n++) expect(await tries('wrong words here')).toMatchObject({ status: 403 });
	expect(await tries(words)).toEqual({
		status: 429,
		sentence: 'Too many tries. Wait 2 seconds, then try again.',
		wait: 2
	});
	expect(await tries(words, '192.168.1.31')).toHaveProperty('token');
	clock.now += 2_000;
	expect(await tries(words)).toHaveProperty('token');
});

test('while none is set nobody comes in, whatever they give', async () => {
	const { journal } = ownJournal();
	for (const given of ['', words])
		expect(
			await tryPassphrase(
				journal.access,
				slowDown(() => 0),
				given,
				{ address: '192.168.1.30', device: 'a phone' }
			)
		).toMatchObject({ status: 403, sentence: expect.stringContaining('No passphrase has been set yet') });
});

test('the passphrase of the environment is kept; given again it signs nobody out, and a short one stops the start', async () => {
	const {
		journal: { access }
	} = ownJournal();
	await keepGivenPassphrase(access, undefined);
	await keepGivenPassphrase(access, '');
	expect(access.passphrase()).toBeUndefined();
	await keepGivenPassphrase(access, words);
	expect(await isPassphrase(words, access.passphrase()!)).toBe(true);
	const { token } = access.signIn('a phone', '192.168.1.30');
	await keepGivenPassphrase(access, words);
	expect(access.signedIn(token, '192.168.1.30')).toMatchObject({ device: 'a phone' });
	await expect(keepGivenPassphrase(access, 'pins')).rejects.toThrow(JournalRefused);
	expect(await isPassphrase(words, access.passphrase()!)).toBe(true);
});
