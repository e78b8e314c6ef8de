import type { Draft } from './engine.ts';
import { layThin } from './lay-thin.ts';
import type { Scene } from './scene.ts';

/** Small drawings of several drafts at one common scale, the largest at which each fits `width` × `height` px. */
export function layAlike(drafts: readonly Draft[], width: number, height: number): Scene[] {
	const alone = drafts.map((draft) => layThin(draft, { width, height, limbs: true }));
	const scale = Math.min(...alone.map((scene) => scene.scale));
	return drafts.map((draft) => layThin(draft, { width, height, limbs: true, scale }));
}
