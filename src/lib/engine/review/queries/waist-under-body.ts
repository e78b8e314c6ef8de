import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { changeRoundAt } from '../change-round.ts';
import { easeTable } from '../ease-table.ts';
import { settleId } from '../settle.ts';
import { isCalled } from '../words.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

const care = 'Never lace or fasten tighter than the wearer can breathe and sit in.';

/** A little room once it is settled, mm. */
const spare = 1;

/**
 * The garment's waist is smaller than the one measured over the same foundation; for stays, than the measure that the wearer is
 * used to being laced to. Figure: the ease, negative, mm.
 */
export const waistUnderBody: Inquiry = ({ draft, options, bands }) =>
	easeTable(draft, options.measures ?? {}).flatMap(({ level, limb, garment, body }): Query[] => {
		if (limb !== undefined || !isCalled({ id: level, name: level }, 'waist')) return [];
		const held = bands.laced ? options.accustomed : body;
		if (held === undefined || garment - held >= -measured) return [];
		const ease = garment - held;
		const grave = -ease > bands.underBody.note + measured;
		const against = bands.laced
			? 'the measure that the wearer is used to being laced to'
			: 'the one measured over the same foundation';
		return [
			{
				code: 'waist-under-body',
				severity: grave ? 'warning' : 'note',
				where: level,
				figure: ease,
				sentence: `The ${level} is ${inches(ease)} under ${against}.${grave ? ` ${care}` : ''}`,
				settle: changeRoundAt(draft, level, spare - ease, settleId('waist-under-body', level))
			}
		];
	});
