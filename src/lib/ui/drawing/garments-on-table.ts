import type { Draft } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { layThin } from './lay-thin.ts';
import type { Material, Scene } from './scene.ts';

export interface GarmentDrawn {
	readonly draft: Draft;
	readonly material: Material;
}

/** px that one garment may take where one, two, or three and more lie side by side; the columns of the table are as wide. */
const rooms = [
	{ width: 620, height: 430 },
	{ width: 370, height: 290 },
	{ width: 268, height: 210 }
] as const;
/** px to a mm: a lone small piece is not blown up beyond this. */
const largest = 0.6;

/**
 * Garments in the workroom, all at one common scale (px to a mm): the largest at which each of them fits its place. Few of
 * them have more room each.
 */
export function garmentsOnTable(
	garments: readonly GarmentDrawn[],
	unit: Unit
): { readonly scale: number; readonly scenes: readonly Scene[] } {
	const room = rooms[Math.min(Math.max(1, garments.length), rooms.length) - 1]!;
	const fitting = garments.map(({ draft }) => layThin(draft, { ...room, limbs: true, unit }).scale);
	const scale = Math.min(largest, ...fitting);
	const scenes = garments.map(({ draft, material }) => layThin(draft, { ...room, scale, material, limbs: true, unit }));
	return { scale, scenes };
}
