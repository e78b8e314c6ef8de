import { BlockList, isIP } from 'node:net';

/**
 * Whether a request's Host names this machine in a way that no stranger's page can borrow. A page from elsewhere can
 * have its own name point at this machine and so read the journal through the browser ("DNS rebinding"); it cannot do
 * that with an address, with `localhost` or with the name that this machine calls itself.
 * @param {string | undefined} host the Host header, with or without a port
 * @param {string} machine the machine's own name, as `os.hostname()` gives it
 * @returns {boolean}
 */
export function isOwnHost(host, machine) {
	const match = /^(?:\[([^\]]*)\]|([^:]*))(?::\d{1,5})?$/.exec(host ?? '');
	if (!match) return false;
	if (match[1] !== undefined) return isIP(match[1]) === 6;
	const name = match[2].toLowerCase();
	const own = machine.toLowerCase();
	return isIP(name) === 4 || name === 'localhost' || (own !== '' && (name === own || name === `${own}.local`));
}

const nearby = new BlockList();
nearby.addSubnet('127.0.0.0', 8, 'ipv4');
nearby.addAddress('::1', 'ipv6');
// Private networks (RFC 1918, RFC 4193) and link-local addresses (RFC 3927, RFC 4291).
nearby.addSubnet('10.0.0.0', 8, 'ipv4');
nearby.addSubnet('172.16.0.0', 12, 'ipv4');
nearby.addSubnet('192.168.0.0', 16, 'ipv4');
nearby.addSubnet('169.254.0.0', 16, 'ipv4');
nearby.addSubnet('fc00::', 7, 'ipv6');
nearby.addSubnet('fe80::', 10, 'ipv6');

/**
 * Whether an address is this machine's own or one of a local network, as opposed to one that is reached from everywhere: a
 * machine that has a public address besides must not open the journal to it.
 * @param {string} address of the other end of a connection
 * @returns {boolean}
 */
export function isNearby(address) {
	const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '');
	const family = isIP(plain);
	return family !== 0 && nearby.check(plain, family === 6 ? 'ipv6' : 'ipv4');
}
