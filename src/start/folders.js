import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json, as an absolute path. */
export const projectFolder = fileURLToPath(new URL('../../', import.meta.url));

/** Where `npm run build` puts the server. */
export const buildFolder = join(projectFolder, 'build');

/**
 * The folder of the journal as an absolute path: `PIN_TO_PAPER_JOURNAL`, or `journal/` beside package.json.
 * @returns {string}
 */
export function journalFolder() {
	return resolve(projectFolder, process.env.PIN_TO_PAPER_JOURNAL || 'journal');
}
