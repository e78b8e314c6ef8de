import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

// `npm run test:long` is vitest in the mode `long`: the same properties with more runs, and the tests in tests/long.
export default defineConfig(({ mode }) => ({
	plugins: [sveltekit()],
	test: {
		include: mode === 'long' ? ['tests/long/**/*.test.ts'] : ['tests/**/*.test.ts'],
		exclude: mode === 'long' ? [] : ['tests/journeys/**', 'tests/long/**'],
		environment: 'node',
		testTimeout: mode === 'long' ? 600_000 : 30_000
	}
}));
