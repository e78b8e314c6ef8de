import { applyAction, deserialize } from '$app/forms';
import { invalidateAll } from '$app/navigation';
import { nudged, onPicture, type Direction, type PhotoPoint } from '$lib/ui/fitting/photos/photo-points.ts';
import type { PhotoPinShown, PhotoShown } from '$lib/ui/fitting/photos/photos.ts';

/** A pin that is moved by keys is kept when it has rested for this long, in milliseconds. */
const rest = 700;

const arrows: Readonly<Record<string, Direction>> = {
	ArrowLeft: 'left',
	ArrowRight: 'right',
	ArrowUp: 'up',
	ArrowDown: 'down'
};

/**
 * Pins of a photo while they are moved, by arrow keys (with Shift in large steps) or by dragging. They are drawn where they
 * are put at once, and kept when they rest; one that somebody else has moved meanwhile goes where it now stands.
 */
export function pinMoves(photo: () => PhotoShown) {
	const moved = $state<Record<string, PhotoPoint>>({});
	let said = $state('');
	let problem = $state('');
	let timer: ReturnType<typeof setTimeout> | undefined;
	let hand: { pin: PhotoPinShown; box: DOMRect; dragged: boolean } | undefined;
	let justDragged = false;

	const standing = (pin: PhotoPinShown): PhotoPoint => moved[pin.id] ?? pin;

	function byKey(event: KeyboardEvent, pin: PhotoPinShown) {
		const direction = arrows[event.key];
		if (!direction || event.ctrlKey || event.metaKey || event.altKey) return;
		event.preventDefault();
		moved[pin.id] = nudged(standing(pin), direction, photo(), event.shiftKey);
		const { x, y } = moved[pin.id]!;
		said = `${pin.name}: ${Math.round(x * 100)} % from the left, ${Math.round(y * 100)} % from the top`;
		clearTimeout(timer);
		timer = setTimeout(() => void keepNow(pin), rest);
	}

	/** Keeps where a pin has been put, if it has been moved. */
	async function keepNow({ id }: PhotoPinShown) {
		clearTimeout(timer);
		const to = moved[id];
		const pin = photo().pins.find((one) => one.id === id);
		if (!to || !pin) return;
		const body = new FormData();
		const fields = { pin: id, revision: pin.revision, x: to.x, y: to.y };
		for (const [name, value] of Object.entries(fields)) body.set(name, String(value));
		const answer = await fetch('?/move', {
			method: 'POST',
			headers: { 'x-sveltekit-action': 'true', accept: 'application/json' },
			body
		});
		const result = deserialize(await answer.text());
		if (result.type === 'error' || result.type === 'redirect') return applyAction(result);
		const problems = result.type === 'failure' ? (result.data?.problems as Record<string, string> | undefined) : {};
		problem = Object.values(problems ?? {}).join(' ');
		await invalidateAll();
		delete moved[id];
	}

	return {
		/** The pins where they are to be drawn. */
		shown: () => photo().pins.map((pin) => ({ ...pin, ...standing(pin) })),
		said: () => said,
		problem: () => problem,
		byKey,
		keepNow,
		grasp(event: PointerEvent & { currentTarget: Element }, pin: PhotoPinShown) {
			if (event.button !== 0) return;
			event.currentTarget.setPointerCapture(event.pointerId);
			hand = { pin, box: event.currentTarget.closest('svg')!.getBoundingClientRect(), dragged: false };
			justDragged = false;
		},
		drag({ clientX, clientY }: PointerEvent) {
			if (!hand) return;
			const { pin, box } = hand;
			const to = { x: onPicture((clientX - box.left) / box.width), y: onPicture((clientY - box.top) / box.height) };
			const from = standing(pin);
			// A finger that only taps trembles a little.
			if (!hand.dragged && Math.hypot((to.x - from.x) * box.width, (to.y - from.y) * box.height) < 30) return;
			hand.dragged = true;
			moved[pin.id] = to;
		},
		letGo(event: PointerEvent) {
			if (!hand) return;
			const { pin, dragged } = hand;
			hand = undefined;
			justDragged = dragged;
			if (!dragged) return;
			event.preventDefault();
			void keepNow(pin);
		},
		/** The click that ends a drag opens nothing. */
		clicked(event: MouseEvent) {
			if (justDragged) event.preventDefault();
			justDragged = false;
		}
	};
}
