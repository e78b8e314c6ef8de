import { dirname, join } from 'node:path';

/** The database of a journal's folder. */
export const journalFile = (folder: string): string => join(folder, 'journal.sqlite');

/** The folder of pictures that belongs to a journal's database. */
export const photoFolder = (file: string): string => join(dirname(file), 'photos');
