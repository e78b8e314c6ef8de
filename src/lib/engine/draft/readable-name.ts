import { sideOfName, undividedName } from './undivided-name.ts';

/** What an id is called on paper where the file gives it no name: `side-back@left` is "Side back, left". */
export function readableName(id: string): string {
	const words = undividedName(id)
		.replace(/[-_.]+/g, ' ')
		.trim();
	const side = sideOfName(id);
	return words.charAt(0).toUpperCase() + words.slice(1) + (side ? `, ${side}` : '');
}
