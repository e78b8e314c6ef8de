import { journalFolder } from './folders.js';
import { ensureInstalled } from './installed.js';
import { orSentence } from './problem.js';
import { runTool } from './run.js';

await orSentence(() => {
	ensureInstalled();
	process.exitCode = runTool('tsx', ['src/lib/server/verify.ts', ...process.argv.slice(2)], {
		env: { PIN_TO_PAPER_JOURNAL: journalFolder() }
	});
});
