import { findEdge, pointAt, seamsOf, sideOfName, undividedName } from '../../../engine/index.ts';
import type { Point } from '../../../engine/index.ts';
import { layClose } from '../../drawing/lay-close.ts';
import { layTable } from '../../drawing/lay-table.ts';
import { sceneStepped } from '../../drawing/scene-stepped.ts';
import type { Scene } from '../../drawing/scene.ts';
import { crossedBy, findLine, type LineBeside } from '../across/lines-across.ts';
import { targetOfIntent } from '../carried/effect.ts';
import { pinsOfEach } from '../carried/pins-of-each.ts';
import { readPlaceKey } from '../place/place-key.ts';
import { edgesOfTarget } from '../targets.ts';
import { field, type Typed } from '../typed.ts';
import type { InHand } from './in-hand.ts';
import { foundOn } from './spots.ts';

export type SideShown = 'right' | 'left';

/** The pieces on the table, old line and new line, with every pin; chalk along the seam in the hand. */
export function tableScene(held: InHand, side: SideShown): Scene {
	return layTable(held.after, {
		...shared(held, side),
		selected: selectedEdges(held),
		caption: held.kept.ground.caption,
		closer: true,
		...piecesOn(held)
	});
}

/** A close look at the two edges of the seam in the hand, or of the one that was just kept; nothing for a dart. */
export function closeScene(held: InHand, side: SideShown): Scene | undefined {
	const { target } = held.hand;
	const line = target?.of === 'across' ? findLine(held.onto, target.id) : undefined;
	const edges = onSide(line ? firstCrossed(held, line) : selectedEdges(held), side);
	const two = target?.of === 'edge' ? edges.slice(0, 1) : twoMates(edges);
	return two.length === 0
		? undefined
		: layClose(held.after, {
				...shared(held, side),
				edges: two,
				...(line && { at: line.level }),
				places: chosenPlace(held, two)
			});
}

/** Where the place that is stepped lies on these edges, on the line as it was before. */
function chosenPlace({ hand, onto }: InHand, edges: readonly string[]): ReadonlyMap<string, Point> {
	const chosen = hand.pins?.allAlong ? undefined : hand.pins?.rows.find(({ here }) => here);
	const place = chosen && readPlaceKey(chosen.key);
	if (!place || !hand.target) return new Map();
	const found = foundOn(onto, hand.target, place);
	return new Map(
		edges.flatMap((name) => {
			const own = found.find(({ edge }) => edge === name || edge === undividedName(name));
			const edge = own && findEdge(onto, own.edge)?.edge;
			return edge ? [[name, pointAt(edge.path, own.s)] as const] : [];
		})
	);
}

/** The two layers of the first seam that a line across crosses; its one edge where it crosses none. */
function firstCrossed({ onto, after }: InHand, line: LineBeside): readonly string[] {
	const [first] = crossedBy(line, 0);
	if (!first) return [];
	const name = `${first.piece.id}/${first.to.edge.id}`;
	const [sewn] = seamsOf(onto, name);
	return edgesOfTarget(after, sewn ? { of: 'seam', id: undividedName(sewn.seam.id) } : { of: 'edge', id: name });
}

/** The pieces that were on the toile, and any that an alteration reaches all the same; all where none was off. */
function piecesOn({ kept, carried, hand, after }: InHand) {
	const { piecesOff } = kept.ground;
	if (piecesOff.length === 0) return {};
	const reached = [
		...carried.flatMap(({ step }) => step?.touched.map(({ feature }) => feature) ?? []),
		...(hand.target ? edgesOfTarget(after, hand.target) : [])
	].map((name) => undividedName(name.split('/')[0]!));
	const pieces = after.pieces
		.map(({ id }) => undividedName(id))
		.filter((id) => !piecesOff.includes(id) || reached.includes(id));
	return { pieces };
}

/** A drawing of the step before with the lines and pins of this one; undefined where it has to be laid anew. */
export function steppedScene(shown: Scene, held: InHand, side: SideShown): Scene | undefined {
	const { carried, focus, number, after } = held;
	const all = () => pinsOn(held, carried, side);
	return sceneStepped(shown, after, { ...linesBefore(held), number, pins: pinsOn(held, focus, side), all });
}

function shared(held: InHand, side: SideShown) {
	const { unit, cut } = held.kept.ground;
	return { unit, side, pins: pinsOn(held, held.carried, side), ...(cut && { cut }), ...linesBefore(held) };
}

const pinsOn = ({ numberOf }: InHand, carried: InHand['carried'], side: SideShown) =>
	pinsOfEach(carried, numberOf).filter(({ feature }) => (sideOfName(feature) ?? side) === side);

/** Nothing is shown as it was before until something is carried. */
const linesBefore = ({ carried, kept }: InHand) =>
	carried.some(({ step }) => step) ? { before: kept.ground.base } : {};

/** The edges of the seam or edge in the hand; of the dart, the edge that it opens on. */
export function selectedEdges({ hand, focus, after }: InHand): readonly string[] {
	if (hand.target) return edgesOfTarget(after, hand.target);
	const [one] = focus;
	const id = one && targetOfIntent(one.alteration);
	if (id === undefined) return [];
	const of = (['seam', 'edge', 'dart'] as const).find((word) => word in one.alteration) ?? 'edge';
	return edgesOfTarget(after, { of, id });
}

const onSide = (edges: readonly string[], side: SideShown) =>
	edges.filter((name) => !name.includes(`@${side === 'right' ? 'left' : 'right'}`));

/** The longest run may have many edges: the first of either side. */
const twoMates = (edges: readonly string[]) => (edges.length <= 2 ? edges : [edges[0]!, edges[edges.length - 1]!]);

/** The side that is shown: the one asked for, else the one that the alteration in the hand is carried to. */
export function sideShown(typed: Typed): SideShown {
	return (field(typed, 'side') || field(typed, 'sides')) === 'left' ? 'left' : 'right';
}
