import { expect, test } from 'vitest';
import { addressesOf } from '../../../src/lib/server/access/addresses.ts';
import { announcement } from '../../../src/lib/server/access/announce.ts';
import { deviceWords } from '../../../src/lib/server/access/device-words.ts';
import { qrSquares } from '../../../src/lib/server/access/qr-code.ts';

const ipv4 = (address: string, internal = false) =>
	({ address, family: 'IPv4', internal, netmask: '255.255.255.0', mac: '', cidr: null }) as const;

test('addresses are those of local networks: home ones first, none of this machine alone, of containers, or of the world', () => {
	const found = addressesOf(
		{
			lo: [ipv4('127.0.0.1', true)],
			docker0: [ipv4('172.17.0.1')],
			'br-0a1b': [ipv4('172.18.0.1')],
			eth0: [ipv4('203.0.113.7'), ipv4('10.1.2.3'), ipv4('172.32.0.1')],
			wlan0: [{ ...ipv4('x'), address: 'fe80::1', family: 'IPv6', scopeid: 2, cidr: null }, ipv4('192.168.1.20')],
			eth1: [ipv4('172.20.0.4'), ipv4('169.254.7.7')],
			gone: undefined
		},
		1898
	);
	expect(found).toEqual([
		'http://192.168.1.20:1898',
		'http://10.1.2.3:1898',
		'http://172.20.0.4:1898',
		'http://169.254.7.7:1898'
	]);
});

test('the terminal says the addresses, that it is not encrypted, and what is still to be done', async () => {
	const none = await announcement(1898, ['http://192.168.1.20:1898'], false);
	expect(none).toContain('\nhttp://192.168.1.20:1898\n');
	expect(none).toMatch(/[█▀▄]{10}/);
	expect(none).toContain('Only on a network of your own');
	expect(none).toContain('No passphrase is set yet, and until then every other device is turned away');
	expect(none).toContain('http://127.0.0.1:1898/devices');
	expect(await announcement(1898, ['http://10.0.0.2:1898'], true)).not.toContain('No passphrase');
	expect(await announcement(1898, [], true)).toContain('no address on a private network');
});

test('a QR code has its three corner marks (ISO/IEC 18004, 6.3.3) inside a light border of four squares', () => {
	const { size, path } = qrSquares('http://192.168.1.20:1898');
	const dark = new Set([...path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x} ${y}`));
	const side = size - 8;
	expect((side - 17) % 4).toBe(0);
	for (let n = 0; n < size; n++)
		for (const border of [0, 3, size - 4, size - 1]) expect(dark.has(`${n} ${border}`)).toBe(false);
	for (const [left, top] of [
		[4, 4],
		[4 + side - 7, 4],
		[4, 4 + side - 7]
	] as const)
		for (let x = 0; x < 7; x++)
			for (let y = 0; y < 7; y++) {
				const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
				expect(dark.has(`${left + x} ${top + y}`), `${x} ${y}`).toBe(ring !== 2);
			}
});

test.each([
	['Mozilla/5.0 (Android 15; Mobile; rv:133.0) Gecko/133.0 Firefox/133.0', 'a phone (Android), Firefox'],
	[
		'Mozilla/5.0 (iPhone; CPU iPhone OS 18_1 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.1 Mobile/15E148 Safari/604.1',
		'a phone (iPhone), Safari'
	],
	[
		'Mozilla/5.0 (Linux; Android 14; SM-X210) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/130.0.0.0 Safari/537.36',
		'a tablet (Android), Chrome'
	],
	[
		'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 Chrome/130.0.0.0 Safari/537.36 Edg/130.0.0.0',
		'a computer (Windows), Edge'
	],
	['curl/8.5.0', 'a device'],
	[null, 'a device']
])('%s is “%s”', (agent, words) => {
	expect(deviceWords(agent)).toBe(words);
});
