import { fileURLToPath } from 'node:url';
import { sveltekit } from '@sveltejs/kit/vite';
import type { Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';

/**
 * What the browser gets is put into few files: forty of a few hundred bytes each compress badly. The framework is one; what two pages
 * or more have in common is another, which the first page that is opened brings along for all.
 */
const codeSplitting: Rolldown.OutputOptions['codeSplitting'] = {
	groups: [
		{ name: 'framework', test: /node_modules[\\/](svelte|@sveltejs|devalue|clsx|esm-env)[\\/]|preload-helper/ },
		{ name: 'shared', test: /src[\\/]lib[\\/](ui|measure)[\\/]/, tags: ['$initial'], minShareCount: 2 }
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
