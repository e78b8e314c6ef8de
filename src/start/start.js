import { ensureBuilt } from './built.js';
import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';
import { askedOf, askedPort, serve, stopOnSignals } from './serve.js';
import { journalFolder } from './folders.js';

await orSentence(async () => {
	const { lan } = askedOf(process.argv.slice(2));
	const asked = askedPort(process.env.PORT);
	ensureInstalled();
	ensureBuilt();
	const served = await serve({ asked, lan });
	stopOnSignals(served);
	console.log(`\nPin to Paper is open at ${served.address}`);
	console.log(`The journal lies in ${journalFolder()}`);
	console.log('Stop with Ctrl+C.\n');
});
