import type { EdgePlace, On } from '../../../engine/index.ts';
import type { Act } from '../acts.ts';
import type { FieldReader } from '../form/form-parts.ts';
import type { ActRead, IntentRead } from '../form/read-alteration.ts';
import { sidesKept } from '../form/read-readings.ts';
import { readPinnedOn, readSides } from '../form/sides-read.ts';
import { readPlaceKey } from '../place/place-key.ts';
import { placeProblem } from '../place/places-offered.ts';
import type { Target } from '../targets.ts';
import { bareKey, bustLinesOffered } from './bust-slash.ts';

export const bustWays = ['fuller', 'smaller'] as const;

/** Reads a slash for the bust: fuller or smaller, how far it parted at the point, and where its lines run. */
export function readBustSlash(_act: Act, target: Target, fields: FieldReader): ActRead | undefined {
	const offered = bustLinesOffered(fields.draft, target.id, fields.unit);
	if (!offered)
		return fields.wrong(
			'',
			'This piece has no bust point with an armhole, a side and an edge below it. Mark its bust point first.'
		);
	const way = fields.choice('bust', bustWays, 'For a fuller bust, or for a smaller one? Choose one.');
	const hinge = readPlaceOn('hinge', offered.hinge, fields);
	const dart = readPlaceOn('opens', offered.side, fields);
	const fresh = fields.text('drawn') === '';
	const centred = offered.centre && (fresh || fields.text('centre') !== '');
	const sides = readSides(fields);
	const later = fields.text('read') === 'later';
	const gap = (name: string): number | undefined => {
		const mm = fields.length(name);
		if (mm === undefined) {
			if (!later && fields.text(name) === '')
				fields.wrong(name, 'How far did it part at the bust point? Write it, or keep it as pinned and not yet read.');
			return undefined;
		}
		if (mm === 0) return fields.wrong(name, 'That changes nothing. Write how far it parted or was lapped.');
		return way === 'smaller' ? -mm : mm;
	};
	const right = later ? undefined : gap('first');
	const left = later || sides !== 'each' ? undefined : gap('leftFirst');
	if (!hinge || !dart || Object.keys(fields.problems).length > 0) return undefined;
	const intent = (on: On, parted: number | undefined): IntentRead => ({
		kind: 'bust-spread',
		on,
		piece: target.id,
		point: { mark: 'bust-point', toward: offered.base, short: 0 },
		base: offered.base,
		hinge,
		dart,
		...(centred && { centre: offered.centre }),
		...(parted !== undefined && { gap: parted })
	});
	const pinnedOn = readPinnedOn(fields);
	const first = sides !== 'each' && pinnedOn === 'left' ? 'leftA' : 'rightA';
	const places =
		right === undefined ? [] : [{ at: { fraction: 0.5 }, [first]: right, ...(left !== undefined && { leftA: left }) }];
	return {
		intents: sides === 'each' ? [intent('right', right), intent('left', left)] : [intent(sides, right)],
		measured: null,
		readings: { pinnedOn, sides: sidesKept(sides, false), places }
	};
}

/** A place on the edge that is usual for it; the usual one if none is named. */
function readPlaceOn(name: string, usual: EdgePlace, fields: FieldReader): EdgePlace | undefined {
	const key = fields.text(name);
	if (key === '' || key === bareKey(usual)) return usual;
	const place = readPlaceKey(key);
	if (!place) return fields.wrong(name, `“${key.slice(0, 40)}” is no place. Choose one of those offered.`);
	const problem = placeProblem(fields.draft, { of: 'edge', id: usual.edge }, place);
	return problem === undefined ? { edge: usual.edge, ...place } : fields.wrong(name, problem);
}
