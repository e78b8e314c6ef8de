import type { Place } from '../../../engine/index.ts';

/**
 * A place as it is written in addresses and in the names of fields: `end:start`, `level:waist`, `level:waist*2` (the second
 * crossing), `notch:n1`, `fraction:0.5`; an offset in mm follows a tilde, `level:waist~25.4`. Without spaces: ids have none.
 */
export function placeKey(place: Place): string {
	const offset = place.offset ? `~${place.offset}` : '';
	if ('end' in place) return `end:${place.end}${offset}`;
	if ('level' in place) return `level:${place.level}${place.nth === undefined ? '' : `*${place.nth}`}${offset}`;
	if ('notch' in place) return `notch:${place.notch}${offset}`;
	return `fraction:${place.fraction}${offset}`;
}

/** The place that a key says; undefined for any other text. Whether it is on a seam is asked of the draft. */
export function readPlaceKey(key: string): Place | undefined {
	const found = /^(end|level|notch|fraction):([\w.@-]{1,210})(?:\*([1-9]\d?))?(?:~(-?\d{1,4}(?:\.\d{1,12})?))?$/.exec(
		key
	);
	if (!found) return undefined;
	const [, of, text, nth, typed] = found;
	if (nth !== undefined && of !== 'level') return undefined;
	const offset = typed === undefined ? {} : { offset: Number(typed) };
	if (of === 'end') return text === 'start' || text === 'finish' ? { end: text, ...offset } : undefined;
	if (of === 'notch') return { notch: text, ...offset };
	if (of === 'level') return { level: text, ...(nth === undefined ? {} : { nth: Number(nth) }), ...offset };
	const fraction = Number(text);
	return fraction >= 0 && fraction <= 1 ? { fraction, ...offset } : undefined;
}

/** The places of a form's hidden field, without doubles; what is no place is left out. */
export function readPlaceKeys(text: string | undefined): readonly string[] {
	return [...new Set((text ?? '').split(/\s+/).filter((key) => readPlaceKey(key) !== undefined))];
}
