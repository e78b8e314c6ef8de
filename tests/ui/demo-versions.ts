import demo from '../../src/lib/intake/demo-draft.json';
import { carry, parseAlteration, parseDraft } from '../../src/lib/engine/index.ts';
import type { Draft } from '../../src/lib/engine/index.ts';

/** The demo's draft as it is brought in. */
export const demoDraft: Draft = parseDraft(demo);

/** The draft with alterations carried, each found its place. */
export function altered(draft: Draft, ...intents: readonly object[]): Draft {
	const alterations = intents.map((intent, i) => parseAlteration({ id: `a${i + 1}`, on: 'both', ...intent }));
	const { draft: after, unplaced } = carry(draft, alterations);
	if (unplaced.length > 0) throw new Error(unplaced.map(({ sentence }) => sentence).join(' '));
	return after;
}

const start = { end: 'start' };
const finish = { end: 'finish' };

/** A seam taken in (negative) or let out at one level, fading to nothing at its ends; mm on each layer. */
export const atLevel = (seam: string, level: string, a: number, b = a) => ({
	kind: 'seam',
	seam,
	pins: [
		{ at: start, a: 0, b: 0 },
		{ at: { level }, a, b },
		{ at: finish, a: 0, b: 0 }
	]
});
