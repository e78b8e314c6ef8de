import type { NetworkInterfaceInfo } from 'node:os';

/** Networks inside this machine: containers and virtual machines. */
const inside = /^(docker|br-|veth|virbr|vmnet|vboxnet|lxc|podman|cni)/i;

/** Home networks first, larger ones after. */
const order = [/^192\.168\./, /^10\./, /^172\./, /^169\.254\./];

/**
 * The addresses under which other devices of the local network find this machine: IPv4, of private networks (RFC 1918) or
 * link-local ones (RFC 3927). `interfaces` as `os.networkInterfaces()` gives them.
 */
export function addressesOf(
	interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
	port: number
): readonly string[] {
	return Object.entries(interfaces)
		.filter(([name]) => !inside.test(name))
		.flatMap(([, list]) => list ?? [])
		.filter(({ family, internal }) => family === 'IPv4' && !internal)
		.map(({ address }) => ({ address, rank: order.findIndex((pattern) => pattern.test(address)) }))
		.filter(({ address, rank }) => rank >= 0 && (rank !== 2 || /^172\.(1[6-9]|2\d|3[01])\./.test(address)))
		.sort((a, b) => a.rank - b.rank)
		.map(({ address }) => `http://${address}:${port}`);
}
