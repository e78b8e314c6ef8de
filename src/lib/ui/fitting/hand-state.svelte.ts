import { afterNavigate, beforeNavigate, pushState, replaceState } from '$app/navigation';
import { page } from '$app/state';
import { onMount, untrack } from 'svelte';
import { choosing } from './choosing.ts';
import { inUnit } from './form/in-unit.ts';
import type { FittingGround, GroundAlteration } from './ground.ts';
import type * as LiveModule from './live.ts';
import { onScreen } from './on-screen.ts';
import { stepping } from './stepping.svelte.ts';
import { touched } from './touched.ts';
import { addressOf, type Typed } from './typed.ts';
import type { FittingView } from './view/fitting-view.ts';
import type { KeptView } from './view/kept-view.ts';

type Live = typeof LiveModule;

/** What `load` says of the hand; `here` is the page's address without its question. */
interface Sent {
	readonly here: string;
	readonly ground: FittingGround;
	readonly view: FittingView;
}

/** Milliseconds of quiet before the address follows what is typed: browsers refuse to be told it a hundred times a minute. */
const quiet = 600;

/**
 * The alteration in the hand as it is on this page: what is typed, and everything that follows from it. As the server sent it at
 * first; once the engine is here every change is computed at once, and the address follows, so that Back, a reload and a copy of
 * the address give the same. `waiting`: kept on this device and not yet received. `refused`: what was sent before this page’s script
 * had come, and came back as wrong; the address does not say it.
 */
export function handState(sent: () => Sent, waiting: () => readonly GroundAlteration[], refused?: Typed) {
	let live = $state.raw<Live>();
	let typed = $state.raw<Typed>(refused ?? sent().view.typed);
	let past = $state.raw<readonly Typed[]>([]);
	let future = $state.raw<readonly Typed[]>([]);
	/** What a screen reader was told last: it is told nothing until a step is the last. */
	let spoken = '';
	/** The field that the last step typed in: the letters of one field are one step. */
	let field = '';
	let timer: ReturnType<typeof setTimeout> | undefined;
	/** Whether the screen shows the close look. */
	let narrow = $state(true);
	/** In this page’s unit, whatever page they were typed on. */
	const ours = (fields: Typed) => inUnit(fields, untrack(sent).ground.unit);
	const kept = $derived(live?.keptView(sent().ground, waiting()));
	const steps = stepping();
	const whole = $derived.by((): FittingView => {
		const { view: asSent } = sent();
		if (!live || !kept || (typed === asSent.typed && waiting().length === 0)) return asSent;
		return draw(live, kept, typed) ?? asSent;
	});

	/** While the thumb steps a pin, the whole page is not asked for. */
	const stepped = $derived(kept && steps.of(kept, typed));
	const view = $derived(stepped ?? whole);

	$effect(() => {
		const [module, all, { view: asSent }] = [live, kept, sent()];
		if (!module || !all || view !== asSent || !asSent.hand.pins) return undefined;
		return steps.makeReady(all, asSent, () => draw(module, all, asSent.typed));
	});

	/** Other fields of the same hand: as a step of what is shown, where they are one. */
	function put(next: Typed) {
		untrack(() => {
			if (kept) steps.show(kept, next, step(next));
		});
		typed = next;
	}

	/** The step from what is shown to these fields, where it is one. */
	function step(next: Typed): FittingView | undefined {
		if (!live || !kept) return undefined;
		const [module, all, shown] = [live, kept, steps.from(kept, view)];
		const table = !narrow || onScreen('.table .drawing');
		return steps.step(shown, next, () => module.steppedView(all, next, shown, { table }));
	}

	function draw(module: Live, all: KeptView, fields: Typed): FittingView | undefined {
		const drawn = module.fittingView(all, fields, { close: narrow });
		return 'notThere' in drawn ? undefined : drawn;
	}

	onMount(() => {
		const screen = matchMedia('(max-width: 900px)');
		const measure = () => (narrow = screen.matches);
		measure();
		screen.addEventListener('change', measure);
		void import('./live.ts').then((module) => (live = module));
		// What has not reached the address yet does so before the page goes, or may go.
		const hidden = () => document.visibilityState === 'hidden' && follow();
		addEventListener('pagehide', follow);
		document.addEventListener('visibilitychange', hidden);
		const untouched = touched(steps);
		return () => {
			screen.removeEventListener('change', measure);
			removeEventListener('pagehide', follow);
			document.removeEventListener('visibilitychange', hidden);
			untouched();
			clearTimeout(timer);
			steps.end();
		};
	});
	beforeNavigate(({ type }) => {
		// Where the history goes back, the entry is another’s by now.
		if (type === 'popstate') clearTimeout(timer);
		else follow();
	});
	afterNavigate(({ type }) => {
		clearTimeout(timer);
		const cameBack = type === 'enter' ? refused : undefined;
		if (cameBack) timer = setTimeout(follow, quiet);
		typed = ours((page.state.typed as Typed | undefined) ?? cameBack ?? sent().view.typed);
		past = [];
		future = [];
	});
	// Back and forward among the states that this page has pushed.
	$effect(() => {
		const shown = page.state.typed as Typed | undefined;
		if (shown === undefined || shown === stamped) return;
		clearTimeout(timer);
		stamped = shown;
		typed = ours(shown);
	});
	let stamped: Typed | undefined;

	const address = () => sent().here + addressOf(typed);
	const state = (): App.PageState => ({ typed, address: addressOf(typed), side: view.side });

	/** Brings the address of this entry of the history up to what is typed. */
	function follow() {
		clearTimeout(timer);
		if (stamped === typed) return;
		stamped = typed;
		replaceState(address(), state());
	}

	function remember() {
		past = [...past.slice(-99), typed];
		future = [];
	}

	/** Another amount, place or choice of the same hand. `of`: the field, where it is typed letter by letter. */
	function change(next: Typed, of = '') {
		if (of === '' || of !== field) remember();
		field = of;
		put(next);
		clearTimeout(timer);
		timer = setTimeout(follow, quiet);
	}

	/** Another act, another seam: a step that Back takes back. */
	function choose(next: Typed) {
		follow();
		remember();
		field = '';
		typed = ours(next);
		stamped = typed;
		pushState(address(), state());
	}

	/** Chooses a place of the line in the hand, which gets it if it had not. */
	function choosePlace(key: string | undefined) {
		if (key === undefined) return;
		const places = (view.typed.places ?? '').split(' ').filter((one) => one !== '' && one !== key);
		change({ ...view.typed, places: [...places, key].join(' '), here: key });
	}

	function stepOf(from: readonly Typed[]): Typed | undefined {
		field = '';
		clearTimeout(timer);
		timer = setTimeout(follow, quiet);
		return from[from.length - 1];
	}

	return {
		/** Whether changes are computed here. */
		get live() {
			return live !== undefined;
		},
		get view() {
			return view;
		},
		get typed() {
			return typed;
		},
		/** Whether a step is shown, and what is told is still of the one before. */
		get stepped() {
			return stepped !== undefined;
		},
		/** Shows the whole page, should a step be shown: now, or when the finger is lifted that lies on it. */
		rest: steps.leave,
		get address() {
			return addressOf(typed);
		},
		change,
		/** What was in the hand before, on another page or while this one was read again: no step. */
		takeUp(next: Typed) {
			put(ours(next));
			clearTimeout(timer);
			timer = setTimeout(follow, quiet);
		},
		choose,
		/** A change that the rest of the page is told of at once: the other side. */
		show(next: Typed) {
			change(next);
			follow();
		},
		/** What a button of the form asks for, with the fields as they are. */
		command(fields: Typed) {
			if (live) change(live.afterCommand(fields, sent().ground.unit));
		},
		/** The same while the finger still lies on the button: it is drawn, and shown when the finger is lifted. */
		foresee(fields: Typed) {
			if (live) step(live.afterCommand(fields, sent().ground.unit));
		},
		/** Steps a field (`amount.level:waist`) by so many steps; its place becomes the chosen one. */
		stepBy(name: string, by: number) {
			if (!live) return;
			let next = typed;
			for (let i = 0; i < Math.abs(by); i++)
				next = live.afterCommand({ ...next, do: `${by > 0 ? 'up' : 'down'}:${name}` }, sent().ground.unit);
			change(next);
		},
		choosePlace,
		/** A place of the line in the hand where its drawing was tapped: on an edge, in the piece's own mm. */
		tap(edge: string, point: readonly [number, number]) {
			const { target } = view.hand;
			if (live && kept && target) choosePlace(live.placeTapped(kept.after, target, edge, point, sent().ground.unit));
		},
		/** The same where the seam laid straight was tapped: mm from its start. */
		tapAlong(at: number) {
			const { target } = view.hand;
			if (live && kept && target) choosePlace(live.placeAlong(kept.after, target, at, sent().ground.unit));
		},
		/** A line of shorthand; answers what was not understood. */
		write(line: string) {
			const read = live && kept && live.shorthandAsked(kept, { ...choosing(typed), line });
			if (!read || 'problem' in read) return read;
			choose(read.typed);
			return undefined;
		},
		/** Puts down what is in the hand, the act as well. */
		putDown() {
			choose({ side: view.side });
		},
		/** The same, where it should not have been taken up: no step of the hand, nor of the history. */
		clear() {
			typed = { side: view.side };
			past = [];
			future = [];
			clearTimeout(timer);
			timer = setTimeout(follow);
		},
		/** Says in the address again what is typed: reading the page again has forgotten it. */
		sayAddress() {
			stamped = undefined;
			follow();
		},
		/** What a screen reader is told. */
		spoken: () => (stepped ? spoken : (spoken = live?.spokenHand(whole, sent().ground.unit) ?? '')),
		get canUndo() {
			return past.length > 0;
		},
		get canRedo() {
			return future.length > 0;
		},
		undo() {
			const last = stepOf(past);
			if (!last) return;
			future = [...future, typed];
			past = past.slice(0, -1);
			put(last);
		},
		redo() {
			const next = stepOf(future);
			if (!next) return;
			past = [...past, typed];
			future = future.slice(0, -1);
			put(next);
		}
	};
}

export type HandState = ReturnType<typeof handState>;
