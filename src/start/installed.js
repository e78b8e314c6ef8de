import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './folders.js';
import { nodeProblem } from './node-version.js';
import { Problem } from './problem.js';

/**
 * @typedef {Record<string, { version?: string, optional?: boolean }>} Packages path of each package to its version,
 * as in the `packages` of package-lock.json; the project itself stands under the empty path
 */

/**
 * The packages that the lock file asks for and that are not there in that version. Optional ones (builds for other
 * systems) may be missing.
 * @param {Packages} wanted
 * @param {Packages} there
 * @returns {string[]} their paths
 */
export function missingPackages(wanted, there) {
	return Object.entries(wanted)
		.filter(([path, item]) => path !== '' && !item.optional && there[path]?.version !== item.version)
		.map(([path]) => path);
}

/** @param {string} file @returns {Packages} */
const packagesIn = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {});

/**
 * Runs npm with its output shown. Under `npm start` it is the npm that started us; otherwise the one on the path.
 * @param {string[]} args
 * @returns {boolean} whether it went well
 */
function npm(args) {
	const own = process.env.npm_execpath;
	const [program, first] = own?.endsWith('.js') ? [process.execPath, [own]] : ['npm', []];
	const { status } = spawnSync(program, [...first, ...args], {
		cwd: projectFolder,
		// JOBS=max: the database is compiled here where no ready-made one can be had, with all cores.
		env: { JOBS: 'max', ...process.env },
		stdio: ['ignore', 'inherit', 'inherit'],
		shell: program === 'npm' && process.platform === 'win32'
	});
	return status === 0;
}

/**
 * Makes node_modules what package-lock.json says, and leaves it alone when it already is.
 * npm notes what it has installed in node_modules/.package-lock.json; we note beside it for which Node.js the
 * compiled packages were made, since another major version cannot load them.
 * Throws a `Problem` when Node.js is too old or npm fails.
 */
export function ensureInstalled() {
	const tooOld = nodeProblem(process.versions.node);
	if (tooOld) throw new Problem(tooOld);

	const modules = join(projectFolder, 'node_modules');
	const madeFor = join(modules, '.pin-to-paper-made-for');
	const now = `node modules ${process.versions.modules} ${process.platform} ${process.arch}\n`;
	const missing = missingPackages(
		packagesIn(join(projectFolder, 'package-lock.json')),
		packagesIn(join(modules, '.package-lock.json'))
	);

	if (missing.length > 0) {
		console.log(`Installing ${missing.length} packages. The first time this takes a few minutes.`);
		if (!npm(['ci', '--no-audit', '--no-fund']))
			throw new Problem(
				'The packages could not be installed: npm says why above. Is this machine online, is there room on the disk, ' +
					'and are python3, make and a C++ compiler there? (SQLite is compiled where no ready-made build can be fetched.) Then run the command again.'
			);
		writeFileSync(madeFor, now);
		return;
	}
	if (existsSync(madeFor) && readFileSync(madeFor, 'utf8') !== now) {
		console.log('Node.js has changed since the packages were installed: compiling the database again.');
		if (!npm(['rebuild', 'better-sqlite3']))
			throw new Problem(
				'The database could not be compiled for this Node.js: npm says why above. Delete node_modules and run the command again.'
			);
	}
	writeFileSync(madeFor, now);
}
