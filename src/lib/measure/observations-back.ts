import { dressmaker, fittingDresses, newDressmaker, practice, swayBack } from './observation-sources.ts';
import type { Observation } from './observations.ts';

const group = 'back';

export const backObservations: readonly Observation[] = [
	{
		key: 'back-stands-away-below',
		group,
		what: 'Folds rise from the underarm to the side-back seam, and the lower back stands away',
		folds: 'to the shoulder blades',
		causes: ['too little length over the shoulder blades'],
		remedies: [
			{ op: 'spread', at: 'across the back between the side-back seams, hinged near the underarm', kind: 'spread' }
		],
		source: dressmaker
	},
	{
		key: 'back-sags',
		group,
		what: 'The back sags in folds below the shoulder blades',
		folds: 'at the lower back',
		causes: ['too much length in the back above the waist'],
		remedies: [
			{ op: 'slope', at: 'the back shoulder edge: take in, most at the neck, to nothing at the armhole', kind: 'seam' },
			{ op: 'lower', at: 'the back neck, redrawn', kind: 'edge' },
			{ op: 'take in', at: 'the centre-back seam a little at the waist, the lower back kept easy', kind: 'seam' }
		],
		source: fittingDresses
	},
	{
		key: 'back-tight-front-fits',
		group,
		what: 'The back is tight across while the front fits',
		folds: 'to the shoulder blades',
		causes: ['the back is narrow for its front'],
		remedies: [
			{
				op: 'spread',
				at: 'the back from shoulder to hem; half as much off the back armhole at the shoulder, half onto the front',
				kind: 'spread'
			}
		],
		source: newDressmaker
	},
	{
		key: 'back-folds-up-and-down',
		group,
		what: 'Loose folds up and down between the shoulder blades',
		folds: 'up and down',
		causes: ['the back is wide there'],
		remedies: [{ op: 'take in', at: 'the centre-back or the side-back seams', kind: 'seam' }],
		source: practice
	},
	{
		key: 'back-strains-reaching',
		group,
		what: 'The back strains from arm to arm when the wearer reaches forward',
		folds: 'across, from armhole to armhole',
		causes: ['the back is narrow between the armholes'],
		remedies: [
			{ op: 'let out', at: 'the side-back seams, or the back armhole edge', kind: 'seam' },
			{ op: 'spread', at: 'the back', kind: 'spread' }
		],
		source: practice
	},
	{
		key: 'back-waist-folds-centre',
		group,
		what: 'Folds across the back at the waist that fade before the side seams',
		folds: 'across, at the middle of the back waist',
		causes: ['too much length at the middle of the back waist'],
		remedies: [{ op: 'shorten', at: 'a wedge at the centre back, to nothing at the side seam', kind: 'spread' }],
		source: swayBack
	},
	{
		key: 'back-waist-folds-skirt-tight',
		group,
		what: 'Folds across the back at the waist while the basque is tight below',
		folds: 'to the hip line',
		causes: ['too tight below the waist: the basque rides up'],
		remedies: [{ op: 'let out', at: 'the seams below the waist; no fold across', kind: 'seam' }],
		source: 'The sway back alteration, 2016'
	}
];
