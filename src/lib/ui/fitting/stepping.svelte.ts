import type { Typed } from './typed.ts';
import type { FittingView } from './view/fitting-view.ts';
import type { KeptView } from './view/kept-view.ts';

/** Milliseconds after the last step until the thumb is taken to rest. */
const rest = 120;

/**
 * When what is drawn: in the frame of a step only what the thumb watches, the whole page once it rests. A step that was drawn is shown
 * for the fields that it was drawn of and for nothing else, so that every other change of the hand, and of what is kept, shows the
 * whole page at once.
 */
export function stepping() {
	let drawn = $state.raw<{ readonly kept: KeptView; readonly typed: Typed; readonly view: FittingView }>();
	let ready: { readonly kept: KeptView; readonly sent: FittingView; readonly view: FittingView } | undefined;
	let timer: ReturnType<typeof setTimeout> | undefined;

	/** The whole page now: another control is used, a form is sent, the keyboard has gone elsewhere. */
	function end() {
		clearTimeout(timer);
		drawn = undefined;
	}

	return {
		/**
		 * Draws a page here that was drawn elsewhere, once there is time, so that the first step of it is one as well. Answers how to
		 * give it up.
		 */
		makeReady(kept: KeptView, sent: FittingView, draw: () => FittingView | undefined): () => void {
			const soon = setTimeout(() => {
				const view = draw();
				ready = view && { kept, sent, view };
			}, rest);
			return () => clearTimeout(soon);
		},
		/** What is stepped from, where this is shown. */
		from: (kept: KeptView, shown: FittingView): FittingView =>
			ready?.kept === kept && ready.sent === shown ? ready.view : shown,
		/** The step that was drawn of these fields, while the thumb is not at rest. */
		of: (kept: KeptView, typed: Typed): FittingView | undefined =>
			drawn?.kept === kept && drawn.typed === typed ? drawn.view : undefined,
		/** Shows a step until the next, or until the thumb rests; undefined: this change was none. */
		show(kept: KeptView, typed: Typed, view: FittingView | undefined) {
			end();
			if (!view) return;
			drawn = { kept, typed, view };
			timer = setTimeout(end, rest);
		},
		end
	};
}
