import type { On } from '../../../engine/index.ts';
import { formatLength } from '../../../measure/format-length.ts';
import type { Measured } from '../../../measure/fold.ts';
import type { Act } from '../acts.ts';
import { inSentence } from '../casing.ts';
import {
	canBeWedge,
	cutsOf,
	keptEdge,
	reach,
	staying,
	usuallyStays,
	usualOff,
	type Ends,
	type Staying
} from './cuts-across.ts';
import { listed, wholeName } from '../feature-names.ts';
import type { FieldReader } from '../form/form-parts.ts';
import { crossedBy, findLine, type Crossed, type LineBeside } from './lines-across.ts';
import type { ActRead, IntentRead } from '../form/read-alteration.ts';
import { sidesKept } from '../form/read-readings.ts';
import { readPinnedOn, readSides, type Sides } from '../form/sides-read.ts';
import type { Target } from '../targets.ts';

export const shapes = ['even', 'wedge'] as const;
/** A fold as it lies flat, from line to line; or how deep the tuck stands, which takes out twice that. */
const foldMeasured = ['whole-fold', 'one-layer'] as const;
/** The farthest from its balance line, mm. */
const farthest = 1000;

/** Reads cloth folded across, or slashed and opened: beside which line, across which pieces, how deep at either end, what stays. */
export function readAcross(act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const line = findLine(fields.draft, target.id)!;
	const height = readHeight(line, fields);
	const sides = readSides(fields);
	const measured: Measured | null =
		act.way === 'in'
			? fields.choice(
					'measured',
					foldMeasured,
					'Say what was measured: all that it takes out, or how deep the tuck is.'
				)
			: null;
	const shape = fields.choice('shape', shapes, 'Is it alike all along, or a wedge? Choose one.');
	const pieces = height === undefined ? undefined : readPieces(line, height, fields);
	if (!pieces) return undefined;
	const later = fields.text('read') === 'later';
	const times = (act.way === 'in' ? -1 : 1) * (measured === 'one-layer' ? 2 : 1);
	if (shape === 'wedge' && !canBeWedge(line, pieces))
		return fields.wrong('shape', 'This line runs round and meets itself: it is folded by one depth all along.');
	const depths = later ? {} : readDepths(sides, shape, act, fields);
	const stays = readStays(pieces, line, fields);
	if (sides !== 'both') onlyWhole(pieces, fields);
	if (Object.keys(fields.problems).length > 0) return undefined;
	const kept = pieces.map((one) => keptEdge(one, stays));
	if (kept.includes(undefined)) {
		const { piece } = pieces[kept.indexOf(undefined)];
		const other = stays === 'above' ? 'below' : 'above';
		return fields.wrong(
			'stays',
			`The ${inSentence(wholeName(piece))} ends in a point there: let the part ${other} the line stay.`
		);
	}
	const intent = (on: On, ends: readonly [number, number] | undefined): IntentRead => ({
		kind: 'spread',
		on,
		cuts: cutsOf(line, pieces, kept as readonly string[], ends && [ends[0] * times || 0, ends[1] * times || 0])
	});
	return {
		intents: onSides(sides, depths, intent),
		measured,
		readings: readingsOf(sides, depths, act.way === 'in' ? -1 : 1, fields)
	};
}

/** How far the line lies above its level, mm. */
function readHeight(line: LineBeside, fields: FieldReader): number | undefined {
	if (line.fixed) return 0;
	const way = fields.choice('offWay', ['above', 'below'], 'Above the line, or below it? Choose one.');
	const fresh = fields.text('ticked') === '' && fields.text('off') === '';
	const off = fresh ? usualOff(line, fields.unit) : fields.length('off', { most: farthest });
	if (off === undefined) {
		if (fields.text('off') === '')
			fields.wrong('off', `How far ${way} the ${inSentence(line.name)}? Write 0 for on the line itself.`);
		return undefined;
	}
	const height = way === 'above' ? off : -off;
	if (crossedBy(line, height).length > 0) return height;
	const most = reach(line, way);
	const said = formatLength(most, fields.unit, { denominator: 16, sign: 'never' }).text;
	return fields.wrong(
		'off',
		`So far ${way} the ${inSentence(line.name)} there is no cloth: the pieces end about ${said} ${way} it. Write less.`
	);
}

/** Those that are ticked; all that the line crosses before anything was ticked, so that seams stay matched. */
function readPieces(line: LineBeside, height: number, fields: FieldReader): readonly Crossed[] | undefined {
	const crossed = crossedBy(line, height);
	const ticked = fields.text('ticked') === '' ? crossed : crossed.filter(({ id }) => fields.text(`piece.${id}`) !== '');
	if (ticked.length > 0) return ticked;
	const names = listed(crossed.map(({ piece }) => inSentence(wholeName(piece))));
	return fields.wrong('ticked', `Across which pieces? The line crosses the ${names}. Tick one at least.`);
}

interface Depths {
	readonly right?: Ends;
	readonly left?: Ends;
}

/** As they were read, mm, without the act's sign: at the first end and at the last; of the right (or both) and of the left. */
function readDepths(sides: Sides, shape: (typeof shapes)[number], act: Act, fields: FieldReader): Depths {
	const how = act.way === 'in' ? 'How deep is the fold' : 'How far did it open';
	const one = (name: string, zero: string): number | undefined => {
		const mm = fields.length(name);
		if (mm === undefined && fields.text(name) === '')
			fields.wrong(name, `${how} there? Write it${zero}, or keep it as pinned and not yet read.`);
		return mm;
	};
	const ends = (first: string, last: string): Ends | undefined => {
		const begins = one(first, '');
		const finishes = shape === 'wedge' ? one(last, ' (0: to nothing)') : begins;
		return begins === undefined || finishes === undefined ? undefined : [begins, finishes];
	};
	const right = ends('first', 'last');
	const left = sides === 'each' ? ends('leftFirst', 'leftLast') : undefined;
	if (right && [...right, ...(left ?? [])].every((mm) => mm === 0))
		fields.wrong('first', 'That changes nothing: it is 0 at both ends. Write how deep it was, at one end at least.');
	return { ...(right && { right }), ...(left && { left }) };
}

function readStays(pieces: readonly Crossed[], line: LineBeside, fields: FieldReader): Staying {
	const stays = fields.choice('stays', staying, 'Which part stays where it is: above the line, or below it?');
	return fields.text('stays') === '' ? usuallyStays(pieces, line) : stays;
}

/** A piece that is cut on the fold has no side of its own to fold across by itself. */
function onlyWhole(pieces: readonly Crossed[], fields: FieldReader): void {
	const folded = pieces.find(({ from, to }) => [from, to].some(({ edge }) => edge.kind === 'fold'));
	if (folded)
		fields.wrong(
			'sides',
			`The ${inSentence(wholeName(folded.piece))} is cut on the fold, and the line runs over it from side to side. Carry it to both, or leave that piece out.`
		);
}

function onSides(
	sides: Sides,
	{ right, left }: Depths,
	intent: (on: On, ends: Ends | undefined) => IntentRead
): ActRead['intents'] {
	if (sides !== 'each') return [intent(sides, right)];
	const nothing = (ends: Ends | undefined) => ends !== undefined && ends[0] === 0 && ends[1] === 0;
	if (nothing(right)) return [intent('left', left)];
	if (nothing(left)) return [intent('right', right)];
	return [intent('right', right), intent('left', left)];
}

/** What was read at the two ends of the line, with the act's sign. */
function readingsOf(sides: Sides, { right, left }: Depths, sign: 1 | -1, fields: FieldReader): ActRead['readings'] {
	const pinnedOn = readPinnedOn(fields);
	const first = sides !== 'each' && pinnedOn === 'left' ? 'leftA' : 'rightA';
	const places = right
		? ([0, 1] as const).map((i) => ({
				at: { end: i === 0 ? ('start' as const) : ('finish' as const) },
				[first]: right[i] * sign || 0,
				...(left && { leftA: left[i] * sign || 0 })
			}))
		: [];
	return { pinnedOn, sides: sidesKept(sides, false), places };
}
