/** Notes a problem: where in the file, and a sentence that says what would be right. */
export type Report = (at: string, message: string) => void;

/** A length as a problem's sentence shows it: enough figures to find it in the file. */
export function inMillimetres(length: number): string {
	return `${Number(length.toFixed(4))} mm`;
}
