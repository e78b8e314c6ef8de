import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { JournalOptions } from '../../../../src/lib/server/open-journal.ts';
import { begun, kept } from '../../support/journal.ts';
import { pretended } from './pictures.ts';

/** An open fitting at which the wearer agreed to everything, with one photo. */
export function photographed(options: Partial<JournalOptions> = {}) {
	const all = begun(options);
	const { journal, fitting } = all;
	const agreed = { taking: true, keeping: true, showing: true, date: '2026-01-28' };
	const consent = kept(journal.noteConsent(fitting.id, 0, agreed));
	const photo = kept(journal.addPhoto(fitting.id, pretended('the front'), { note: 'photo remark' }));
	return { ...all, consent, photo };
}

/** Every file under the folder of pictures, by name. */
export function filesOf(journalFile: string): string[] {
	const folder = join(dirname(journalFile), 'photos');
	if (!existsSync(folder)) return [];
	return readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map(({ name }) => name)
		.sort();
}

/** The two files of a picture. */
export const namesOf = ({ hash }: { hash: string }) => [`${hash}.jpg`, `${hash}.small.jpg`];
