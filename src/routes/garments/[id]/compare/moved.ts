import type { compare, Draft } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Version } from '$lib/server/journal/records.ts';
import { dartMoves, edgeMoves, type OtherMove } from '$lib/ui/compare/other-moves.ts';
import { leastMove, seamMoves, seamOfEdge, stationsOf, type SeamMoves } from '$lib/ui/compare/seam-moves.ts';
import { betweenVersions, touchedBy } from '$lib/ui/compare/touched-by.ts';
import { inSentence } from '$lib/ui/fitting/casing.ts';
import { lookAddress, type Line, type Look } from './look.ts';

interface Compared {
	readonly page: GarmentPage;
	readonly from: Version;
	readonly to: Version;
	/** The draft before, laid over the one after. */
	readonly before: Draft;
	readonly comparison: ReturnType<typeof compare>;
	/** From the base draft to `to`. */
	readonly versions: readonly Version[];
	readonly look: Look;
	readonly unit: Unit;
}

export interface ChosenLine {
	readonly line: Line;
	readonly name: string;
	/** Whole names of the edges and darts that it is of. */
	readonly features: readonly string[];
}

/** What moved between two versions, as tables: seams of the body, seams of limbs, and what no seam joins. */
export function movedTables({ page, from, to, before, comparison, versions, look, unit }: Compared) {
	const seams = seamMoves(to.draft, comparison);
	const others = [...dartMoves(before, to.draft, comparison, unit), ...edgeMoves(before, to.draft, comparison, unit)];
	const between = betweenVersions(from, to);
	const pinsOf = (features: readonly string[]) =>
		touchedBy(versions, features)
			.filter(({ alteration }) => between.has(alteration))
			.flatMap(({ alteration }) => pinOf(page, alteration));
	const hrefOf = (line: Line) => lookAddress(page.garment.id, { ...look, line });
	const seamRow = (seam: SeamMoves) => ({
		...seam,
		href: hrefOf({ kind: 'seam', feature: seam.seam }),
		pins: pinsOf(seam.edges)
	});
	const isSleeveSeam = ({ limb }: SeamMoves) => limb;
	const body = seams.filter((seam) => !isSleeveSeam(seam) && seam.moved);
	const limbs = seams.filter((seam) => isSleeveSeam(seam) && seam.moved);
	return {
		body: { stations: stationsOf(to.draft, false), rows: body.map(seamRow) },
		limbs: { stations: stationsOf(to.draft, true), rows: limbs.map(seamRow) },
		others: others.map((other) => ({
			...other,
			href: hrefOf({ kind: other.kind, feature: other.feature }),
			pins: pinsOf([other.feature])
		})),
		unmoved: seams.filter(({ moved }) => !moved).map(({ name }) => inSentence(name)),
		links: linksOf(to.draft, hrefOf),
		find: (asked: URLSearchParams) => chosenLine(asked, to.draft, seams, others)
	};
}

/** The pin of an alteration: its number, its fitting's number, and whether it still stands. */
function pinOf({ fittings }: GarmentPage, id: string) {
	return fittings.flatMap(({ fitting, alterations }) =>
		alterations
			.filter((alteration) => alteration.id === id)
			.map(({ number, withdrawal }) => ({
				id,
				number,
				fitting: fitting.number,
				table: fitting.kind === 'table',
				withdrawn: withdrawal !== null
			}))
	);
}

/** Where each edge of the drawing leads: to the story of its seam, or to its own. */
function linksOf(draft: Draft, hrefOf: (line: Line) => string): Readonly<Record<string, string>> {
	return Object.fromEntries(
		draft.pieces.flatMap((piece) =>
			piece.edges.map((edge) => {
				const name = `${piece.id}/${edge.id}`;
				const seam = seamOfEdge(draft, name);
				return [name, hrefOf(seam ? { kind: 'seam', feature: seam.id } : { kind: 'edge', feature: name })];
			})
		)
	);
}

/** The line that the address names, else the one that moved the most. */
function chosenLine(
	asked: URLSearchParams,
	draft: Draft,
	seams: readonly SeamMoves[],
	others: readonly OtherMove[]
): ChosenLine | undefined {
	const ofSeam = ({ seam, name, edges }: SeamMoves): ChosenLine => ({
		line: { kind: 'seam', feature: seam },
		name: `${name} seam`,
		features: edges
	});
	const ofOther = ({ kind, feature, name }: OtherMove): ChosenLine => ({
		line: { kind, feature },
		name,
		features: [feature]
	});
	const seam = seams.find((one) => one.seam === asked.get('seam'));
	if (seam) return ofSeam(seam);
	const feature = asked.get('edge') ?? asked.get('dart');
	const other = others.find((one) => one.feature === feature);
	if (other) return ofOther(other);
	const edge = draft.pieces
		.flatMap((piece) =>
			piece.edges.map(({ id, name }) => ({ feature: `${piece.id}/${id}`, name: `${piece.name}, ${inSentence(name)}` }))
		)
		.find((one) => one.feature === feature);
	if (edge) return { line: { kind: 'edge', feature: edge.feature }, name: edge.name, features: [edge.feature] };
	const most = seams
		.map((one) => ({
			one,
			size: Math.max(...one.layers.flatMap(({ along }) => along.map(({ move }) => Math.abs(move))))
		}))
		.filter(({ size }) => size >= leastMove)
		.sort((a, b) => b.size - a.size)[0]?.one;
	return most ? ofSeam(most) : others[0] && ofOther(others[0]);
}
