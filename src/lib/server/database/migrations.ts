import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** One migration as the folder's own list names it; `when` orders them and is what the database remembers. */
export interface Migration {
	readonly tag: string;
	readonly when: number;
}

/**
 * The folder of SQL migrations, `drizzle/` at the top of the project: looked for from this file upwards, because the built
 * server lies elsewhere than the source.
 */
export function migrationsFolder(): string {
	let folder = dirname(fileURLToPath(import.meta.url));
	while (!existsSync(join(folder, 'drizzle', 'meta', '_journal.json'))) {
		const above = dirname(folder);
		if (above === folder) throw new Error('No drizzle/meta/_journal.json above ' + fileURLToPath(import.meta.url));
		folder = above;
	}
	return join(folder, 'drizzle');
}

/** The migrations of a folder, oldest first. */
export function listMigrations(folder: string): readonly Migration[] {
	const list = JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')) as {
		entries: { tag: string; when: number }[];
	};
	return list.entries.map(({ tag, when }) => ({ tag, when }));
}
