/** Places as they are named on a mirrored draft: x to −x, and every edge runs the other way. */
import type { InnerPoint, Place } from '../draft/types.ts';

/** A point inside a piece of a mirrored draft (x to −x), whose edges run the other way. */
export function mirroredInnerPoint(inner: InnerPoint): InnerPoint {
	if ('from' in inner) return { ...inner, from: mirroredPlace(inner.from) };
	if ('mark' in inner) return { ...inner, toward: mirroredPlace(inner.toward) };
	return [-inner[0], inner[1]];
}

/** A place on an edge of a mirrored draft, whose edges run the other way. */
export function mirroredPlace<P extends Place>(at: P): P {
	if ('end' in at) return { ...at, end: at.end === 'start' ? 'finish' : 'start' };
	if ('fraction' in at) return { ...at, fraction: 1 - at.fraction, ...turned(at.offset) };
	return { ...at, ...turned(at.offset) };
}

function turned(offset: number | undefined): { offset?: number } {
	return offset ? { offset: -offset } : {};
}
