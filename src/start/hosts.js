import { isIP } from 'node:net';

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
