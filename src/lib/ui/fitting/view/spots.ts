import {
	findEdge,
	findPlace,
	findPlaceOnSeam,
	movePoint,
	pointAt,
	tangentAt,
	undividedName
} from '../../../engine/index.ts';
import type { Draft, Place, Point } from '../../../engine/index.ts';
import type { Scene, Spot } from '../../drawing/scene.ts';
import type { PlaceRow } from '../hand.ts';
import { readPlaceKey } from '../place/place-key.ts';
import type { Target } from '../targets.ts';
import type { InHand } from './in-hand.ts';
import { placeSpoken } from './spoken-hand.ts';

/** Half a tick across the line, px. */
const reach = 7;

/**
 * The places of the line in the hand as points of a drawing, on both layers of a seam. They lie on the line as it was before,
 * so that they stay where they are while it is changed. None where the whole line moves by one amount.
 */
export function spotsOn(scene: Scene, { hand, onto, kept }: InHand): readonly Spot[] {
	const { target, pins } = hand;
	if (!target || !pins || pins.allAlong) return [];
	return pins.rows.flatMap((row) =>
		foundOn(onto, target, readPlaceKey(row.key)!).flatMap(({ edge, s }) =>
			spotsAt(scene, onto, edge, s).map((drawn) => ({ ...drawn, ...said(row, kept.ground.unit), edge }))
		)
	);
}

/** The same places as they stand, with what is pinned there now. */
export function spotsSaid(spots: readonly Spot[], { hand, kept }: InHand): readonly Spot[] {
	const rows = new Map((hand.pins?.rows ?? []).map((row) => [row.key, said(row, kept.ground.unit)]));
	return spots.map((spot) => {
		const now = rows.get(spot.key);
		const same = !now || (now.says === spot.says && now.amount === spot.amount && now.here === spot.here);
		return same ? spot : { ...spot, ...now };
	});
}

const said = (row: PlaceRow, unit: 'in' | 'cm') => ({
	key: row.key,
	name: row.name,
	says: placeSpoken(row, unit),
	amount: Math.max(Math.abs(row.a), Math.abs(row.b)),
	here: row.here
});

/** Where a place of a target is, on each of its edges that has it. */
export function foundOn(
	draft: Draft,
	target: Target,
	place: Place
): readonly { readonly edge: string; readonly s: number }[] {
	if (target.of === 'seam')
		return draft.seams
			.filter(({ id }) => undividedName(id) === undividedName(target.id))
			.flatMap((seam) =>
				(seam.b === 'mirror' ? (['a'] as const) : (['a', 'b'] as const)).flatMap((side) => {
					const found = findPlaceOnSeam(draft, seam.id, side, place);
					return 'problem' in found ? [] : [found];
				})
			);
	return edgesNamed(draft, target.id).flatMap((edge) => {
		const found = findPlace(draft, edge, place);
		return 'problem' in found ? [] : [{ edge, s: found.s }];
	});
}

const edgesNamed = (draft: Draft, name: string): readonly string[] =>
	draft.pieces
		.flatMap((piece) => piece.edges.map(({ id }) => `${piece.id}/${id}`))
		.filter((one) => undividedName(one) === undividedName(name));

/** On each piece of the drawing that has the edge; a piece divided since is drawn under a name with its side. */
function spotsAt(scene: Scene, draft: Draft, edge: string, s: number): readonly Pick<Spot, 'at' | 'across'>[] {
	const found = findEdge(draft, edge);
	if (!found) return [];
	const [ownPiece] = edge.split('/');
	return scene.pieces.flatMap(({ id, motion }) => {
		if (!motion || (id !== ownPiece && undividedName(id) !== ownPiece)) return [];
		const at = movePoint(motion, pointAt(found.edge.path, s));
		if (at[0] < 0 || at[1] < 0 || at[0] > scene.width || at[1] > scene.height) return [];
		const [tx, ty] = tangentAt(found.edge.path, s, s > 0 ? 'before' : 'after');
		const [x, y] = [motion[0] * tx + motion[2] * ty, motion[1] * tx + motion[3] * ty];
		const long = Math.hypot(x, y) || 1;
		const out: Point = [(-y / long) * reach, (x / long) * reach];
		return [
			{
				at,
				across: [
					[at[0] - out[0], at[1] - out[1]],
					[at[0] + out[0], at[1] + out[1]]
				] as const
			}
		];
	});
}
