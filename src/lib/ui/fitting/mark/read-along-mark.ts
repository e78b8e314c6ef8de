import type { EdgePlace, Place } from '../../../engine/index.ts';
import { edgeOf } from '../feature-names.ts';
import type { FieldReader } from '../form/form-parts.ts';
import { readPlaceKey } from '../place/place-key.ts';
import { placeProblem } from '../place/places-offered.ts';
import type { Target } from '../targets.ts';
import { freeMarkId, pieceOfEdge } from './mark-places.ts';
import { readMarkSides, type MarkRead } from './mark-sides.ts';
import { idTyped, notchIntent, readNotchPlace } from './read-notch.ts';

/** What can be marked along an open edge. */
export const edgeMarks = ['buttonholes', 'button', 'notch'] as const;
export const shares = ['count', 'spacing'] as const;
export const directions = ['across', 'along'] as const;
/** As handbooks reckon a buttonhole's length: the usual, a worked one, and one for a flat button. */
export const lengthRules = ['diameter-and-thickness', 'worked', 'flat'] as const;

/** Reads buttons, buttonholes or a notch along an open edge. */
export function readAlongMark(target: Target, fields: FieldReader): MarkRead | undefined {
	const what = fields.choice('what', edgeMarks, 'Say what was marked: buttonholes, a button, or a notch.');
	const on = readMarkSides(fields);
	const along = { of: 'edge', id: target.id } as const;
	if (what === 'buttonholes') return readButtonholes(target, on, fields);
	const place = readNotchPlace(along, fields);
	if (!place) return undefined;
	const at: EdgePlace = { edge: target.id, ...place };
	const piece = pieceOfEdge(fields.draft, target.id);
	const id = idTyped(fields) ?? freeMarkId([piece], what);
	if (what === 'notch') return { sides: on, intents: [notchIntent(on, id, at)] };
	const { lap } = edgeOf(fields.draft, target.id)!.edge;
	const inward = fields.text('in') === '' ? Math.max(0, lap) : fields.length('in');
	if (inward === undefined) return undefined;
	return {
		sides: on,
		intents: [
			{ kind: 'mark', on, piece: target.id.split('/')[0], set: { id, kind: 'button', at: { from: at, in: inward } } }
		]
	};
}

/** First and last, how many or how far apart, one at the fullest point; the button's size makes their length. */
function readButtonholes(target: Target, on: MarkRead['sides'], fields: FieldReader): MarkRead | undefined {
	const along = { of: 'edge', id: target.id } as const;
	const first = readNotchPlace(along, fields, 'firstAt', 'firstFrom');
	const last = readNotchPlace(along, fields, 'lastAt', 'lastFrom');
	const fullest = readFullest(target, fields);
	const later = fields.text('read') === 'later';
	const share = later ? {} : readShare(fields);
	const button = later ? undefined : readButton(fields);
	const direction = fields.choice('direction', directions, 'Across the edge, or along it? Choose one.');
	const rule = fields.choice('rule', lengthRules, 'By which rule are they cut? Choose one.');
	if (!first || !last || Object.keys(fields.problems).length > 0) return undefined;
	return {
		sides: on,
		intents: [
			{
				kind: 'mark',
				on,
				piece: target.id.split('/')[0],
				buttonholes: {
					id: idTyped(fields) ?? 'buttonhole',
					edge: target.id,
					first,
					last,
					...(fullest && { fullest }),
					...share,
					...(button && { button }),
					direction,
					rule,
					tape: fields.unit === 'in' ? 'inch' : 'metric'
				}
			}
		]
	};
}

function readFullest(target: Target, fields: FieldReader): Place | undefined {
	const key = fields.text('fullest');
	if (key === '' || key === 'none') return undefined;
	const place = readPlaceKey(key);
	if (!place) return fields.wrong('fullest', 'Where is it fullest? Choose one of the lines offered, or none.');
	const problem = placeProblem(fields.draft, { of: 'edge', id: target.id }, place);
	return problem === undefined ? place : fields.wrong('fullest', problem);
}

function readShare(fields: FieldReader): { readonly count?: number; readonly spacing?: number } {
	const share = fields.choice('share', shares, 'How many, or how far apart? Choose one.');
	if (share === 'spacing') {
		const spacing = fields.length('spacing');
		if (spacing === 0 || fields.text('spacing') === '')
			fields.wrong('spacing', 'How far apart are they? Write the length from one to the next.');
		return spacing ? { spacing } : {};
	}
	const text = fields.text('count');
	const count = Number(text);
	if (/^\d{1,3}$/.test(text) && count >= 2 && count <= 100) return { count };
	fields.wrong(
		'count',
		text === ''
			? 'How many are there? Write a number, 2 or more; or keep it as pinned and not yet read.'
			: `“${text.slice(0, 20)}” is no number of buttonholes. Write 2 or more, in figures; a single button is marked by itself.`
	);
	return {};
}

function readButton(fields: FieldReader): { readonly diameter: number; readonly thickness: number } | undefined {
	const diameter = fields.length('diameter', { most: 150 });
	const thickness = fields.text('thickness') === '' ? 0 : fields.length('thickness', { most: 100 });
	if (diameter === 0 || fields.text('diameter') === '')
		fields.wrong('diameter', 'How wide is the button? Its width makes the length of the buttonhole.');
	return diameter && thickness !== undefined ? { diameter, thickness } : undefined;
}
