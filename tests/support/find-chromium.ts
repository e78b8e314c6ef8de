import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome.exe', 'msedge.exe'];

const usualPlaces = [
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
	'/Applications/Chromium.app/Contents/MacOS/Chromium',
	'/snap/bin/chromium',
	'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
	'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
	'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe'
];

/**
 * The browser for the journeys: `CHROMIUM` if set, else the first Chromium or Chrome on the path or where systems put it.
 * No browser is ever downloaded. Throws when there is none.
 */
export function findChromium(env: NodeJS.ProcessEnv = process.env): string {
	if (env.CHROMIUM) {
		if (existsSync(env.CHROMIUM)) return env.CHROMIUM;
		throw new Error(
			`CHROMIUM is "${env.CHROMIUM}", and there is no such file. Give the whole path of Chromium or Chrome.`
		);
	}
	const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
	const found = [...folders.flatMap((folder) => names.map((name) => join(folder, name))), ...usualPlaces].find((path) =>
		existsSync(path)
	);
	if (found) return found;
	throw new Error(
		'No Chromium or Chrome was found for the journeys. Install one (on Debian, as root: apt-get install chromium), ' +
			'or say where it is: CHROMIUM=/path/to/chrome npm test.'
	);
}
