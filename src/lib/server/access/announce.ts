import { qrForTerminal } from './qr-code.ts';

/** What is printed in the terminal where the journal is opened to the local network. */
export async function announcement(
	port: number,
	addresses: readonly string[],
	passphraseIsSet: boolean
): Promise<string> {
	const own = `http://127.0.0.1:${port}/devices`;
	const lines = ['', 'Open to other devices of this network.', warning];
	if (addresses.length === 0)
		lines.push('This machine has no address on a private network now (192.168…, 10…). Join one and start again.');
	else lines.push('', ...addresses, '', (await qrForTerminal(addresses[0]!)).trimEnd());
	lines.push(
		'',
		passphraseIsSet
			? `Devices give the passphrase. Who is signed in: ${own}`
			: `No passphrase is set yet, and until then every other device is turned away. Set one on this machine: ${own}`
	);
	return lines.join('\n');
}

/** Said wherever the journal is opened to other devices. */
export const warning =
	'Only on a network of your own: what goes over it is not encrypted (plain http), and others on it could read along.';
