import { versionWords } from './heading.ts';
import { initials } from './initials.ts';
import type { PatternSheetInput } from './pattern-input.ts';
import { printedText } from './printed-text.ts';

/** What a viewer shows as the file's title: garment, version, and the wearer's initials. */
export function documentTitle({ title }: PatternSheetInput): string {
	const version = title.lining ? `lining, ${versionWords(title.version)}` : versionWords(title.version);
	return printedText([title.garment, version, initials(title.wearer)].filter((part) => part !== '').join(', '));
}
