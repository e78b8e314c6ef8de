import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { projectFolder } from './folders.js';

/**
 * Runs Node.js on a script, its output shown as it comes and nothing to read on its input.
 * @param {string[]} args script and its arguments
 * @param {Record<string, string>} [extra] environment variables on top of the ones there are
 * @returns {number} its exit code; 1 if a signal ended it
 */
export function runNode(args, extra = {}) {
	const { status, error } = spawnSync(process.execPath, args, {
		cwd: projectFolder,
		env: { ...process.env, ...extra },
		stdio: ['ignore', 'inherit', 'inherit']
	});
	if (error) throw error;
	return status ?? 1;
}

/**
 * Runs a program that an installed package brings (its `bin`), without a shell, so that it goes the same on every system.
 * @param {string} name the package, e.g. `eslint`
 * @param {string[]} args
 * @param {Record<string, string>} [extra] environment variables
 * @param {string} [program] the program's name where it is not the package's
 * @returns {number} exit code
 */
export function runTool(name, args, extra, program = name) {
	const manifest = join(projectFolder, 'node_modules', name, 'package.json');
	const { bin } = JSON.parse(readFileSync(manifest, 'utf8'));
	const script = typeof bin === 'string' ? bin : bin[program];
	return runNode([join(dirname(manifest), script), ...args], extra);
}
