import { fileURLToPath } from 'node:url';
import { sveltekit } from '@sveltejs/kit/vite';
import type { Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';

/** The heaviest page, which is opened on a phone in the fitting room, with the engine that follows it and what comes with every page. */
const heaviest = /(FittingPage\.svelte|fitting[\\/]live\.ts|routes[\\/]\+(layout|error)\.svelte)$/;

/** Whether a module comes with the heaviest page: something of it imports it. */
function comesWithHeaviest(id: string, context: Rolldown.ChunkingContext): boolean {
	const seen = new Set([id]);
	for (const one of seen) {
		if (heaviest.test(one)) return true;
		for (const importer of context.getModuleInfo(one)?.importers ?? []) seen.add(importer);
	}
	return false;
}

/** What two pages or more have in common. */
const inCommon = {
	test: /src[\\/]lib[\\/](ui|measure)[\\/]/,
	tags: ['$initial'],
	minShareCount: 2
} satisfies Partial<Rolldown.CodeSplittingGroup>;

/**
 * What the browser gets is put into few files: forty of a few hundred bytes each compress badly. The framework is one; what two pages
 * or more have in common are two others: what the heaviest page needs, and what it does not.
 */
const codeSplitting: Rolldown.OutputOptions['codeSplitting'] = {
	groups: [
		{ name: 'framework', test: /node_modules[\\/](svelte|@sveltejs|devalue|clsx|esm-env)[\\/]|preload-helper/ },
		{ ...inCommon, debugName: 'shared', name: (id, context) => (comesWithHeaviest(id, context) ? 'shared' : null) },
		{ ...inCommon, name: 'beside' }
	]
};

/** Stands for what d3-zoom would bring along only to glide. */
const nothingGlides = fileURLToPath(new URL('./src/lib/ui/drawing/nothing-glides.ts', import.meta.url));

// `npm run test:long` is vitest in the mode `long`: the same properties with more runs, and the tests in tests/long.
export default defineConfig(({ mode }) => ({
	plugins: [sveltekit()],
	resolve: { alias: { 'd3-transition': nothingGlides, 'd3-interpolate': nothingGlides } },
	environments: { client: { build: { rolldownOptions: { output: { codeSplitting } } } } },
	test: {
		include: mode === 'long' ? ['tests/long/**/*.test.ts'] : ['tests/**/*.test.ts'],
		exclude: mode === 'long' ? [] : ['tests/journeys/**', 'tests/long/**'],
		environment: 'node',
		testTimeout: mode === 'long' ? 600_000 : 30_000
	}
}));
