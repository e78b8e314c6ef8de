import { DraftError, formatDraft, parseDraftText } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import demoDraft from '$lib/intake/demo-draft.json';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { DraftSource } from '$lib/server/journal/records.ts';

/** A draft that was brought in, and where from; or why it was not, with every problem of the file. */
export type DraftRead =
	| { readonly draft: Draft; readonly source: DraftSource; readonly sourceName: string }
	| {
			readonly status: 400 | 404 | 413;
			/** The field that it was brought in by. */
			readonly field: 'file' | 'text' | 'version' | 'from';
			readonly sentence: string;
			readonly problems: readonly { readonly path: string; readonly message: string }[];
	  };

/** Larger is no draft; bytes of a file, letters of a text. */
const largest = 5 * 1024 * 1024;

/** What a draft that was shown already came from, as the form carries it. */
const sourcesShown: readonly DraftSource[] = ['file', 'demo', 'version'];

/** Reads the draft that a form brings in, in the way that its field `from` names. */
export async function readDraft(form: FormData, journal: Journal): Promise<DraftRead> {
	const from = form.get('from');
	switch (from) {
		case 'file': {
			const file = form.get('file');
			if (!(file instanceof File) || file.size === 0)
				return refused(
					'file',
					'Choose a draft file: its name ends in .json, and Pin to Paper can save one from every version.'
				);
			if (file.size > largest) return tooLarge('file', `${file.name} is ${megabytes(file.size)}.`);
			return parsed('file', await file.text(), 'file', file.name);
		}
		case 'text': {
			const text = wordsIn(form, 'text');
			if (text.trim() === '') return refused('text', 'Paste the whole text of a draft file here.');
			if (text.length > largest) return tooLarge('text', `This text is ${megabytes(text.length)}.`);
			return parsed('text', text, 'file', 'pasted');
		}
		case 'version':
			return ofVersion(wordsIn(form, 'version'), journal);
		case 'demo':
			return parsed('from', JSON.stringify(demoDraft), 'demo', 'Drawn for the demo');
		case 'shown': {
			const source = sourcesShown.find((one) => one === form.get('shownSource')) ?? 'file';
			return parsed('from', wordsIn(form, 'shown'), source, wordsIn(form, 'shownName'));
		}
		default:
			return refused('from', 'Say where the draft comes from.');
	}
}

/** The draft's file as text, as short as it can be: the form carries it from the drawing to the keeping. */
export function draftText(draft: Draft): string {
	return JSON.stringify(formatDraft(draft));
}

function ofVersion(named: string, journal: Journal): DraftRead {
	const [garment = '', number = ''] = named.split('/');
	const version = /^\d+$/.test(number) ? journal.version(garment, Number(number)) : undefined;
	if (!version)
		return { ...refused('version', 'Choose one of the versions in the list.'), status: named === '' ? 400 : 404 };
	const from = journal.garments().find(({ id }) => id === garment);
	// By numbers: a name may be forgotten later, and this stays.
	const sourceName = `Garment ${from?.number ?? ''}, ${version.number === 0 ? 'draft' : `version ${version.number}`}`;
	return { draft: version.draft, source: 'version', sourceName };
}

function parsed(field: 'file' | 'text' | 'from', text: string, source: DraftSource, sourceName: string): DraftRead {
	try {
		return { draft: parseDraftText(text), source, sourceName };
	} catch (fault) {
		if (!(fault instanceof DraftError)) throw fault;
		const { problems } = fault;
		const whole = problems.length === 1 && problems[0]!.path === '' ? problems[0]!.message : undefined;
		const many = problems.length === 1 ? 'one thing' : `${problems.length} things`;
		return {
			status: 400,
			field,
			sentence: whole ?? `The draft is not taken in yet: ${many} in it cannot be right.`,
			problems: whole === undefined ? problems : []
		};
	}
}

function refused(field: 'file' | 'text' | 'version' | 'from', sentence: string) {
	return { status: 400, field, sentence, problems: [] } as const;
}

function tooLarge(field: 'file' | 'text', said: string): DraftRead {
	const sentence = `${said} A draft file is 5 MB at the most, and a draft of a dozen pieces is under 200 kB: is it another file?`;
	return { status: 413, field, sentence, problems: [] };
}

const megabytes = (bytes: number) => `${(bytes / 1024 / 1024).toFixed(1)} MB`;

function wordsIn(form: FormData, name: string): string {
	const value = form.get(name);
	return typeof value === 'string' ? value : '';
}
