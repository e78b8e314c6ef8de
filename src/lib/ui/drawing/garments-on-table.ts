import type { Draft } from './engine.ts';
import type { Unit } from '../../measure/units.ts';
import { layThin } from './lay-thin.ts';
import type { Material, Scene } from './scene.ts';

export interface GarmentDrawn {
	readonly draft: Draft;
	readonly material: Material;
}

/** px that one garment may take, three across on the table. */
const cell = { width: 268, height: 210 } as const;
/** px to a mm: a lone small piece is not blown up beyond this. */
const largest = 0.24;

/** Garments in the workroom, all at one common scale (px to a mm): the largest at which each of them fits its place. */
export function garmentsOnTable(
	garments: readonly GarmentDrawn[],
	unit: Unit
): { readonly scale: number; readonly scenes: readonly Scene[] } {
	const fitting = garments.map(({ draft }) => layThin(draft, { ...cell, limbs: true, unit }).scale);
	const scale = Math.min(largest, ...fitting);
	const scenes = garments.map(({ draft, material }) => layThin(draft, { ...cell, scale, material, limbs: true, unit }));
	return { scale, scenes };
}
