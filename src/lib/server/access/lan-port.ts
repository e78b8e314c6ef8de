/**
 * The port on which the local network is listened to; undefined where only this machine is. `src/start/serve.js` sets the
 * variable, and nothing else does.
 */
export function lanPort(): number | undefined {
	const port = Number(process.env.PIN_TO_PAPER_LAN_PORT);
	return Number.isInteger(port) && port > 0 ? port : undefined;
}
