/** Fitting acts that have cautions of their own. */
export type CautionedAct =
	'any' | 'pinning' | 'slashing' | 'lacing' | 'standing' | 'pressing' | 'alone' | 'touch' | 'photo' | 'closing';

/** Said on every fitting page, with the cautions. */
export const notMedicalAdvice = 'None of this is medical advice; stop if the wearer is unwell.';

/** After this many minutes of standing a chair is offered, quietly (common practice, no source). */
export const offerChairAfter = 15;

/**
 * One plain sentence each. Pins, shears and irons: youth sewing contest and classroom safety sheets; standing and tight
 * clothes: hospital leaflets on fainting; photographs: guide on images under the UK GDPR; the rest common practice.
 */
const cautions: Readonly<Record<CautionedAct, readonly string[]>> = {
	any: [
		'Pins point away from the body; count them in, and out again.',
		'Lace no tighter than the wearer can breathe and sit in.',
		'Rest from standing every quarter of an hour.',
		'Keep shears and irons away from the wearer.',
		'Ask before photographing.'
	],
	pinning: [
		'Pin through the toile only, not what is worn under it.',
		'Lay pins level, their points away from the skin, and never hold them in the mouth.',
		'Near the armholes, the neck and the front use blunt or safety pins.'
	],
	slashing: ['Lift the cloth off the body, put a card behind it, and cut away from the wearer.'],
	lacing: [
		'Loosen in stages, and at once if breath is short, or the wearer feels sick, numb or hot.',
		'Know how the lacing comes undone before it is drawn; do not lace to a number.'
	],
	standing: ['At the first dizziness sit down, or lie with the legs raised, and rise slowly.'],
	pressing: ['Never press cloth on a person; hold the iron by its handle only and rest it on its heel.'],
	alone: ['Alone: safety pins only, laces within reach, a phone by you, and the door unlocked.'],
	touch: ['Say what will be measured, and ask before touching and before each new place.'],
	photo: ['Ask separately for taking a picture, for keeping it and for showing it.'],
	closing: ['Count the pins before the toile comes off.']
};

/** The sentences for an act, without the general ones. */
export function cautionsFor(act: CautionedAct): readonly string[] {
	return cautions[act];
}

export const allCautions: readonly string[] = Object.values(cautions).flat();

/** What to say when fewer pins were counted out than in; nothing when the counts agree. Refuses negative or broken counts. */
export function pinsMissing(countedIn: number, countedOut: number): string | undefined {
	for (const count of [countedIn, countedOut])
		if (!Number.isInteger(count) || count < 0) throw new Error(`pins are counted in whole numbers, not ${count}`);
	const missing = countedIn - countedOut;
	if (missing === 0) return undefined;
	if (missing < 0) return `${-missing} more counted out than in: count again.`;
	return `${missing} not found: check before the toile comes off.`;
}
