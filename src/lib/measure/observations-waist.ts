import { newDressmaker, practice, swayBack } from './observation-sources.ts';
import type { Observation } from './observations.ts';

const group = 'waist and sides';

export const waistObservations: readonly Observation[] = [
	{
		key: 'twists',
		group,
		what: 'The whole body twists to one side',
		folds: 'round, to one side',
		causes: ['the waist marks were not matched when it was pinned together'],
		remedies: [{ op: 'off the pattern', at: 'undo it and pin it again on the waist marks' }],
		source: newDressmaker
	},
	{
		key: 'waist-folds-all-round',
		group,
		what: 'Folds across run right round above the waist',
		folds: 'across, all round',
		causes: ['the waist of the draft lies lower than where it is worn'],
		remedies: [{ op: 'shorten', at: 'every piece above the waist', kind: 'spread' }],
		source: swayBack
	},
	{
		key: 'waist-loose',
		group,
		what: 'Loose folds up and down at the waist',
		folds: 'up and down',
		causes: ['too wide at the waist'],
		remedies: [
			{ op: 'take in', at: 'the long seams, shared evenly', kind: 'seam' },
			{ op: 'dart wider', at: 'the waist darts', kind: 'dart-set' }
		],
		source: practice
	},
	{
		key: 'waist-strains',
		group,
		what: 'The closing strains across at the waist',
		folds: 'across, to the closing',
		causes: ['too narrow at the waist'],
		remedies: [
			{ op: 'let out', at: 'the long seams at the waist', kind: 'seam' },
			{ op: 'dart narrower', at: 'the waist darts', kind: 'dart-set' }
		],
		source: practice
	},
	{
		key: 'side-seam-leans-forward',
		group,
		what: 'The side seam leans forward at the bottom',
		causes: ['the front is too narrow, or too short'],
		remedies: [
			{ op: 'let out', at: 'the front at the side seam', kind: 'seam' },
			{ op: 'lengthen', at: 'the front', kind: 'spread' }
		],
		source: practice
	},
	{
		key: 'side-seam-leans-back',
		group,
		what: 'The side seam leans back at the bottom',
		causes: ['the back is too narrow, or too short'],
		remedies: [
			{ op: 'let out', at: 'the back at the side seam', kind: 'seam' },
			{ op: 'lengthen', at: 'the back', kind: 'spread' }
		],
		source: practice
	},
	{
		key: 'side-bunches',
		group,
		what: 'The cloth bunches at the side above the waist',
		folds: 'across, under the arm',
		causes: ['the side seam is too long'],
		remedies: [
			{ op: 'shorten', at: 'the pieces at the sides', kind: 'spread' },
			{ op: 'lower', at: 'the armhole, if it digs in', kind: 'edge' }
		],
		source: practice
	},
	{
		key: 'waist-tilts',
		group,
		what: 'The waist line tilts to one side',
		folds: 'to the higher side',
		causes: ['the two sides want different lengths'],
		remedies: [
			{ op: 'lengthen', at: 'one side only', kind: 'spread' },
			{ op: 'shorten', at: 'one side only', kind: 'spread' }
		],
		source: practice
	}
];
