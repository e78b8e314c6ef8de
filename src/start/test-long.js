import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';
import { runTool } from './run.js';

await orSentence(() => {
	ensureInstalled();
	process.exitCode = runTool('vitest', ['run', '--mode', 'long', ...process.argv.slice(2)]);
});
