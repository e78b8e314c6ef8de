import { mkdtempSync, readFileSync, rmSync, existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt } from './built.js';
import { ensureInstalled } from './installed.js';
import { Problem, orSentence } from './problem.js';
import { runTool } from './run.js';
import { closingLine, playwrightCounts, stepCounts, vitestCounts } from './test-counts.js';

/** @typedef {import('./test-counts.js').Counts} Counts */

await orSentence(() => {
	heading('Packages');
	ensureInstalled();
	console.log('Installed as package-lock.json says.');

	const reports = mkdtempSync(join(tmpdir(), 'pin-to-paper-tests-'));
	process.once('exit', () => rmSync(reports, { recursive: true, force: true }));

	/** @type {Array<{ title: string, counts: Counts }>} */
	const steps = [];
	/** @param {string} title @param {() => Counts} run */
	const step = (title, run) => {
		heading(title);
		const counts = run();
		steps.push({ title, counts });
	};

	step('Types', () =>
		stepCounts(
			runTool('@sveltejs/kit', ['sync'], { program: 'svelte-kit' }) ||
				runTool('svelte-check', ['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human'])
		)
	);
	step('Lint', () => stepCounts(runTool('eslint', ['.', '--max-warnings', '0'])));
	step('Format', () => stepCounts(runTool('prettier', ['--check', '--log-level', 'warn', '.'])));
	step('Unused', () => stepCounts(runTool('knip', ['--no-progress'])));
	step('Layers, units, properties', () => {
		const report = join(reports, 'vitest.json');
		const code = runTool('vitest', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`]);
		return vitestCounts(reportIn(report), code);
	});
	step('Build', () => stepCounts(built() ? 0 : 1));
	step('Journeys in the browser', () => {
		const report = join(reports, 'playwright.json');
		const code = runTool('@playwright/test', ['test', '--reporter=list,json'], {
			program: 'playwright',
			env: { PLAYWRIGHT_JSON_OUTPUT_FILE: report }
		});
		return playwrightCounts(reportIn(report), code);
	});

	heading('Result');
	const failed = steps.filter(({ counts }) => counts.failed > 0);
	for (const { title, counts } of failed) console.log(`${title}: ${counts.failed} failed`);
	console.log(closingLine(steps.map(({ counts }) => counts)));
	process.exitCode = failed.length > 0 ? 1 : 0;
});

/** @param {string} title */
function heading(title) {
	console.log(`\n== ${title} ==\n`);
}

/** @param {string} file */
function reportIn(file) {
	return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}

/** Whether the build went well; why not is printed, and the steps after it still run. */
function built() {
	try {
		ensureBuilt();
		console.log('Built.');
		return true;
	} catch (error) {
		if (!(error instanceof Problem)) throw error;
		console.error(error.message);
		return false;
	}
}
