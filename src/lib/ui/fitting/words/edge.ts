import { findPlace } from '../../../engine/index.ts';
import type { Alteration, Place } from '../../../engine/index.ts';
import { actDone, directionOf, type Moved } from '../../../measure/directions.ts';
import { lying } from '../../drawing/pins-of-alteration.ts';
import { armholeEdges } from '../armhole-edges.ts';
import { edgeName, edgeOf } from '../feature-names.ts';
import { listPins, sayPins, type SaidPin } from './along.ts';
import { sidesInWords, type Teller } from './told.ts';

type EdgeIntent = Extract<Alteration, { kind: 'edge' }>;

/** Chalked a new line; added or took off at an open edge. */
export const edgeWords: Teller<EdgeIntent> = (draft, { edge: name, on, pins }, unit) => {
	const found = edgeOf(draft, name);
	const along = { of: 'edge', id: name } as const;
	const read = pins.some(({ move }) => move !== undefined);
	const lies = (at: Place): Moved => {
		if (!found) return 'open-edge';
		const whole = `${found.piece.id}/${found.edge.id}`;
		if (armholeEdges(draft).has(whole)) return 'armhole';
		const place = findPlace(draft, whole, at);
		return lying(found.edge, 'problem' in place ? 0 : place.s);
	};
	const said = pins.map(({ at, move = 0 }): SaidPin => {
		const moved = lies(at);
		const way = move === 0 ? {} : ({ way: move < 0 ? 'in' : 'out' } as const);
		return {
			at,
			size: Math.abs(move),
			...done(moved, move),
			amount: { mm: move, ...way, word: directionOf(moved, move) }
		};
	});
	const single = found && found.piece.cut === 'single';
	return {
		subject: edgeName(draft, name),
		...(read && { done: sayPins(draft, along, said, unit) }),
		...(!single && { sides: sidesInWords(on, found?.piece.limb) }),
		amounts: read ? listPins(draft, along, said, unit) : []
	};
};

/** “chalked … lower”, “made … longer”; “took off …”: a direction that is not part of the act follows the amount. */
function done(moved: Moved, move: number): Pick<SaidPin, 'verb' | 'after'> {
	if (move === 0) return { verb: '', after: '' };
	const act = actDone(moved, move);
	if (moved === 'seam' || moved === 'open-edge') return { verb: act, after: '' };
	const [verb] = act.split(' ');
	return { verb, after: directionOf(moved, move) };
}
