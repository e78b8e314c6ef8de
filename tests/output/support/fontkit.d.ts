/** As much of the font reader as the tests ask: it brings no types of its own. */
declare module 'fontkit' {
	export interface Font {
		readonly unitsPerEm: number;
		readonly capHeight: number;
		layout(text: string): { readonly advanceWidth: number; readonly glyphs: readonly { readonly name: string }[] };
	}
	export function create(file: Uint8Array): Font;
}
