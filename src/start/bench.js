import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';
import { runTool } from './run.js';

await orSentence(() => {
	ensureInstalled();
	process.exitCode = runTool('tsx', ['tests/bench/bench.ts', ...process.argv.slice(2)], {
		env: { NODE_ENV: 'production' }
	});
});
