/**
 * What d3-zoom asks of d3-transition and d3-interpolate, for a page on which nothing glides: there is never a transition to be
 * interrupted, nor a way to be found between two looks. The build puts this in their place, which spares more than half of what
 * looking closer weighs.
 */
import { selection } from 'd3-selection';

export function interrupt(): void {}

/** Where d3-zoom hands over a whole selection, it asks the selection itself. */
Object.assign(selection.prototype, {
	interrupt(this: typeof selection.prototype) {
		return this;
	}
});

/** Thrown: asked for a way to glide along, which is our own mistake. */
export function interpolateZoom(): never {
	throw new Error('A drawing is looked at closer in steps; nothing glides.');
}
