/** How long a buttonhole is cut and where it lies, by the rules of several handbooks: they do not agree, so one is chosen. */

export interface Button {
	/** mm */
	readonly diameter: number;
	readonly thickness: number;
}

/** By the tape in hand: an eighth of an inch, or 3 mm. */
export type Tape = 'inch' | 'metric';

/**
 * Diameter and thickness (the usual, and what a bound one has); the same and an eighth more for a worked one; diameter and an
 * eighth for a flat button.
 */
export type ButtonholeRule = 'diameter-and-thickness' | 'worked' | 'flat';

export function eighth(tape: Tape): number {
	return tape === 'inch' ? 25.4 / 8 : 3;
}

/** mm. */
export function buttonholeLength({ diameter, thickness }: Button, rule: ButtonholeRule, tape: Tape): number {
	switch (rule) {
		case 'diameter-and-thickness':
			return diameter + thickness;
		case 'worked':
			return diameter + thickness + eighth(tape);
		case 'flat':
			return diameter + eighth(tape);
	}
}

/** How wide the cloth is to be from the centre line to the edge, mm. */
export type ExtensionRule = 'three-quarters' | 'diameter' | 'half-and-a-quarter';

export function buttonExtension({ diameter }: Pick<Button, 'diameter'>, rule: ExtensionRule): number {
	switch (rule) {
		case 'three-quarters':
			return 0.75 * diameter;
		case 'diameter':
			return diameter;
		case 'half-and-a-quarter':
			return diameter / 2 + 25.4 / 4;
	}
}

/** The narrowest extension that any of the rules allows, mm. */
export function leastExtension(button: Pick<Button, 'diameter'>): number {
	return Math.min(
		...(['three-quarters', 'diameter', 'half-and-a-quarter'] as const).map((rule) => buttonExtension(button, rule))
	);
}
