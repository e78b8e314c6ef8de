import { dressmaker, fittingDresses, newDressmaker, practice } from './observation-sources.ts';
import type { Observation } from './observations.ts';

const group = 'front';

export const frontObservations: readonly Observation[] = [
	{
		key: 'bust-not-filled',
		group,
		what: 'The front is not filled: folds drop below its fullest part',
		folds: 'down, below the bust line',
		causes: ['more shape in the front than is used'],
		remedies: [
			{ op: 'lap', at: 'along the bust line and up toward the armhole', kind: 'bust-spread' },
			{ op: 'dart narrower', at: 'the waist darts', kind: 'dart-set' }
		],
		source: dressmaker
	},
	{
		key: 'bust-strains',
		group,
		what: 'The cloth strains across at the bust line, the front rides up and the waist line rises in front',
		folds: 'to the bust point',
		causes: ['too little shape and length in the front'],
		remedies: [
			{ op: 'spread', at: 'across the front and up, hinged near the armhole', kind: 'bust-spread' },
			{ op: 'dart wider', at: 'the waist darts', kind: 'dart-set' },
			{ op: 'lengthen', at: 'the centre front', kind: 'spread' }
		],
		source: `${dressmaker}; what is seen: When and how to do a full bust adjustment, 2025`
	},
	{
		key: 'front-sags-below-bust',
		group,
		what: 'The front sags in folds below the bust line',
		folds: 'below the bust point',
		causes: ['too much length in the front between shoulder and waist'],
		remedies: [
			{
				op: 'slope',
				at: 'the front shoulder edge: take in, most at the neck, to nothing at the armhole',
				kind: 'seam'
			},
			{ op: 'lower', at: 'the front neck, redrawn', kind: 'edge' }
		],
		source: fittingDresses
	},
	{
		key: 'dart-end-bubbles',
		group,
		what: 'A point or bubble stands at the end of a dart',
		folds: 'at the dart’s point',
		causes: ['the point lies too near the bust point or past it', 'the legs run too straight at the end'],
		remedies: [
			{ op: 'dart moved', at: 'its point, a little back', kind: 'dart-set' },
			{ op: 'dart narrower', at: 'along its last inch, the legs curved', kind: 'dart-set' }
		],
		source: practice
	},
	{
		key: 'dart-wrong-height',
		group,
		what: 'The dart points above or below the bust point',
		causes: ['the bust point lies at another height than in the draft'],
		remedies: [{ op: 'dart moved', at: 'the whole dart up or down', kind: 'dart-set' }],
		source: newDressmaker
	},
	{
		key: 'hollow-under-bust',
		group,
		what: 'The cloth bridges over from the bust line to the waist without touching',
		folds: 'stands off under the bust line',
		causes: ['the darts are too narrow just below their points'],
		remedies: [
			{ op: 'dart wider', at: 'in its middle', kind: 'dart-set' },
			{ op: 'dart wider', at: 'a fold pinned inside the piece', kind: 'fold-dart' }
		],
		source: practice
	},
	{
		key: 'front-swings-off',
		group,
		what: 'The front edges swing apart at the lower edge',
		folds: 'away from the body at the hem',
		causes: ['too little length over the bust point'],
		remedies: [
			{ op: 'lengthen', at: 'the front through the bust line', kind: 'spread' },
			{ op: 'dart wider', at: 'the waist darts', kind: 'dart-set' }
		],
		source: practice
	},
	{
		key: 'lining-smooth-cloth-bubbles',
		group,
		what: 'The lining lies smooth and the outer cloth bubbles',
		causes: ['the lining is too long or too short for the cloth mounted on it'],
		remedies: [
			{
				op: 'off the pattern',
				at: 'more or less fullness in the lining when the two are mounted, or room for the turn of the cloth'
			}
		],
		source: practice
	}
];
