import type { Point } from './engine.ts';

/** What a drawing does when its line in the hand is tapped, or moved from the keyboard. */
export interface DrawingControl {
	/** Chooses a place of the line. */
	readonly choose: (key: string) => void;
	/** Steps the amount at a place, by so many of its steps. */
	readonly step: (key: string, by: number) => void;
	/** A tap on the line in the hand: on this edge, at this point in its piece's own mm. */
	readonly tap: (edge: string, point: Point) => void;
	/** Puts down what is in the hand. */
	readonly putDown: () => void;
}
