import { DraftError } from './draft-error.ts';

/*
 * Every format that was ever released is read for good. A later one gets the next number and, here, the step that turns a file of
 * the one before into it; parse.ts knows the latest only. Steps work on JSON whose shape is not checked yet.
 */

export const family = 'pin-to-paper/draft@';

export interface Format {
	readonly number: number;
	/** From a file of the format one lower. The first has none. */
	readonly fromBefore?: (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** In order; the last is the one that is written. */
export const formats: readonly Format[] = [{ number: 1 }];

/** `pin-to-paper/draft@1`. */
export function formatName(known: readonly Format[] = formats): string {
	return `${family}${known[known.length - 1].number}`;
}

/** A file of any known format as one of the latest. Refused (DraftError): what is no object, or of no format known here. */
export function inLatestFormat(file: unknown, known: readonly Format[] = formats): Record<string, unknown> {
	const refuse = (path: string, message: string): never => {
		throw new DraftError([{ path, message }]);
	};
	const latest = known[known.length - 1].number;
	if (typeof file !== 'object' || file === null || Array.isArray(file)) {
		return refuse('', `A draft file is an object that begins {"format": "${formatName(known)}", …}.`);
	}
	const { format } = file as Record<string, unknown>;
	if (format === undefined) return refuse('format', `The format is missing: write "format": "${formatName(known)}".`);
	const text = typeof format === 'string' ? format : '';
	const match = text.startsWith(family) ? /^[1-9]\d{0,8}$/.exec(text.slice(family.length)) : null;
	if (match === null) {
		const found = typeof format === 'string' ? JSON.stringify(format.slice(0, 60)) : 'what is there';
		return refuse('format', `The format should be "${formatName(known)}", not ${found}.`);
	}
	const number = Number(match[0]);
	if (number > latest) {
		return refuse('format', `This file is of a later format, draft@${number}; this release reads draft@${latest}.`);
	}
	let latestFile = file as Record<string, unknown>;
	for (const step of known) {
		if (step.number > number && step.fromBefore) {
			latestFile = { ...step.fromBefore(latestFile), format: `${family}${step.number}` };
		}
	}
	return latestFile;
}
