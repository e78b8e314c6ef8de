import { kindNamed } from '../../alteration/registry.ts';
import type { AlterationBase, PlacedMove } from '../../alteration/types.ts';
import { findEdge, findSeam } from '../../draft/find.ts';
import { inches } from '../../draft/say.ts';
import type { Draft, Place } from '../../draft/types.ts';
import { undividedName } from '../../draft/undivided-name.ts';
import type { FittingMade, Inquiry } from '../inquiry.ts';
import { settleId, type Settling } from '../settle.ts';
import type { Query } from '../types.ts';
import { edgeInSentence } from '../words.ts';

/**
 * A place of a line that goes the opposite way at this fitting from an earlier one. Figure: what is moved there now, mm on the
 * layer that moves most. Asked with what was worn and who pinned at each; the latest of the earlier fittings is asked about.
 */
export const fittingsDisagree: Inquiry = ({ draft, options }) => {
	const { fitting, earlier = [], alterations = [] } = options;
	if (!fitting) return [];
	return alterations.flatMap((now): Query[] => {
		const before = earlier.toReversed().flatMap((one) =>
			one.alterations.flatMap((then) => {
				const clash = clashOf(now, then);
				return clash ? [{ fitting: one, ...clash }] : [];
			})
		);
		const [latest] = before;
		// What this fitting has let back there itself was thought about: halved, or shared out.
		const thought = alterations.some((other) => other !== now && clashOf(now, other));
		if (!latest || thought) return [];
		const [line] = namesOf(now);
		const said = [
			`${latest.fitting.name} ${moved(latest.then)}${madeHow(latest.fitting)}`,
			`${fitting.name} ${moved(latest.now)}${madeHow(fitting)}`
		].join(', ');
		return [
			{
				code: 'fittings-disagree',
				severity: 'warning',
				where: line,
				figure: most(latest.now),
				sentence: `${lineName(draft, line)} ${placeInSentence(latest.at)}: ${said}. Keep the later, halve it, or try again.`,
				settle: halfBack(now, line)
			}
		];
	});
};

interface Clash {
	readonly at: Place;
	readonly now: readonly number[];
	readonly then: readonly number[];
}

/** The place where two alterations of one line on the same half of the wearer part the most, if they go opposite ways anywhere. */
function clashOf(now: AlterationBase, then: AlterationBase): Clash | undefined {
	const lines = namesOf(then);
	if (!namesOf(now).some((line) => lines.includes(line))) return undefined;
	if (now.on !== 'both' && then.on !== 'both' && now.on !== then.on) return undefined;
	const earlier = movesOf(then);
	return movesOf(now)
		.flatMap(({ at, layers }): Clash[] => {
			const there = earlier.find((one) => samePlace(one.at, at));
			return there && against(layers, there.layers) < 0 ? [{ at, now: layers, then: there.layers }] : [];
		})
		.sort((a, b) => against(a.now, a.then) - against(b.now, b.then))[0];
}

/** Below nothing where the layers go opposite ways on the whole. */
const against = (now: readonly number[], then: readonly number[]) =>
	now.reduce((sum, one, i) => sum + one * (then[i] ?? 0), 0);

const movesOf = (alteration: AlterationBase): readonly PlacedMove[] =>
	kindNamed(alteration.kind)?.movesAt?.(alteration) ?? [];

const namesOf = (alteration: AlterationBase): readonly string[] =>
	kindNamed(alteration.kind)?.names(alteration).map(undividedName) ?? [];

/** The whole of it let back by half: that is how it is halved on top of itself. */
function halfBack(now: AlterationBase, line: string): Settling[] {
	const half = kindNamed(now.kind)?.scaled?.(now, -0.5);
	return half ? [{ ...half, id: settleId('fittings-disagree', line, 'half') }] : [];
}

function samePlace(one: Place, other: Place): boolean {
	const plain = ({ offset = 0, ...place }: Place) => JSON.stringify([Object.entries(place).sort(), offset]);
	return plain(one) === plain(other);
}

const most = (layers: readonly number[]) => Math.max(...layers.map(Math.abs));

/** `in 1/4″`, by the layer that moves most. */
function moved(layers: readonly number[]): string {
	const greatest = layers.reduce((found, one) => (Math.abs(one) > Math.abs(found) ? one : found), 0);
	return `${greatest < 0 ? 'in' : 'out'} ${inches(greatest)}`;
}

const madeHow = ({ how }: FittingMade) => (how === '' ? '' : ` (${how})`);

/** `at the waist`, `half way`, `at notch n1`, `at its start`; how far from there is not said. */
function placeInSentence(place: Place): string {
	const near = place.offset ? 'near' : 'at';
	if ('level' in place) return `${near} the ${place.level}`;
	if ('notch' in place) return `${near} notch ${place.notch}`;
	if ('end' in place) return `${near} its ${place.end}`;
	return place.fraction === 0.5 && !place.offset ? 'half way' : 'part of the way along';
}

function lineName(draft: Draft, line: string): string {
	const seam = findSeam(draft, line) ?? findSeam(draft, `${line}@right`);
	if (seam) return seam.name;
	const edge = findEdge(draft, line) ?? findEdge(draft, line.replace('/', '@right/'));
	const named = edge && edgeInSentence(edge.piece, edge.edge);
	return named ? named.charAt(0).toUpperCase() + named.slice(1) : line;
}
