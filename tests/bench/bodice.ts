import { carry, parseAlteration, parseDraft, type Draft } from '../../src/lib/engine/index.ts';
import file from '../../src/lib/intake/demo-draft.json';

/** An alteration as the file has it, read once so that reading is not timed. */
export const altered = (json: object) => parseAlteration(json);

const whole = parseDraft(file);

/** The demo's basque jacket with its right and left halves made unlike, so that its six pairs are twelve pieces. */
export const bodice: Draft = carry(
	whole,
	['back/hem', 'side-back/hem', 'under-arm/hem', 'front/hem', 'top-sleeve/wrist', 'under-sleeve/wrist'].map(
		(edge, index) =>
			altered({ id: `p${index}`, kind: 'edge', edge, on: 'right', pins: [{ at: { fraction: 0.5 }, move: 0.5 }] })
	),
	{ queries: false }
).draft;
if (bodice.pieces.length !== 12) throw new Error(`The bench wants twelve pieces and has ${bodice.pieces.length}.`);

/** A side seam taken in at the waist by an amount in mm, blending to nothing at both ends. */
export const takenIn = (mm: number, id = 'take-in', seam = 'side') =>
	altered({
		id,
		kind: 'seam',
		seam,
		on: 'both',
		pins: [
			{ at: { end: 'start' }, a: 0, b: 0 },
			{ at: { level: 'waist' }, a: -mm, b: -mm },
			{ at: { end: 'finish' }, a: 0, b: 0 }
		]
	});

/** Two hundred alterations of three seams in turn: each is taken in by a little, and let out again by a little less. */
export const history = Array.from({ length: 200 }, (_, index) => {
	const seam = ['side', 'side-back', 'under-arm-back'][index % 3];
	const inward = Math.floor(index / 3) % 2 === 0;
	return takenIn(inward ? 3 + (index % 5) * 0.4 : -2.8 - (index % 4) * 0.4, `h${index}`, seam);
});
