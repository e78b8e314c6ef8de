import { inch } from '../measure/units.ts';
import type { Unit } from '../measure/units.ts';

export interface RuleStep {
	/** From place to place, mm. */
	readonly mm: number;
	/** How many places, 0 with them. */
	readonly count: number;
	/** Which of them have a long tick, and a middling one: every so many. */
	readonly whole: number;
	readonly half: number;
}

/** The rule under the places: an inch in eighths, or 25 mm by fives. */
export function ruleStep(unit: Unit): RuleStep {
	return unit === 'in' ? { mm: inch / 8, count: 9, whole: 8, half: 4 } : { mm: 5, count: 6, whole: 10, half: 2 };
}
