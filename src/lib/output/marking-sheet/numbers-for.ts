import { undividedName } from '../../engine/index.ts';
import type { MarkingSheetInput } from './marking-input.ts';

/** The alterations that a feature owes its move to; a divided piece's answer to the undivided name too. */
export function numbersFor({ alterations }: MarkingSheetInput, feature: string): number[] {
	const isIt = (name: string) => name === feature || undividedName(name) === undividedName(feature);
	return alterations.filter(({ touched }) => touched.some(isIt)).map(({ number }) => number);
}
