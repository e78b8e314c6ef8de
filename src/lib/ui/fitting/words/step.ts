import type { Draft } from '../../../engine/index.ts';
import type { Unit } from '../../../measure/units.ts';
import { findAct } from '../acts.ts';
import { inSentence } from '../casing.ts';
import { alterationWords, type Intent } from './alteration.ts';

/** A step at a fitting, as far as it is told. */
export interface StepTold {
	readonly what: string;
	readonly alteration?: { readonly number: number; readonly act: string; readonly intent: Intent };
	readonly observation?: { readonly letter: string; readonly what: string };
}

/** “took in the side seam”, “left out alteration 4”, “noted b, drag lines …”: what undoing it undoes. */
export function stepWords(draft: Draft, { what, alteration, observation }: StepTold, unit: Unit): string {
	if (observation) {
		const { letter } = observation;
		return what === 'observation-added'
			? `noted ${letter}, ${shortened(observation.what)}`
			: `changed what was noted at ${letter}`;
	}
	if (!alteration) return what.replaceAll('-', ' ');
	const { number, act, intent } = alteration;
	const thing = `the ${inSentence(alterationWords(draft, intent, unit).subject)}`.replace('the new dart', 'a new dart');
	const done = findAct(act)?.done;
	const which = `alteration ${number}, ${thing}`;
	switch (what) {
		case 'alteration-added':
			return done === undefined ? `kept ${which}` : `${done} ${thing}`;
		case 'alteration-left-out':
			return `left out ${which}`;
		case 'alteration-taken-up':
			return `took up ${which}, again`;
		case 'alteration-moved':
			return `put ${which}, elsewhere in the order`;
		default:
			return `changed ${which}`;
	}
}

/** At most about forty letters, whole words. */
function shortened(text: string): string {
	const said = inSentence(text);
	return said.length <= 44 ? said : `${said.slice(0, 44).replace(/\s+\S*$/, '')} …`;
}
