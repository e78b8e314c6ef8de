/**
 * The cautions of the fitting, a plain sentence each. Common practice, no source; the sentence on faintness follows first
 * aid as it is commonly taught (loosen tight clothing).
 */
export const cautions: readonly string[] = [
	'Pins point away from the body; count them in and count them out again.',
	'Lace no tighter than the wearer can breathe and sit in.',
	'After a quarter of an hour of standing, offer a chair.',
	'Keep shears and irons away from the wearer; to slash, lift the cloth off the body with a card behind it and cut away.',
	'Ask before touching, and before each photograph.',
	'If the wearer feels faint, sick, numb or hot, stop and loosen the laces a little at a time.',
	'Alone: safety pins, laces within reach, a phone by you, the door unlocked.'
];

export const notMedicalAdvice = 'None of this is medical advice.';
