import { inches } from '../../draft/say.ts';
import { measured } from '../../geometry/accuracy.ts';
import { findSeam } from '../../draft/find.ts';
import { easeTable } from '../ease-table.ts';
import { changeRoundAt } from '../change-round.ts';
import { asAltered, settleId, type Settling } from '../settle.ts';
import { sleeveSide } from '../sleeve-head.ts';
import { isCalled, sidesInSentence } from '../words.ts';
import { walk } from '../walk.ts';
import type { Range } from '../bands.ts';
import type { Inquiry } from '../inquiry.ts';
import type { Query } from '../types.ts';

/**
 * The ease at a balance line, or the fullness of a sleeve head, is outside the range that was asked for. Figure: the ease, mm. Only
 * with bands that say what is wanted: the published figures disagree, so none is taken for granted.
 */
export const ease: Inquiry = (inspection) => [...atLevels(inspection), ...atSleeveHeads(inspection)];

const atLevels: Inquiry = ({ draft, options, bands }) =>
	easeTable(draft, options.measures ?? {}).flatMap(({ level, limb, ease: there }): Query[] => {
		const wanted = Object.hasOwn(bands.ease, level) ? bands.ease[level] : undefined;
		if (there === undefined || wanted === undefined || limb !== undefined || isWithin(there, wanted)) return [];
		// A waist under the body is a query of its own.
		if (there < 0 && isCalled({ id: level, name: level }, 'waist') && !bands.laced) return [];
		const low = there < wanted.least;
		const code = low ? 'ease-low' : 'ease-high';
		return [
			{
				code,
				severity: 'note',
				where: level,
				figure: there,
				sentence: `${amountOfEase(there)} at the ${level}; ${inches(wanted.least)} to ${inches(wanted.most)} is wanted.`,
				settle: changeRoundAt(draft, level, toward(there, wanted), settleId(code, level))
			}
		];
	});

function amountOfEase(ease: number): string {
	return ease < 0 ? `The garment is ${inches(ease)} under the body` : `There is ${inches(ease)} of ease`;
}

const atSleeveHeads: Inquiry = ({ draft, bands }) => {
	const wanted = bands.sleeveHead;
	if (!wanted) return [];
	return walk(draft).flatMap((walked): Query[] => {
		const seam = findSeam(draft, walked.seam);
		const sleeve = seam && sleeveSide(draft, seam);
		if (!seam || !sleeve) return [];
		const fullness = sleeve === 'b' ? walked.b - walked.a : walked.a - walked.b;
		if (isWithin(fullness, wanted)) return [];
		const low = fullness < wanted.least;
		const code = low ? 'ease-low' : 'ease-high';
		const sides = sidesInSentence(draft, seam);
		const [head, armhole] = sleeve === 'b' ? [sides.b, sides.a] : [sides.a, sides.b];
		const than = fullness < 0 ? `${inches(fullness)} shorter than` : `${inches(fullness)} longer than`;
		const { name, on } = asAltered(seam.id);
		const truing: Settling = {
			id: settleId(code, seam.id),
			kind: 'true-seam',
			on,
			seam: name,
			end: 'finish',
			take: sleeve
		};
		// Truing brings the sides to the fullness that the seam itself says, which settles this only where that is in the range.
		const meant = sleeve === 'b' ? walked.ease : -walked.ease;
		return [
			{
				code,
				severity: 'note',
				where: seam.id,
				figure: fullness,
				sentence: `The ${head} is ${than} the ${armhole}; ${inches(wanted.least)} to ${inches(wanted.most)} longer is wanted.`,
				settle: isWithin(meant, wanted) ? [truing] : []
			}
		];
	});
};

function isWithin(value: number, { least, most }: Range): boolean {
	return value >= least - measured && value <= most + measured;
}

/** How much the round is to change to come a quarter of the way into the range. */
function toward(value: number, { least, most }: Range): number {
	const inside = (most - least) / 4;
	return value < least ? least + inside - value : most - inside - value;
}
