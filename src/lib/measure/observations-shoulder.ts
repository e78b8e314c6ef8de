import { fittingDresses, garmentFitting, newDressmaker, practice } from './observation-sources.ts';
import type { Observation } from './observations.ts';

const group = 'shoulder and neck';

export const shoulderObservations: readonly Observation[] = [
	{
		key: 'shoulder-folds-to-centre',
		group,
		what: 'Slanting folds run from the end of the shoulder to the centre, and the shoulder seam stands off near the neck',
		folds: 'to the end of the shoulder',
		causes: ['the shoulder seam slopes too much'],
		remedies: [
			{ op: 'slope', at: 'the shoulder seam: take in at the neck end', kind: 'seam' },
			{ op: 'let out', at: 'the shoulder seam at the armhole end', kind: 'seam' },
			{ op: 'raise', at: 'the sleeve head a little to match', kind: 'edge' }
		],
		source: garmentFitting
	},
	{
		key: 'chest-draws-across',
		group,
		what: 'The chest draws across between the armholes',
		folds: 'to both ends of the shoulders',
		causes: ['no room at the outer end of the shoulder seam'],
		remedies: [
			{ op: 'let out', at: 'the shoulder seam at the armhole end', kind: 'seam' },
			{ op: 'lower', at: 'the bottom of the armhole, if it binds afterwards', kind: 'edge' }
		],
		source: `${newDressmaker} (that it is done at the shoulder); direction ${practice}`
	},
	{
		key: 'neck-folds-to-underarm',
		group,
		what: 'Folds slant from the neck down to the underarm, and the armhole sags',
		folds: 'to the underarm',
		causes: ['the shoulder seam slopes too little'],
		remedies: [
			{ op: 'slope', at: 'the shoulder seam: take in at the armhole end', kind: 'seam' },
			{ op: 'lower', at: 'the bottom of the armhole by as much', kind: 'edge' }
		],
		source: `${newDressmaker}; ${garmentFitting}; details ${practice}`
	},
	{
		key: 'hollow-by-shoulder',
		group,
		what: 'Small folds in front between shoulder seam and neck',
		folds: 'into the hollow below the shoulder seam',
		causes: ['the front shoulder edge is longer there than the cloth it must lie on'],
		remedies: [
			{
				op: 'off the pattern',
				at: 'open the shoulder, stretch the front to the back from the middle to the neck, and close it'
			}
		],
		source: newDressmaker
	},
	{
		key: 'folds-below-nape',
		group,
		what: 'Folds across the back just below the neck',
		folds: 'across, below the neck',
		causes: ['too much length at the top of the back', 'the shoulder seam slopes too much'],
		remedies: [
			{ op: 'shorten', at: 'the back above the shoulder blades', kind: 'spread' },
			{ op: 'slope', at: 'the shoulder seam, pinned afresh', kind: 'seam' }
		],
		source: newDressmaker
	},
	{
		key: 'neck-tight',
		group,
		what: 'The neck edge is tight or stands too high',
		folds: 'round the neck',
		causes: ['the neck edge lies too high'],
		remedies: [
			{ op: 'lower', at: 'the neck edge a little at a time, with 3/8″ kept beyond the new line', kind: 'edge' }
		],
		source: `${newDressmaker}; ${fittingDresses}`
	},
	{
		key: 'front-neck-gapes',
		group,
		what: 'The front neck edge gapes',
		folds: 'stands off at the upper chest',
		causes: ['the neck edge is long for where it lies'],
		remedies: [
			{ op: 'dart wider', at: 'a small dart at the neck, swung into the front dart', kind: 'dart-swing' },
			{ op: 'lap', at: 'the neck edge, to nothing at the bust point', kind: 'spread' },
			{ op: 'slope', at: 'the shoulder seam: take in at the neck end', kind: 'seam' }
		],
		source: practice
	},
	{
		key: 'back-neck-gapes',
		group,
		what: 'The back neck edge stands away',
		folds: 'stands off at the back of the neck',
		causes: ['the neck edge is long for where it lies'],
		remedies: [
			{ op: 'dart wider', at: 'a small dart at the back neck', kind: 'dart' },
			{ op: 'slope', at: 'the back shoulder edge: take in at the neck end', kind: 'seam' },
			{ op: 'raise', at: 'the back neck edge', kind: 'edge' }
		],
		source: practice
	},
	{
		key: 'shoulder-seam-too-far-back',
		group,
		what: 'The shoulder seam lies too far back',
		causes: ['the front is long and the back short above the armholes'],
		remedies: [{ op: 'slope', at: 'the shoulder seam moved forward: off the front, onto the back', kind: 'seam' }],
		source: practice
	},
	{
		key: 'one-shoulder-folds',
		group,
		what: 'Slanting folds on one side only, below the shoulder',
		folds: 'to one underarm',
		causes: ['the two shoulder seams want different slopes'],
		remedies: [
			{ op: 'slope', at: 'the shoulder seam on that side only', kind: 'seam' },
			{ op: 'off the pattern', at: 'a pad under that shoulder' }
		],
		source: practice
	},
	{
		key: 'armhole-seam-falls-down-arm',
		group,
		what: 'The armhole seam falls down the arm and pulls the neck outward',
		folds: 'past the end of the shoulder',
		causes: ['the shoulder edge is too long'],
		remedies: [{ op: 'shorten', at: 'the shoulder: chalk the armhole edge further in', kind: 'edge' }],
		source: `${fittingDresses}; ${garmentFitting}`
	},
	{
		key: 'armhole-seam-cuts-shoulder',
		group,
		what: 'The armhole seam cuts in on top of the shoulder',
		folds: 'at the end of the shoulder',
		causes: ['the shoulder edge is too short'],
		remedies: [
			{ op: 'let out', at: 'the armhole edge at the top', kind: 'edge' },
			{ op: 'lengthen', at: 'the shoulder, slashed and opened', kind: 'spread' }
		],
		source: garmentFitting
	}
];
