import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { buildFolder, projectFolder } from './folders.js';
import { Problem } from './problem.js';
import { runTool } from './run.js';

const sources = ['src', 'static', 'package-lock.json', 'svelte.config.js', 'tsconfig.json', 'vite.config.ts'];
const notBuilt = join('src', 'start');

/**
 * A fingerprint of the sources that go into the build: their paths and their bytes. Dates are not asked, since
 * unpacking and checking out change them.
 * @returns {string}
 */
export function sourcesFingerprint() {
	const hash = createHash('sha256');
	for (const source of sources)
		for (const file of filesUnder(join(projectFolder, source))) {
			const name = relative(projectFolder, file);
			if (name.startsWith(notBuilt)) continue;
			hash.update(name).update('\0').update(readFileSync(file)).update('\0');
		}
	return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]} the file itself, or every file under the folder, in an order that is always the same
 */
function filesUnder(path) {
	if (!existsSync(path)) return [];
	if (statSync(path).isFile()) return [path];
	return readdirSync(path, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name))
		.sort();
}

/**
 * Builds the server if the sources have changed since it was last built, saying no more than what goes wrong; `always`
 * builds in any case and tells everything. Throws a `Problem` when the build fails.
 * @param {{ always?: boolean }} [options]
 */
export function ensureBuilt({ always = false } = {}) {
	const stamp = join(buildFolder, 'sources.sha256');
	const now = sourcesFingerprint();
	if (!always && existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return;
	console.log('Building the pages.');
	rmSync(stamp, { force: true });
	const quiet = always ? {} : /** @type {const} */ ({ shown: 'ignore' });
	if (runTool('vite', ['build', '--logLevel', always ? 'info' : 'error'], quiet) !== 0)
		throw new Problem(
			'The pages could not be built: the reason is above. A changed source file is the likeliest cause.'
		);
	writeFileSync(stamp, now);
}
