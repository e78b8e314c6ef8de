import { describe, expect, test } from 'vitest';
import { commandsIn, pathsIn, rulesIn, unsayableIn } from './support/house.ts';
import { projectFiles, projectSources, readProjectFile } from './support/project-files.ts';

const written = projectSources(
	/(^|\/)(?!package-lock)[^/]*\.(ts|js|svelte|css|html|md|json|sql)$|^\.ci\/run$|^\.[\w.-]+$/
);
const papers = written.filter(({ path }) => path.endsWith('.md'));

/** The longest a file may be, in lines. A test is a list of cases and a stylesheet one of rules: they may be longer. */
const longest = (path: string): number => (path.startsWith('tests/') ? 500 : path.endsWith('.css') ? 400 : 300);

/** The files that may be longer still, each with its reason. */
const longerFor: Record<string, string> = {
	'tests/engine/draft/file/parse.test.ts': 'a case for each way in which a draft file can be wrong',
	'tests/engine/alteration/kinds/true-seam.test.ts': 'each end, side and neighbour that a walked seam can have'
};

test('no file names a path of the machine it was written on, where packages came from, or who typed it', () => {
	expect(written.flatMap(unsayableIn)).toEqual([]);
});

test('a file that would is found out', () => {
	const bad = [
		'/wo' + 'rk/main/x',
		"'/ro" + "ot/y'",
		'trans' + 'cript',
		'by an A' + 'I',
		'see eng' + 'ine.md',
		'iss' + 'ue 12',
		'https://reg' + 'istry.np' + 'mjs.example'
	];
	for (const text of bad) expect(unsayableIn({ path: 'x.ts', text }), text).toHaveLength(1);
	const good = [
		'network/main',
		'its root / width',
		'AID',
		'src/routes/home/+page.svelte',
		'an issue of cloth',
		'the registry.',
		'engine/md'
	];
	for (const text of good) expect(unsayableIn({ path: 'x.ts', text }), text).toEqual([]);
});

test('nothing is longer than it may be without a reason, and nothing has a reason that needs none', () => {
	const long = written
		.filter(({ path }) => /^(src|tests)\/.*\.(ts|js|svelte|css)$/.test(path))
		.filter(({ path, text }) => text.split('\n').length - 1 > longest(path))
		.map(({ path }) => path);
	expect(long).toEqual(Object.keys(longerFor).sort());
});

describe.each(papers)('$path', ({ text }) => {
	test('every command that it names exists', () => {
		const { scripts } = JSON.parse(readProjectFile('package.json')) as { scripts: Record<string, string> };
		expect(commandsIn(text).filter((name) => !(name in scripts))).toEqual([]);
	});

	test('every file and folder that it names is there', () => {
		const files = projectFiles();
		const isThere = (path: string): boolean =>
			files.some((file) => file === path || file.startsWith(path.replace(/\/?$/, '/')));
		expect(pathsIn(text).filter((path) => !isThere(path))).toEqual([]);
	});
});

test('the named rules that DEVELOPERS.md lists are those that tests hold', () => {
	const tests = written.filter(({ path }) => /^tests\/(?!(support\/)?house\b).*\.ts$/.test(path));
	expect(rulesIn(tests.map(({ text }) => text).join('\n'))).toEqual(rulesIn(readProjectFile('DEVELOPERS.md')));
});

test('every row of the tables in DEVELOPERS.md names a file', () => {
	const isRule = (line: string | undefined): boolean => /^\|[\s|-]+$/.test(line ?? '');
	const rows = readProjectFile('DEVELOPERS.md')
		.split('\n')
		.filter((line, index, lines) => line.startsWith('|') && !isRule(line) && !isRule(lines[index + 1]));
	expect(rows.length).toBeGreaterThan(10);
	for (const row of rows) expect(pathsIn(row), row).not.toEqual([]);
});

test('commands, paths and rules are found in a text', () => {
	expect(commandsIn('`npm start`, then npm run test:long; npm ci')).toEqual(['start', 'test:long']);
	expect(pathsIn('`src/start/serve.js`, `package.json` and `journal/`')).toEqual([
		'src/start/serve.js',
		'package.json'
	]);
	expect(rulesIn('[CLOSED] and [x] [MIRROR] [CLOSED]')).toEqual(['CLOSED', 'MIRROR']);
});
