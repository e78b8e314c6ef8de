import { describe, expect, test } from 'vitest';
import { importsOf } from './support/imports-of.ts';
import { layerProblems } from './support/layers.ts';
import { projectSources } from './support/project-files.ts';
import { purityProblems } from './support/purity.ts';

const sources = projectSources(/^src\/.*\.(ts|js|svelte)$/);

test('there are sources in every room that the first release has', () => {
	for (const room of [
		'engine/geometry',
		'engine/draft',
		'engine/alteration',
		'engine/review',
		'measure',
		'output',
		'server'
	])
		expect(
			sources.some(({ path }) => path.startsWith(`src/lib/${room}/`)),
			room
		).toBe(true);
});

test('every import of every source keeps to who may know whom', () => {
	expect(layerProblems(sources)).toEqual([]);
});

test('the pure rooms know no clock, no chance, no disk and no page; the server is handed its clock', () => {
	expect(purityProblems(sources)).toEqual([]);
});

describe('a made-up source that crosses a line is found out', () => {
	test.each([
		['src/lib/engine/geometry/a.ts', `import type { Draft } from '../draft/types.ts';`, 'geometry may not know draft'],
		['src/lib/engine/draft/a.ts', `export { carry } from '../alteration/carry.ts';`, 'draft may not know alteration'],
		['src/lib/engine/cutting/a.ts', `import '../review/walk.ts';`, 'cutting may not know review'],
		['src/lib/engine/review/a.ts', `import { carry } from '../index.ts';`, 'review may not know door'],
		['src/lib/output/a.ts', `import type { Draft } from '../engine/draft/types.ts';`, 'output may not know draft'],
		['src/lib/server/a.ts', `type D = import('../engine/draft/types.ts').Draft;`, 'server may not know draft'],
		['src/lib/server/a.ts', `const e = await import('$lib/engine/review/walk.ts');`, 'server may not know review'],
		['src/lib/server/a.ts', `import { x } from '../engine/other.ts';`, 'past the engine'],
		[
			'src/lib/ui/a.svelte',
			`<script lang="ts">import { j } from '../server/open-journal.ts';</script>`,
			'ui may not know server'
		],
		['src/lib/ui/a.svelte', `{#await import('$lib/output/pdf.ts')}{/await}`, 'ui may not know output'],
		['src/lib/measure/a.ts', `import { readFileSync } from 'node:fs';`, 'may not use node:fs'],
		['src/lib/intake/a.ts', `const fs = require('node:fs');`, 'may not use node:fs'],
		['src/lib/measure/a.ts', `import { z } from 'zod';`, 'may not use zod'],
		['src/routes/a/+page.server.ts', `import { eq } from 'drizzle-orm';`, 'may not use drizzle-orm'],
		['src/routes/a/+page.server.ts', `import Database from 'better-sqlite3';`, 'may not use better-sqlite3'],
		[
			'src/routes/+page.svelte',
			`<script>import { j } from '$lib/server/journal.ts';</script>`,
			'server to the browser'
		],
		['src/lib/engine/draft/a.ts', `import { tick } from 'svelte';`, 'may not use svelte'],
		['src/lib/server/a.ts', `import left from 'left-pad';`, 'no place in the list'],
		['src/lib/engine/draft/a.ts', `const name = 'x'; await import(name);`, 'computed'],
		['src/start/a.js', `import { z } from 'zod';`, 'may not use zod'],
		['src/start/a.js', `import { carry } from '../lib/engine/index.ts';`, 'start may not know door'],
		['src/lib/elsewhere/a.ts', `import './b.ts';`, 'stands in no room']
	])('%s with %s', (path, text, why) => {
		expect(layerProblems([{ path, text }])).toEqual([expect.stringContaining(why)]);
	});

	test.each([
		['src/lib/engine/geometry/a.ts', `const r = Math.random();`],
		['src/lib/measure/a.ts', `export const now = () => new Date();`],
		['src/lib/output/a.ts', `const at = Date.now();`],
		['src/lib/server/a.ts', `const at = new Date();`],
		['src/lib/intake/a.ts', `const home = process.env.HOME;`],
		['src/lib/engine/draft/a.ts', `document.title = 'x'; `]
	])('%s with %s', (path, text) => {
		expect(purityProblems([{ path, text }])).toHaveLength(1);
	});
});

describe('a made-up source that keeps to the lines is let through', () => {
	test.each([
		['src/lib/engine/draft/a.ts', `import { add } from '../geometry/point.ts'; // import '../review/walk.ts'`],
		['src/lib/engine/index.ts', `export { walk } from './review/walk.ts';`],
		['src/lib/server/a.ts', `import { carry } from '../engine/index.ts'; import Database from 'better-sqlite3';`],
		[
			'src/routes/+page.svelte',
			`<script lang="ts">import type { Wearer } from '$lib/server/journal/records.ts';</script>`
		],
		['src/routes/a/+page.server.ts', `import type { Actions } from './$types'; import { z } from 'zod';`],
		['src/start/a.js', `import { join } from 'node:path'; await import(join('build', 'handler.js'));`]
	])('%s with %s', (path, text) => {
		expect(layerProblems([{ path, text }])).toEqual([]);
	});

	test('a date made from something given is no clock, and a document handed in is no page', () => {
		const text = `new Date(0); Date.UTC(2000, 1); const end = (document: Pdf) => document.end();`;
		expect(purityProblems([{ path: 'src/lib/output/a.ts', text }])).toEqual([]);
	});
});

test('imports are read where they stand, not where they are only mentioned', () => {
	const text = `// import 'a'\nconst said = "import 'b'"; import c from 'c'; export * from 'd'; import('e'); type F = import('f').F;`;
	expect(importsOf('x.ts', text).map(({ specifier }) => specifier)).toEqual(['c', 'd', 'e', 'f']);
	const component = `<script module lang="ts">import type { A } from 'a';</script><script lang="ts">import { type B } from 'b'; let x: import('c').C;</script><!-- import 'd' -->{#await import('e')}{/await}`;
	const asked = importsOf('x.svelte', component).sort((a, b) => a.specifier!.localeCompare(b.specifier!));
	expect(asked).toEqual([
		{ specifier: 'a', typeOnly: true },
		{ specifier: 'b', typeOnly: true },
		{ specifier: 'c', typeOnly: true },
		{ specifier: 'e', typeOnly: false }
	]);
});
