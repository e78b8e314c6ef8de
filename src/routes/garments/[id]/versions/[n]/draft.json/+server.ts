import { formatDraft } from '$lib/engine/index.ts';
import { fileOf, printedVersion } from '../printed.ts';
import type { RequestHandler } from './$types';

/** The version as a draft file: another garment can be begun from it. */
export const GET: RequestHandler = (event) => {
	const { draft, title } = printedVersion(event);
	const body = `${JSON.stringify(formatDraft(draft), null, '\t')}\n`;
	return fileOf(body, { title }, { extension: 'json', type: 'application/json' });
};
