import { select } from 'd3-selection';
import { zoom, zoomIdentity, type D3ZoomEvent, type ZoomTransform } from 'd3-zoom';

/** How a drawing is looked at: `closer` times as large, its origin at x, y; px of the drawing. */
export interface Look {
	readonly closer: number;
	readonly x: number;
	readonly y: number;
}

export const whole: Look = { closer: 1, x: 0, y: 0 };

const closest = 8;
/** One press of the keys and buttons. */
const step = 1.5;

/** What the keys and buttons of a drawing do. Nothing glides: each is one step. */
export interface Zooming {
	readonly by: (times: 1 | -1) => void;
	readonly whole: () => void;
	/** px of the drawing, to the right and down. */
	readonly pan: (x: number, y: number) => void;
	/** Brings a point of the drawing into view. */
	readonly show: (x: number, y: number) => void;
	readonly end: () => void;
}

/**
 * Makes a drawing be looked at closer by pinching, by the wheel with Ctrl, and moved by one finger or the mouse once it is
 * closer. At its whole size one finger and the wheel scroll the page, as anywhere.
 */
export function zooming(svg: SVGSVGElement, width: number, height: number, look: (now: Look) => void): Zooming {
	let now: ZoomTransform = zoomIdentity;
	const behaviour = zoom<SVGSVGElement, unknown>()
		.extent([
			[0, 0],
			[width, height]
		])
		.translateExtent([
			[0, 0],
			[width, height]
		])
		.scaleExtent([1, closest])
		.filter((event: Event) => {
			if (event.type === 'wheel') return (event as WheelEvent).ctrlKey;
			if (event.type.startsWith('touch')) return now.k > 1 || (event as TouchEvent).touches.length > 1;
			return now.k > 1 && (event as MouseEvent).button === 0;
		})
		.on('zoom', ({ transform }: D3ZoomEvent<SVGSVGElement, unknown>) => {
			now = transform;
			// With two fingers the drawing is pinched at any size; with one it is moved only once there is more than can be seen.
			svg.style.touchAction = now.k > 1 ? 'none' : 'pan-x pan-y';
			look({ closer: now.k, x: now.x, y: now.y });
		});
	const drawing = select(svg).call(behaviour).on('dblclick.zoom', null);
	svg.style.touchAction = 'pan-x pan-y';
	return {
		by: (times) => behaviour.scaleBy(drawing, step ** times),
		whole: () => behaviour.transform(drawing, zoomIdentity),
		pan: (x, y) => behaviour.translateBy(drawing, -x / now.k, -y / now.k),
		show(x, y) {
			const [left, top] = now.apply([x, y]);
			if (left < 0 || top < 0 || left > width || top > height) behaviour.translateTo(drawing, x, y);
		},
		end: () => drawing.on('.zoom', null)
	};
}
