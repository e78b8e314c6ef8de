import { choosing } from '../choosing.ts';
import { readShorthandLine } from '../form/shorthand-line.ts';
import { field, type Typed } from '../typed.ts';
import type { KeptView } from './kept-view.ts';

/** A line of shorthand among the fields becomes the fields of the form; or it is kept as it was, with what was not understood. */
export function shorthandAsked(
	kept: KeptView,
	asked: Typed
): { readonly typed: Typed } | { readonly text: string; readonly problem: string } | undefined {
	const text = field(asked, 'line');
	if (text === '') return undefined;
	const read = readShorthandLine(kept.after, text, kept.ground.unit);
	return 'typed' in read
		? { typed: { ...choosing(asked), ...read.typed, shorthand: text } }
		: { text, problem: read.problem };
}
