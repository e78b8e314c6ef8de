import { carry } from '../../src/lib/engine/index.ts';
import { bodice, history, takenIn } from './bodice.ts';
import { report } from './report.ts';

let step = 0;
/** A pin stepped on by a sixteenth at each call, as under the thumb; never the same alteration twice running. */
const stepped = () => takenIn(1.5875 * (1 + (++step % 8)));

/** Asks the last so many steps for all that they tell: they work it out when they are asked. */
function told({ applied }: ReturnType<typeof carry>, last = applied.length): number {
	let rows = 0;
	for (const { touched, round, neighbours } of applied.slice(-last))
		rows += touched.length + round.length + neighbours.length;
	return rows;
}

export const carryOne = () =>
	report('One alteration of a bodice of 12 pieces (wanted: under 1 ms without queries, 2 ms with them)', [
		{ name: 'one alteration', run: () => told(carry(bodice, [stepped()], { queries: false })) },
		{ name: 'one alteration, with queries', run: () => told(carry(bodice, [stepped()])) }
	]);

export function carryHistory(): Promise<void> {
	const { draft, applied, unplaced } = carry(bodice, history, { queries: false });
	const curves = (pieces: typeof draft.pieces) =>
		pieces.flatMap(({ edges }) => edges.flatMap(({ path }) => path)).length;
	return report('A whole history (wanted: under 50 ms)', [
		{
			name: '200 alterations, and what the last did',
			run: () => told(carry(bodice, history, { queries: false }), 1),
			figure: `${applied.length} applied, ${unplaced.length} unplaced; ${curves(bodice.pieces)} lines and curves became ${curves(draft.pieces)}`
		},
		{ name: '200 alterations, and what each of them did', run: () => told(carry(bodice, history, { queries: false })) },
		{ name: '200 alterations, with queries', run: () => carry(bodice, history) }
	]);
}
