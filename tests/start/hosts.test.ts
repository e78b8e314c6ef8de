import { expect, test } from 'vitest';
import { isOwnHost } from '../../src/start/hosts.js';

test.each([
	'127.0.0.1',
	'127.0.0.1:1898',
	'localhost:1898',
	'LOCALHOST',
	'[::1]:1898',
	'192.168.1.20:1898',
	'sewing-room',
	'Sewing-Room.local:1898'
])('%s names this machine', (host) => {
	expect(isOwnHost(host, 'sewing-room')).toBe(true);
});

test.each([
	undefined,
	'',
	'example.org',
	'localhost.example.org',
	'127.0.0.1.example.org',
	'sewing-room.example.org',
	'localhost:1898@example.org',
	'localhost:x',
	'[localhost]',
	'[::1',
	'1898'
])('%s could be a stranger', (host) => {
	expect(isOwnHost(host, 'sewing-room')).toBe(false);
});

test('a machine without a name gives nobody its name', () => {
	expect(isOwnHost('', '')).toBe(false);
	expect(isOwnHost('.local', '')).toBe(false);
});
