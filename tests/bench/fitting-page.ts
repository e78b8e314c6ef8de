import { cuttingLines, parseAlteration, parseDraft } from '../../src/lib/engine/index.ts';
import file from '../../src/lib/intake/demo-draft.json';
import { cutPaths } from '../../src/lib/ui/drawing/cut-paths.ts';
import { fittingView, type FittingView } from '../../src/lib/ui/fitting/view/fitting-view.ts';
import { keptView } from '../../src/lib/ui/fitting/view/kept-view.ts';
import { steppedView } from '../../src/lib/ui/fitting/view/stepped-view.ts';
import { report } from './report.ts';
import { steppedInChromium } from './stepped-in-chromium.ts';

/** Pinned on the right alone, each of these makes two of each of its pieces: all six of the demo's jacket become twelve. */
const opened = ['side', 'side-back', 'fore-sleeve'];
const inHand = { act: 'took-in', seam: 'shoulder' };
const amount = 'amount.end:start';

/** The fitting page while a pin is stepped: what it computes, and how long until it is seen. */
export async function fittingPage(): Promise<void> {
	const draft = parseDraft(file);
	const kept = keptView({
		unit: 'in',
		base: draft,
		alterations: opened.map(keptOnTheRight),
		checks: { base: draft, before: draft },
		cut: cutPaths(cuttingLines(draft, { default: 25.4 })),
		piecesOff: [],
		earlier: [],
		letters: {},
		caption: ['Fitting 1']
	});
	let step = 0;
	const typed = () => ({ ...inHand, [amount]: `${1 + (++step % 8)}/16` });
	let shown = whole(fittingView(kept, typed(), { close: false }));
	await report(`The fitting page of ${kept.after.pieces.length} pieces, a pin stepped on each time`, [
		{
			name: 'what is drawn in the frame of the step',
			run: () => (shown = whole(steppedView(kept, typed(), shown)))
		},
		{ name: 'all it shows once the thumb rests', run: () => fittingView(kept, typed(), { close: false }) },
		{ name: 'the same with the close look of narrow screens', run: () => fittingView(kept, typed()) }
	]);
	await steppedInChromium({ opened, inHand, amount });
}

function whole(view: ReturnType<typeof fittingView> | undefined): FittingView {
	if (!view || 'notThere' in view) throw new Error('The bench steps what cannot be stepped.');
	return view;
}

function keptOnTheRight(seam: string, i: number) {
	const id = `right-${i + 1}`;
	const pins = [{ at: { fraction: 0.5 }, a: -2, b: -2 }];
	return {
		...{ id, revision: 1, number: i + 1, position: i + 1, act: 'took-in', note: '', answers: null, pairedWith: null },
		intent: parseAlteration({ id, kind: 'seam', on: 'right', seam, pins }),
		measured: 'one-layer' as const,
		state: 'standing' as const,
		takenOut: false
	};
}
