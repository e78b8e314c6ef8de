import { join } from 'node:path';

/** The database of a journal's folder. */
export const journalFile = (folder: string): string => join(folder, 'journal.sqlite');
