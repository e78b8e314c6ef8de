/**
 * How far a value lies outside the stretch between two others, with the sign of the side it lies on; 0 inside. What was so in
 * the base draft is meant, and so is what the draft says: a value on its way from one to the other is not asked about.
 */
export function beyondMeant(value: number, one: number, other: number): number {
	const least = Math.min(one, other);
	const most = Math.max(one, other);
	return value < least ? value - least : value > most ? value - most : 0;
}
