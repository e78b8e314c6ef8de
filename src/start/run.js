import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { projectFolder } from './folders.js';

/**
 * Runs Node.js on a script, its output shown as it comes and nothing to read on its input.
 * @param {string[]} args script and its arguments
 * @param {Record<string, string>} [extra] environment variables on top of the ones there are
 * @param {'inherit' | 'ignore'} [shown] whether what it says is shown; its errors always are
 * @returns {number} its exit code; 1 if a signal ended it
 */
export function runNode(args, extra = {}, shown = 'inherit') {
	const { status, error } = spawnSync(process.execPath, args, {
		cwd: projectFolder,
		env: { ...process.env, ...extra },
		stdio: ['ignore', shown, 'inherit']
	});
	if (error) throw error;
	return status ?? 1;
}

/**
 * Runs a program that an installed package brings (its `bin`), without a shell, so that it goes the same on every system.
 * @param {string} name the package, e.g. `eslint`
 * @param {string[]} args
 * @param {{ env?: Record<string, string>, program?: string, shown?: 'inherit' | 'ignore' }} [options] environment
 * variables on top, the program's name where it is not the package's, whether what it says is shown
 * @returns {number} exit code
 */
export function runTool(name, args, { env, program = name, shown } = {}) {
	const manifest = join(projectFolder, 'node_modules', name, 'package.json');
	const { bin } = JSON.parse(readFileSync(manifest, 'utf8'));
	const script = typeof bin === 'string' ? bin : bin[program];
	return runNode([join(dirname(manifest), script), ...args], env, shown);
}
