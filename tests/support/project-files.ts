import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Source } from './layers.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));

/** What is made or downloaded beside package.json rather than written: never read by the checks. */
const notOurs = new Set([
	'node_modules',
	'.git',
	'.svelte-kit',
	'build',
	'journal',
	'test-results',
	'playwright-report'
]);

/** Paths of the project's own files, from its folder, with `/`. */
export function projectFiles(folder = ''): string[] {
	return readdirSync(join(project, folder), { withFileTypes: true })
		.filter((entry) => folder !== '' || !notOurs.has(entry.name))
		.flatMap((entry) => {
			const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
			if (entry.isDirectory()) return projectFiles(path);
			return entry.isFile() ? [path] : [];
		})
		.sort();
}

export const readProjectFile = (path: string): string => readFileSync(join(project, path), 'utf8');

/** The files under src, tests and beside package.json whose path fits, with their text. */
export function projectSources(fits: RegExp): Source[] {
	return projectFiles()
		.filter((path) => fits.test(path))
		.map((path) => ({ path, text: readProjectFile(path) }));
}
