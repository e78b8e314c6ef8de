import { expect, test } from 'vitest';
import { missingPackages } from '../../src/start/installed.js';
import { nodeProblem } from '../../src/start/node-version.js';
import { readProjectFile } from '../support/project-files.ts';

const wanted = {
	'': { version: '0.1.0' },
	'node_modules/zod': { version: '4.6.7' },
	'node_modules/svgpath': { version: '2.6.0' },
	'node_modules/for-another-system': { version: '1.0.0', optional: true }
};

test('what the lock file asks for and is there in that version is not installed again', () => {
	expect(
		missingPackages(wanted, { 'node_modules/zod': { version: '4.6.7' }, 'node_modules/svgpath': { version: '2.6.0' } })
	).toEqual([]);
});

test('a package that is absent or of another version is missing', () => {
	expect(missingPackages(wanted, { 'node_modules/zod': { version: '4.0.0' } })).toEqual([
		'node_modules/zod',
		'node_modules/svgpath'
	]);
	expect(missingPackages(wanted, {})).toHaveLength(2);
});

test('the oldest Node.js that is let through is the one that package.json names', () => {
	const { engines } = JSON.parse(readProjectFile('package.json')) as { engines: { node: string } };
	const oldest = engines.node.replace('>=', '');
	expect(nodeProblem(`${oldest}.0`)).toBeUndefined();
	expect(nodeProblem('22.1.0')).toBeUndefined();
	expect(nodeProblem('20.18.9')).toContain(oldest);
	expect(nodeProblem('18.20.4')).toContain('18.20.4');
});
