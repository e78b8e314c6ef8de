/**
 * What must come of any alteration of any shape: a right answer or a refusal that helps. Holds it in four rotations, as drawn and
 * mirrored, and gives back what was wrong, a sentence each.
 */
import { Clipper, FillRule } from 'clipper2-ts';
import { carryAlterations, type Carried } from '../../src/lib/engine/alteration/carry.ts';
import { parseAlteration } from '../../src/lib/engine/alteration/parse.ts';
import { kindOf } from '../../src/lib/engine/alteration/registry.ts';
import { outlineCrossing } from '../../src/lib/engine/draft/outline-crossing.ts';
import { mirrorDraft, movePiece } from '../../src/lib/engine/draft/turn-piece.ts';
import type { Draft } from '../../src/lib/engine/draft/types.ts';
import { rotation } from '../../src/lib/engine/geometry/motion.ts';
import { check } from '../../src/lib/engine/review/check.ts';
import { expectAlike, expectSound } from './alteration-law.ts';
import { pointsAlong } from './apart.ts';

/** mm within which the poses must agree. */
const within = 0.05;

export interface Judged {
	readonly verdict: string;
	readonly faults: readonly string[];
}

const poses = [0, 90, 180, 270].flatMap((degrees) =>
	[false, true].map((over) => ({
		name: `turned by ${degrees}°${over ? ' and mirrored' : ''}`,
		over,
		motion: rotation((degrees * Math.PI) / 180, [50, 60])
	}))
);

/** The verdict, `applied` or the code of the refusal, with everything that is wrong about it. */
export function rightOrRefused(draft: Draft, json: object): Judged {
	const alteration = parseAlteration(json);
	const faults: string[] = [];
	let first: { verdict: string; draft: Draft } | undefined;
	for (const { name, over, motion } of poses) {
		const fault = (text: string) => faults.push(`${name}: ${text}, ${JSON.stringify(json)}`);
		const pose = (one: Draft): Draft => {
			const laid = over ? mirrorDraft(one) : one;
			return { ...laid, pieces: laid.pieces.map((piece) => movePiece(piece, motion)) };
		};
		const laid = pose(draft);
		const carried = carryAlterations(laid, [over ? kindOf(alteration).mirrored(alteration) : alteration]);
		const [waiting] = carried.unplaced;
		const verdict = waiting?.code ?? 'applied';
		if (!first) {
			first = { verdict, draft: carried.draft };
			for (const query of check(carried.draft)) if (query.code === 'crosses') fault(query.sentence);
		}
		if (verdict !== first.verdict) fault(`${verdict}, where it was ${first.verdict} as drawn`);
		if (waiting) {
			if (!/^\S.{10,}[.?]$/s.test(waiting.sentence)) fault(`no sentence: ${waiting.sentence}`);
			for (const offer of waiting.settle) {
				const again = carryAlterations(laid, [offer]);
				const problem = again.unplaced[0]?.code ?? problemOf(again);
				if (problem) fault(`offered what does not work (${problem}): ${JSON.stringify(offer)}`);
			}
			continue;
		}
		const problem = problemOf(carried) ?? unlike(carried.draft, pose(first.draft));
		if (problem) fault(problem);
	}
	return { verdict: first!.verdict, faults };
}

/** Closed, finite, clockwise, and simple: by the engine's own look and by the area that another library finds inside. */
function problemOf({ draft }: Carried): string | undefined {
	try {
		expectSound(draft);
	} catch (fault) {
		return (fault as Error).message;
	}
	if (draft.pieces.some(outlineCrossing)) return 'an outline crosses itself';
	for (const piece of draft.pieces) {
		const outline = piece.edges.flatMap(({ path }) => pointsAlong(path, 32)).map(([x, y]) => ({ x, y }));
		const enclosed = Clipper.unionD([outline], [], FillRule.NonZero, 6).reduce(
			(sum, one) => sum + Clipper.areaD(one),
			0
		);
		const area = Clipper.areaD(outline);
		if (Math.abs(Math.abs(enclosed) - Math.abs(area)) > 0.02) return `${piece.id} encloses ${enclosed} of ${area} mm²`;
	}
	return undefined;
}

function unlike(found: Draft, wanted: Draft): string | undefined {
	try {
		expectAlike(found, wanted, within);
		return undefined;
	} catch (fault) {
		return (fault as Error).message;
	}
}
