import { ensureBuilt } from './built.js';
import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';
import { runNode, runTool } from './run.js';

await orSentence(() => {
	ensureInstalled();
	// The pages are looked at in the browser, and what the bench itself is built by is made with them.
	ensureBuilt();
	process.exitCode = runTool('vite', ['build', '--config', 'tests/bench/vite.config.ts']);
	if (process.exitCode === 0)
		process.exitCode = runNode(['node_modules/.cache/bench/bench.js', ...process.argv.slice(2)], {
			NODE_ENV: 'production'
		});
});
