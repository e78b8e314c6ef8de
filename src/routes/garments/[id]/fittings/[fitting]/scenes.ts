import { cuttingLines, seamsOf, sideOfName, undividedName } from '$lib/engine/index.ts';
import type { Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Fitting } from '$lib/server/journal/records.ts';
import { layClose } from '$lib/ui/drawing/lay-close.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { pinsOfCarried } from '$lib/ui/fitting/carry-each.ts';
import { targetOfIntent } from '$lib/ui/fitting/effect.ts';
import { edgesOfTarget, targetsFor, type Target } from '$lib/ui/fitting/targets.ts';
import { addressOf, field, type Typed } from '$lib/ui/fitting/typed.ts';
import type { InHand } from './in-hand.ts';

export type SideShown = 'right' | 'left';

/** The pieces on the table, old line and new line, with every pin; chalk along the seam in the hand. */
export function tableScene(
	journal: Journal,
	page: GarmentPage,
	fitting: Fitting,
	held: InHand,
	side: SideShown,
	unit: Unit
) {
	const { preview } = held;
	return layTable(preview.after, {
		...shared(journal, page, fitting, held, side, unit),
		...(held.carried.some(({ step }) => step) && { before: preview.before }),
		selected: selectedEdges(held),
		caption: 162,
		...piecesOn(fitting, held)
	});
}

/** The pieces that were on the toile, and any that an alteration reaches all the same; all where none was off. */
function piecesOn({ stateOfToile: { piecesOff = [] } }: Fitting, { carried, hand, preview }: InHand) {
	const reached = [
		...carried.flatMap(({ step }) => step?.touched.map(({ feature }) => feature) ?? []),
		...(hand.target ? edgesOfTarget(preview.after, hand.target) : [])
	].map((name) => undividedName(name.split('/')[0]!));
	const pieces = preview.after.pieces
		.map(({ id }) => undividedName(id))
		.filter((id) => !piecesOff.includes(id) || reached.includes(id));
	return piecesOff.length > 0 ? { pieces } : {};
}

/** A close look at the two edges of the seam in the hand, or of the one that was just kept; nothing for a dart. */
export function closeScene(
	journal: Journal,
	page: GarmentPage,
	fitting: Fitting,
	held: InHand,
	side: SideShown,
	unit: Unit
) {
	const { preview } = held;
	const edges = onSide(selectedEdges(held), side);
	const two = held.hand.target?.of === 'edge' ? edges.slice(0, 1) : twoMates(edges);
	if (two.length === 0) return undefined;
	return layClose(preview.after, {
		...shared(journal, page, fitting, held, side, unit),
		...(held.carried.some(({ step }) => step) && { before: preview.before }),
		edges: two
	});
}

function shared(journal: Journal, page: GarmentPage, fitting: Fitting, held: InHand, side: SideShown, unit: Unit) {
	const cut = toileCut(journal, page, fitting);
	const pins = pinsOfCarried(held.carried, held.numberOf).filter(
		({ feature }) => (sideOfName(feature) ?? side) === side
	);
	return { unit, side, ...(cut && { cut }), pins };
}

/** The cutting lines of the toile on the body. */
function toileCut(journal: Journal, { garment, toiles }: GarmentPage, { toile: id }: Fitting) {
	const toile = toiles.find((one) => one.id === id);
	const draft = toile && journal.version(garment.id, toile.cutFrom)?.draft;
	return draft && cuttingLines(draft, { default: toile.allowance, edges: toile.allowances });
}

/** The edges of the seam or edge in the hand; of the dart, the edge that it opens on. */
function selectedEdges({ hand, focus, preview }: InHand): readonly string[] {
	if (hand.target) return edgesOfTarget(preview.after, hand.target);
	const [one] = focus;
	const id = one && targetOfIntent(one.alteration);
	if (id === undefined) return [];
	const of = (['seam', 'edge', 'dart'] as const).find((word) => word in one.alteration) ?? 'edge';
	return edgesOfTarget(preview.after, { of, id });
}

const onSide = (edges: readonly string[], side: SideShown) =>
	edges.filter((name) => !name.includes(`@${side === 'right' ? 'left' : 'right'}`));

/** The longest run may have many edges: the first of either side. */
const twoMates = (edges: readonly string[]) => (edges.length <= 2 ? edges : [edges[0]!, edges[edges.length - 1]!]);

/** Where each edge of the drawing leads when it is tapped: to its seam or itself, under the act in the hand. */
export function edgeLinks(draft: Draft, { typed, hand, editing }: InHand): Readonly<Record<string, string>> {
	if (editing) return {};
	const offered = hand.act ? targetsFor(draft, hand.act.to) : undefined;
	const links = draft.pieces.flatMap((piece) =>
		piece.edges
			.filter(({ kind }) => kind !== 'fold')
			.map((edge) => {
				const name = `${piece.id}/${edge.id}`;
				const target = targetOfEdge(draft, name, offered);
				return [name, target && addressOf(choosing(typed, target))] as const;
			})
	);
	return Object.fromEntries(links.filter((link): link is [string, string] => link[1] !== undefined));
}

function targetOfEdge(draft: Draft, name: string, offered: readonly Target[] | undefined): Target | undefined {
	const [sewn] = seamsOf(draft, name);
	const targets: readonly Target[] = [
		...(sewn ? [{ of: 'seam', id: undividedName(sewn.seam.id) } as const] : []),
		{ of: 'edge', id: undividedName(name) }
	];
	return targets.find((target) => !offered || offered.some(({ of, id }) => of === target.of && id === target.id));
}

/** The fields with another thing in the hand: what was typed for the one before is let go. */
export function choosing(typed: Typed, target?: Target): Typed {
	const { act = '', side = '' } = typed;
	return { act, side, ...(target && { [target.of]: target.id }) };
}

/** The side that is shown: the one asked for, else the one that the alteration in the hand is carried to. */
export function sideShown(typed: Typed): SideShown {
	return (field(typed, 'side') || field(typed, 'sides')) === 'left' ? 'left' : 'right';
}
