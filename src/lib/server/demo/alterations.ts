import { inch } from '../../measure/units.ts';
import type { NewAlteration } from '../journal/changes.ts';
import type { ReadingsAtPlace } from '../journal/records.ts';

const eighth = inch / 8;
const sixteenth = inch / 16;

/** Seam ends are always sent, 0 unless something was pinned there: a seam fades to nothing. */
const start = { end: 'start' } as const;
const finish = { end: 'finish' } as const;
const level = (name: string) => ({ level: name });

const readOnRight = (places: readonly ReadingsAtPlace[]) => ({ pinnedOn: 'right', sides: 'both', places }) as const;

/** What was pinned at the two fittings of the demo. Amounts per layer, in mm; readings as they were read. */
export const demoAlterations = {
	sideTakenIn: {
		act: 'took-in',
		intent: {
			kind: 'seam',
			seam: 'side',
			pins: [
				{ at: start, a: 0, b: 0 },
				{ at: level('bust'), a: -eighth, b: -eighth },
				{ at: level('waist'), a: -eighth, b: -eighth },
				{ at: finish, a: 0, b: 0 }
			]
		},
		measured: 'whole-fold',
		readings: readOnRight([
			{ at: level('bust'), rightA: -2 * eighth },
			{ at: level('waist'), rightA: -2 * eighth }
		])
	},
	centreBackTakenIn: {
		act: 'took-in',
		intent: {
			kind: 'seam',
			seam: 'centre-back',
			pins: [
				{ at: start, a: 0 },
				{ at: level('waist'), a: -eighth },
				{ at: finish, a: 0 }
			]
		},
		measured: 'each-layer',
		readings: {
			pinnedOn: 'both',
			sides: 'average',
			places: [{ at: level('waist'), rightA: -(eighth + sixteenth / 2), leftA: -(eighth - sixteenth / 2) }]
		}
	},
	frontDartWider: {
		act: 'changed-dart',
		intent: { kind: 'dart-set', dart: 'front/front-dart', intake: 15 },
		measured: 'whole-fold',
		note: '1/4″ wider than it was sewn'
	},
	bustPointMarked: {
		act: 'marked',
		intent: {
			kind: 'mark',
			piece: 'front',
			move: {
				id: 'bust-point',
				to: { from: { edge: 'front/front-edge', level: 'bust', offset: 2 * eighth }, in: 4.5 * inch }
			}
		},
		note: 'chalked through the toile with the tape drawn level'
	},
	sideBackOpened: {
		act: 'let-out',
		intent: {
			kind: 'seam',
			seam: 'side-back',
			pins: [
				{ at: start, a: 0, b: 0 },
				{ at: level('waist'), a: 0, b: 0 },
				{ at: level('hip'), a: eighth, b: eighth },
				{ at: finish, a: 2 * eighth, b: 2 * eighth }
			]
		},
		measured: 'one-layer',
		readings: readOnRight([
			{ at: level('hip'), rightA: eighth, rightB: eighth },
			{ at: finish, rightA: 2 * eighth, rightB: 2 * eighth }
		])
	},
	armholeDart: {
		act: 'new-dart',
		intent: {
			kind: 'dart',
			edge: 'front/armhole',
			at: { notch: 'armhole-front' },
			intake: 3 * eighth,
			point: { from: { edge: 'front/armhole', notch: 'armhole-front' }, in: 3.75 * inch }
		},
		measured: 'whole-fold',
		note: '3 3/4″ long'
	},
	neckLowered: {
		act: 'chalked',
		intent: {
			kind: 'edge',
			edge: 'front/neck',
			pins: [
				{ at: start, move: 0 },
				{ at: finish, move: -3 * eighth }
			]
		},
		measured: 'one-layer',
		readings: readOnRight([{ at: finish, rightA: -3 * eighth }])
	},
	underArmSeamMoved: {
		act: 'moved-seam',
		intent: {
			kind: 'seam',
			seam: 'under-arm-back',
			pins: [
				{ at: start, a: 0, b: 0 },
				{ at: level('waist'), a: eighth, b: -eighth },
				{ at: finish, a: 0, b: 0 }
			]
		},
		measured: 'each-layer',
		readings: readOnRight([{ at: level('waist'), rightA: eighth, rightB: -eighth }])
	}
} as const satisfies Readonly<Record<string, NewAlteration>>;

/** At the table after the second fitting: the new dart folded as it is pressed, and the armhole redrawn across it. */
export function armholeDartTrued(dart: string): NewAlteration {
	return {
		act: 'trued',
		intent: { kind: 'true-dart', dart: `front/${dart}`, reach: 25 },
		note: 'folded down, as it is pressed'
	};
}
