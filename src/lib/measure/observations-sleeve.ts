import { fittingDresses, newDressmaker, practice } from './observation-sources.ts';
import type { Observation } from './observations.ts';

const group = 'armhole and sleeve';

export const sleeveObservations: readonly Observation[] = [
	{
		key: 'armhole-tight',
		group,
		what: 'The armhole binds',
		folds: 'round the armhole',
		causes: ['its edge lies too high'],
		remedies: [
			{
				op: 'lower',
				at: 'the bottom of the armhole a little, snipped first; the front hollow left alone',
				kind: 'edge'
			}
		],
		source: newDressmaker
	},
	{
		key: 'underarm-sags',
		group,
		what: 'Folds slant below the armhole, the underarm sags, and the sleeve head draws when the arm is lifted',
		folds: 'to the underarm',
		causes: ['the armhole or the whole body is too large', 'the shoulder seam slopes too little'],
		remedies: [
			{ op: 'off the pattern', at: 'a pad at the shoulder, tried first' },
			{ op: 'take in', at: 'the under-arm seams', kind: 'seam' }
		],
		source: fittingDresses
	},
	{
		key: 'armhole-gapes-front',
		group,
		what: 'The armhole gapes in front',
		folds: 'stands off at the front of the armhole',
		causes: ['the front darts take up too little'],
		remedies: [
			{ op: 'lap', at: 'the front armhole edge, the same angle given to the front dart', kind: 'dart-swing' },
			{ op: 'dart wider', at: 'a small dart at the armhole', kind: 'dart' }
		],
		source: practice
	},
	{
		key: 'sleeve-drags-from-head',
		group,
		what: 'The sleeve drags in folds from its head to the underarm',
		folds: 'to the top of the sleeve head',
		causes: ['the sleeve head is too low'],
		remedies: [{ op: 'raise', at: 'the sleeve head, its fullness kept as meant', kind: 'edge' }],
		source: practice
	},
	{
		key: 'sleeve-twists',
		group,
		what: 'The sleeve twists on the arm',
		folds: 'round the arm, from the elbow',
		causes: ['it is set into the armhole too far forward or back'],
		remedies: [{ op: 'off the pattern', at: 'turn the sleeve in the armhole and move its notches', kind: 'mark' }],
		source: practice
	}
];
