import type { Problems } from '../form/form-parts.ts';
import { targetsFor } from '../targets.ts';
import { field, type Typed } from '../typed.ts';
import { inHand, type InHand, type NotThere } from './in-hand.ts';
import type { KeptView } from './kept-view.ts';
import { linksOf } from './links.ts';
import { pinnedRows } from './pinned-rows.ts';
import { closeScene, selectedEdges, sideShown, tableScene } from './scenes.ts';
import { spotsOn } from './spots.ts';
import { toldOf } from './told.ts';

/** What the fitting page shows while these fields are typed. */
export type FittingView = ReturnType<typeof viewOf>;

/**
 * The page from what is kept and what is typed; a sentence where the fields name what is not there. `close`: with the close
 * look, which only narrow screens show.
 */
export function fittingView(kept: KeptView, typed: Typed, { close = true } = {}): FittingView | NotThere {
	const held = inHand(kept, typed);
	return 'notThere' in held ? held : viewOf(held, close);
}

function viewOf(held: InHand, looksClose: boolean) {
	const side = sideShown(held.typed);
	const { typed, hand, number, editing, fixed, read } = held;
	const scene = tableScene(held, side);
	const close = looksClose ? closeScene(held, side) : undefined;
	return {
		typed,
		side,
		hand,
		number,
		...(editing && { editing: { id: editing.id, revision: editing.revision } }),
		...(fixed !== undefined && { fixed }),
		problems: read && 'problems' in read ? whileTyping(read.problems, typed) : {},
		scene,
		close,
		/** The places of the line in the hand on the table, and close. */
		spots: spotsOn(scene, held),
		closeSpots: close ? spotsOn(close, held) : [],
		/** The edges that chalk is rubbed along. */
		selected: selectedEdges(held),
		links: linksOf(held),
		told: toldOf(held),
		pinned: pinnedRows(held),
		/** Offered only while the hand is empty. */
		seamsFirst:
			hand.target || hand.act ? [] : (['seam', 'edge', 'dart'] as const).map((to) => targetsFor(held.after, to))
	};
}

/** What is wrong so far: of fields that are still empty nothing is said before the form is sent. */
export function whileTyping(problems: Problems, typed: Typed): Problems {
	return Object.fromEntries(
		Object.entries(problems).filter(([name]) => field(typed, name) !== '' && name !== 'places')
	);
}
