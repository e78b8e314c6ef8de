import type { Motion, Point } from './engine.ts';

/** Where a drawing was tapped, in the mm of the piece that lies there by this motion; undefined while it is not shown. */
export function tappedAt(event: MouseEvent, [a, b, c, d, e, f]: Motion): Point | undefined {
	const onScreen = (event.currentTarget as SVGGraphicsElement).getScreenCTM();
	if (!onScreen) return undefined;
	const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(onScreen.inverse());
	const area = a * d - b * c;
	return [(d * (x - e) - c * (y - f)) / area, (a * (y - f) - b * (x - e)) / area];
}
