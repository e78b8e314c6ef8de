/** The unit that a person reads and types lengths in. Inside, every length is in millimetres. */
export type Unit = 'in' | 'cm';

/** Millimetres in one inch, exactly (international yard and pound agreement, in force 1 July 1959). */
export const inch = 25.4;

export function toMillimetres(inches: number): number {
	return inches * inch;
}

export function toInches(mm: number): number {
	return mm / inch;
}

/** The nearest whole number of parts of an inch, halves away from zero, in inches. */
export function nearestPart(inches: number, parts: 8 | 16 | 32): number {
	const steps = Math.round(Math.abs(inches) * parts);
	return inches < 0 && steps > 0 ? -steps / parts : steps / parts;
}

/** As cutters' tables print it: 3.6 is written 3 5/8 (Vincent's Systems of Cutting, aliquot parts). */
export function nearestEighth(inches: number): number {
	return nearestPart(inches, 8);
}
