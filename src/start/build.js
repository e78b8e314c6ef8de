import { ensureBuilt } from './built.js';
import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';

await orSentence(() => {
	ensureInstalled();
	ensureBuilt({ always: true });
});
