import { flatten, nearestOn } from '../engine/index.ts';
import type { Path } from '../engine/index.ts';
import type { Draft } from './engine.ts';

/** Where one draft is not the other. */
export interface DraftDifference {
	/** The feature named whole: `front/side`, `front/waist-dart`, `seam side`. */
	readonly where: string;
	/** The greatest distance or change of a number there, in mm; undefined where there is more or less than before. */
	readonly greatest?: number;
	readonly sentence: string;
}

/** What is nearer than this is the same, in mm: machines round the last bits of sines and roots differently. */
const same = 1e-6;

/** Edges are followed this closely when their distance is measured, in mm. */
const followed = 0.01;

/**
 * Every feature at which a draft differs from the one that was wanted, in the order of the wanted one. Edges are held
 * against each other as lines, whichever way they are divided into curves; everything else number by number.
 */
export function draftDifferences(found: Draft, wanted: Draft): readonly DraftDifference[] {
	const here = featuresOf(found);
	const there = featuresOf(wanted);
	const lost = [...there].flatMap(([where, feature]) => {
		const other = here.get(where);
		if (other === undefined) return [{ where, sentence: `${where} is not there any more.` }];
		return differenceOf(where, other, feature);
	});
	const more = [...here.keys()].filter((where) => !there.has(where));
	return [...lost, ...more.map((where) => ({ where, sentence: `${where} was not there before.` }))];
}

type Feature = { readonly path: Path } | { readonly data: unknown };

function featuresOf(draft: Draft): ReadonlyMap<string, Feature> {
	const features = new Map<string, Feature>([['draft', { data: { name: draft.name } }]]);
	for (const { edges, darts, foldDarts, notches, marks, pleats, levels, ...piece } of draft.pieces) {
		features.set(piece.id, { data: { ...piece, edges: edges.map(({ id }) => id) } });
		for (const { path, ...edge } of edges) {
			features.set(`${piece.id}/${edge.id}`, { path });
			features.set(`${piece.id}/${edge.id} (kind and lap)`, { data: edge });
		}
		for (const one of [...darts, ...foldDarts, ...notches, ...marks, ...pleats])
			features.set(`${piece.id}/${one.id}`, { data: one });
		levels.forEach((level, index) => features.set(`${piece.id} ${level.level} line ${index + 1}`, { data: level }));
	}
	for (const seam of draft.seams) features.set(`seam ${seam.id}`, { data: seam });
	return features;
}

function differenceOf(where: string, found: Feature, wanted: Feature): DraftDifference[] {
	const apart = 'path' in found && 'path' in wanted ? pathsApart(found.path, wanted.path) : dataApart(found, wanted);
	if (apart === undefined) return [{ where, sentence: `${where} is not the same.` }];
	if (apart <= same) return [];
	return [{ where, greatest: apart, sentence: `${where} differs by ${apart.toPrecision(3)} mm.` }];
}

/** The greatest distance between two lines, both ways; 0 where they are the same to the bit. */
function pathsApart(found: Path, wanted: Path): number {
	if (JSON.stringify(found) === JSON.stringify(wanted)) return 0;
	return Math.max(farthest(found, wanted), farthest(wanted, found));
}

const farthest = (from: Path, to: Path): number =>
	flatten(from, followed).reduce((most, point) => Math.max(most, nearestOn(to, point, same / 10).distance), 0);

/** The greatest difference between numbers that stand at the same place, or undefined where anything else differs. */
function dataApart(found: unknown, wanted: unknown): number | undefined {
	if (typeof found === 'number' && typeof wanted === 'number') return Math.abs(found - wanted);
	if (!isContainer(found) || !isContainer(wanted)) return found === wanted ? 0 : undefined;
	const keys = new Set([...Object.keys(found), ...Object.keys(wanted)]);
	let most = 0;
	for (const key of keys) {
		const apart = dataApart(found[key], wanted[key]);
		if (apart === undefined) return undefined;
		most = Math.max(most, apart);
	}
	return most;
}

const isContainer = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
