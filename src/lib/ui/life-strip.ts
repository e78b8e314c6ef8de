import type { Scene } from './drawing/scene.ts';

/** One stage of a garment's life, as its strip shows it. */
export interface Stage {
	/** “Toile 1”. */
	readonly name: string;
	readonly href?: string;
	/** “22 Jan”, “today”. */
	readonly when?: string;
	/** A few words each: “calico, 1″ at the sides”. */
	readonly notes?: readonly string[];
	/** Exactly one stage is now; those before it are done. */
	readonly state: 'done' | 'now' | 'to come';
	readonly scene: Scene;
}
