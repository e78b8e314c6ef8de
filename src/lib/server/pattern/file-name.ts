import { initials } from '../../output/initials.ts';
import type { SheetTitle } from '../../output/pattern-input.ts';

/**
 * What a file is called that is taken from the journal: `governess-jacket-version-2-iv.pdf`. Plain letters, so that any system
 * takes it, and of the wearer the initials at most: words of the wearer's name that the garment is called by are left out.
 * `what` it is, where it is not the pattern itself: `cutting-list`.
 */
export function patternFileName(title: SheetTitle, extension: string, what = ''): string {
	const wearer = new Set(wordsOf(title.wearer));
	const garment = wordsOf(title.garment)
		.filter((word) => !wearer.has(word))
		.join('-')
		.slice(0, 60)
		.replace(/-$/, '');
	const version = title.version === 0 ? 'draft' : `version-${title.version}`;
	const wearersInitials = wordsOf(initials(title.wearer)).join('');
	const parts = [garment || 'garment', title.lining ? 'lining' : '', version, wearersInitials, what];
	return `${parts.filter((part) => part !== '').join('-')}.${extension}`;
}

/** The plain words of a name, accents taken off; `Ines’s` is `ines`. */
function wordsOf(name: string): readonly string[] {
	return name
		.normalize('NFKD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/[’']s\b/g, '')
		.split(/[^a-z0-9]+/)
		.filter((word) => word !== '');
}
