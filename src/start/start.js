import { ensureBuilt } from './built.js';
import { ensureInstalled } from './installed.js';
import { Problem, orSentence } from './problem.js';
import { askedPort, serve, stopOnSignals } from './serve.js';
import { journalFolder } from './folders.js';

await orSentence(async () => {
	const [unknown] = process.argv.slice(2);
	if (unknown) throw new Problem(`npm start takes no "${unknown}". To choose a port: PORT=8080 npm start.`);
	const asked = askedPort(process.env.PORT);
	ensureInstalled();
	ensureBuilt();
	const served = await serve({ asked });
	stopOnSignals(served);
	console.log(`\nPin to Paper is open at ${served.address}`);
	console.log(`The journal lies in ${journalFolder()}`);
	console.log('Stop with Ctrl+C.\n');
});
