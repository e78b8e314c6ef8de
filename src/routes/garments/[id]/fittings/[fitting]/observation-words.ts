/** What is said of an observation: how bad it is, how the wearer stood, how it was left. Of the cloth, never of the figure. */
export const howBadWords = { 1: 'slight', 2: 'plain', 3: 'spoils it' } as const;

export const postureWords = {
	standing: 'standing',
	seated: 'seated',
	'arms-up': 'arms up',
	reaching: 'reaching',
	'deep-breath': 'with a deep breath'
} as const;

export const stateWords = {
	open: 'open',
	answered: 'answered',
	'left-on-purpose': 'left on purpose'
} as const;

export const verdictWords = {
	better: 'Better',
	solved: 'Solved',
	'too-much': 'Too much',
	'not-enough': 'Not enough',
	left: 'Leave it so'
} as const;

/** How an observation is answered without the pattern. */
export const withoutPattern: readonly string[] = [
	'bones',
	'padding',
	'relaced',
	'pinned again on the waist marks',
	'pressed'
];
