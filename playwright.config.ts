import { defineConfig, devices } from '@playwright/test';
import { findChromium } from './tests/support/find-chromium.ts';
import { freePort } from './tests/support/free-port.ts';

// This file is read again by every worker: the first reading chooses the port, the environment carries it on.
process.env.JOURNEYS_PORT ??= String(await freePort());
const address = `http://127.0.0.1:${process.env.JOURNEYS_PORT}`;

const asRoot = process.getuid?.() === 0;

export default defineConfig({
	testDir: 'tests/journeys',
	outputDir: 'test-results',
	fullyParallel: false,
	workers: 2,
	retries: 0,
	forbidOnly: Boolean(process.env.CI),
	// Far above what any of it takes: how fast a machine is, and what else it does meanwhile, is no part of what is tested.
	timeout: 180_000,
	expect: { timeout: 20_000 },
	reporter: 'list',
	use: {
		baseURL: address,
		actionTimeout: 20_000,
		navigationTimeout: 40_000,
		locale: 'en-GB',
		timezoneId: 'Europe/London',
		trace: 'retain-on-failure',
		launchOptions: {
			executablePath: findChromium(),
			args: [
				'--disable-quic',
				'--no-first-run',
				'--disable-background-networking',
				'--disable-component-update',
				'--disable-sync',
				...(asRoot ? ['--no-sandbox'] : [])
			]
		}
	},
	// A journey that needs scripting says `@scripting` in its title; one that is for one width says `@desktop` or `@phone`.
	projects: [
		{ name: 'desktop', grepInvert: /@phone/, use: { viewport: { width: 1400, height: 900 } } },
		{
			name: 'phone',
			grepInvert: /@desktop/,
			use: { ...devices['Pixel 7'], viewport: { width: 390, height: 844 } }
		},
		{
			name: 'no-scripting',
			grepInvert: /@scripting|@phone/,
			use: { viewport: { width: 1400, height: 900 }, javaScriptEnabled: false }
		}
	],
	webServer: {
		command: 'node tests/support/serve-fresh.js',
		url: address,
		env: { PORT: process.env.JOURNEYS_PORT },
		reuseExistingServer: false,
		timeout: 240_000,
		gracefulShutdown: { signal: 'SIGTERM', timeout: 10_000 },
		stdout: 'ignore',
		stderr: 'pipe'
	}
});
