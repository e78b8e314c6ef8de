import { defineConfig } from 'vite';

/** The bench as one script for Node.js, as the released pages hold the engine: not file by file, whose calls cost more. */
export default defineConfig({
	resolve: { alias: { $lib: '/src/lib' } },
	build: { ssr: 'tests/bench/bench.ts', outDir: 'node_modules/.cache/bench', emptyOutDir: true },
	logLevel: 'warn'
});
