import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openJournal } from '../../src/lib/server/open-journal.ts';
import { shortId } from '../../src/lib/server/short-id.ts';
import { contentOf, ownFolder, rawDatabase } from './support/journal.ts';

const hours = 3_600_000;

/** A journal whose clock is set by hand. */
function atHand() {
	let instant = Date.parse('2026-03-10T08:00:00.000Z');
	const file = `${ownFolder()}/journal.sqlite`;
	const journal = openJournal({ file, now: () => new Date(instant), newId: shortId });
	return { journal, access: journal.access, file, later: (ms: number) => void (instant += ms) };
}

test('a signed-in device is known by what it holds, and by nothing else', () => {
	const { access } = atHand();
	const { token, signIn } = access.signIn('a phone (Android), Firefox', '192.168.1.30');
	expect(access.signedIn(token, '192.168.1.30')).toEqual(signIn);
	for (const other of ['', 'x', token.slice(1), `${token}A`, token.toLowerCase(), signIn.id])
		expect(access.signedIn(other, '192.168.1.30'), other).toBeUndefined();
});

test('what a device holds is 32 random bytes, and only its SHA-256 is in the files', () => {
	const { access, file } = atHand();
	const tokens = Array.from({ length: 50 }, () => access.signIn('a phone', '192.168.1.30').token);
	expect(new Set(tokens).size).toBe(50);
	for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(32);
	const bytes = [file, `${file}-wal`].map((path) => readFileSync(path));
	expect(bytes.some((one) => one.includes(tokens[0]!))).toBe(false);
	expect(bytes.some((one) => one.includes(createHash('sha256').update(tokens[0]!).digest('hex')))).toBe(true);
});

test('it ends after twelve hours without use, counted from the last', () => {
	const { access, later } = atHand();
	const { token, signIn } = access.signIn('a phone', '192.168.1.30');
	later(12 * hours);
	expect(access.signedIn(token, '192.168.1.30')).toMatchObject({ id: signIn.id });
	later(12 * hours);
	expect(access.signedIn(token, '192.168.1.31')).toMatchObject({ address: '192.168.1.31' });
	later(12 * hours + 1);
	expect(access.signedIn(token, '192.168.1.31')).toBeUndefined();
	expect(access.signIns()).toEqual([]);
});

test('a page that asks by itself is no use of the device: it is signed out under it', () => {
	const { access, later } = atHand();
	const { token, signIn } = access.signIn('a tablet', '192.168.1.30');
	for (let hour = 1; hour <= 12; hour++) {
		later(hours);
		expect(access.signedIn(token, '192.168.1.30', true)).toEqual(signIn);
	}
	later(1);
	expect(access.signedIn(token, '192.168.1.30', true)).toBeUndefined();
});

test('one is signed out and the others stay; all are signed out together', () => {
	const { access } = atHand();
	const [one, two] = [access.signIn('a phone', '192.168.1.30'), access.signIn('a tablet', '192.168.1.31')];
	access.signOut(one.signIn.id);
	expect(access.signedIn(one.token, '192.168.1.30')).toBe('signed-out');
	expect(access.signIns().map(({ device }) => device)).toEqual(['a tablet']);
	access.signOutAll();
	expect(access.signedIn(two.token, '192.168.1.31')).toBe('signed-out');
	expect(access.signIns()).toEqual([]);
});

test('that it was signed out is remembered for a month, so that the device wipes itself, and then forgotten', () => {
	const { access, file, later } = atHand();
	const { token, signIn } = access.signIn('a phone', '192.168.1.30');
	access.signOut(signIn.id);
	later(29 * 24 * hours);
	access.signIns();
	expect(access.signedIn(token, '192.168.1.30')).toBe('signed-out');
	later(2 * 24 * hours);
	access.signIns();
	expect(contentOf(rawDatabase(file)).sign_ins).toEqual([]);
});

test('another passphrase signs everybody out', () => {
	const { access } = atHand();
	expect(access.passphrase()).toBeUndefined();
	access.setPassphrase({ salt: 'a', hash: 'b', cost: 2 });
	const { token } = access.signIn('a phone', '192.168.1.30');
	access.setPassphrase({ salt: 'c', hash: 'd', cost: 4 });
	expect(access.passphrase()).toEqual({ salt: 'c', hash: 'd', cost: 4 });
	expect(access.signedIn(token, '192.168.1.30')).toBe('signed-out');
});

test('devices stay signed in when the server is started again, and being seen is not written at every look', () => {
	const { journal, access, file, later } = atHand();
	const { token } = access.signIn('a phone', '192.168.1.30');
	const changes = () => journal.access.signIns()[0]!.seenAt;
	const before = changes();
	later(30_000);
	access.signedIn(token, '192.168.1.30');
	expect(changes()).toBe(before);
	later(31_000);
	access.signedIn(token, '192.168.1.30');
	expect(changes()).not.toBe(before);
	journal.close();
	const again = openJournal({ file, now: () => new Date('2026-03-10T09:00:00.000Z'), newId: shortId });
	expect(again.access.signedIn(token, '192.168.1.30')).toMatchObject({ device: 'a phone' });
	again.close();
});
