import { formatLength } from '../../../measure/format-length.ts';
import type { Unit } from '../../../measure/units.ts';
import type { FittingView } from './fitting-view.ts';

/**
 * The thing in the hand, the chosen place and what it comes to, as one would read it out: “Side seam, under-arm to front. Waist
 * line, in 1/4 inch. 1 inch round the waist.” Empty where nothing is in the hand.
 */
export function spokenHand({ hand, told, problems }: FittingView, unit: Unit): string {
	const { target, act, pins } = hand;
	if (!target) return act ? `${act.name}: where?` : '';
	const thing = [target.name, target.note].filter(Boolean).join(', ');
	if (!act) return `${thing}. What was done?`;
	const here = pins?.rows.find((row) => row.here);
	const last = told?.effect.sum?.text.split(' = ').at(-1);
	const wrong = Object.values(problems)[0];
	const said = wrong ?? told?.effect.refused ?? last;
	return [thing, here && placeSpoken(here, unit), said && inWords(said)]
		.filter(Boolean)
		.map((part) => `${part}.`.replace(/([.?])\.$/, '$1'))
		.join(' ');
}

/** “Waist line, in 1/4 inch”; where the two layers go apart, how far. */
export function placeSpoken(
	{ name, a, b }: { readonly name: string; readonly a: number; readonly b: number },
	unit: Unit
): string {
	const most = Math.abs(b) > Math.abs(a) ? b : a;
	if (most === 0) return `${name}, as it was`;
	const length = inWords(formatLength(Math.abs(most), unit, { denominator: 16, sign: 'never' }).text);
	if (a !== 0 && Math.abs(a + b) < 1e-9) return `${name}, moved ${length}`;
	return `${name}, ${most < 0 ? 'in' : 'out'} ${length}`;
}

/** The mark for inches as a word: 1/4″ is read out as “1/4 inch”, 1 1/4″ as “1 1/4 inches”. */
function inWords(text: string): string {
	return text.replace(/((?:\d+ )?\d+(?:\/\d+)?)″/g, (_, figure: string) =>
		/^(1|\d+\/\d+)$/.test(figure) ? `${figure} inch` : `${figure} inches`
	);
}
