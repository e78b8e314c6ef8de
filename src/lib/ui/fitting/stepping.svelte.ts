import type { Typed } from './typed.ts';
import type { FittingView } from './view/fitting-view.ts';
import type { KeptView } from './view/kept-view.ts';

/** Milliseconds after the last step, or after the finger was lifted, until the thumb is taken to rest. */
const rest = 120;

/**
 * When what is drawn: in the frame of a step only what the thumb watches, the whole page once it rests. A step that was drawn is shown
 * for the fields that it was drawn of and for nothing else, so that every other change of the hand, and of what is kept, shows the
 * whole page at once. At rest the whole page comes by itself, and is longer or shorter than the step: while a finger lies on it, it
 * waits, or the button would be gone from under the finger before it is lifted.
 */
export function stepping() {
	let drawn = $state.raw<{ readonly kept: KeptView; readonly typed: Typed; readonly view: FittingView }>();
	let ahead: { readonly from: FittingView; readonly text: string; readonly view: FittingView | undefined } | undefined;
	let ready: { readonly kept: KeptView; readonly sent: FittingView; readonly view: FittingView } | undefined;
	let timer: ReturnType<typeof setTimeout> | undefined;
	let pressed = false;

	function end() {
		clearTimeout(timer);
		drawn = undefined;
	}

	function restLater() {
		clearTimeout(timer);
		if (!pressed) timer = setTimeout(end, rest);
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
		/**
		 * A step from what is shown, which `draw` draws. It may be asked for ahead, while the finger still lies on the button: it is drawn
		 * already when the finger is lifted.
		 */
		step(from: FittingView, typed: Typed, draw: () => FittingView | undefined): FittingView | undefined {
			const text = JSON.stringify(typed);
			if (ahead?.from !== from || ahead.text !== text) ahead = { from, text, view: draw() };
			return ahead.view;
		},
		/** Shows a step until the next, or until the thumb rests; undefined: this change was none. */
		show(kept: KeptView, typed: Typed, view: FittingView | undefined) {
			end();
			if (!view) return;
			drawn = { kept, typed, view };
			restLater();
		},
		/** A finger, or the button of a mouse, lies on the page. */
		press() {
			pressed = true;
			clearTimeout(timer);
		},
		/** It is lifted. */
		lift() {
			pressed = false;
			if (drawn) restLater();
		},
		/** Whatever was stepped is left: a form is sent, the keyboard has gone elsewhere. */
		leave() {
			if (!pressed) end();
		},
		/** The page is left: nothing is drawn any more. */
		end
	};
}
