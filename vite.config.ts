import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	test: {
		include: ['tests/**/*.test.ts'],
		exclude: ['tests/journeys/**', 'tests/long/**'],
		environment: 'node',
		testTimeout: 30_000
	}
});
