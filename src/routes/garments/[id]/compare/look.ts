/** A line of the drawing that is looked at: a seam by its id, an edge or a dart by its whole name. */
export interface Line {
	readonly kind: 'seam' | 'edge' | 'dart';
	readonly feature: string;
}

/** What the page of the comparison shows; all of it is in its address. */
export interface Look {
	readonly from: number;
	readonly to: number;
	/** The anchor that the two are laid on. */
	readonly on: string;
	readonly line?: Line;
}

export function lookAddress(garment: string, { from, to, on, line }: Look): string {
	const asked = new URLSearchParams({ from: String(from), to: String(to), on });
	if (line) asked.set(line.kind, line.feature);
	return `/garments/${garment}/compare?${asked}`;
}
