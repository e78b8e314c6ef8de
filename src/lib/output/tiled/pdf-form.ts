import type { Document } from '../pdf-document.ts';

/** What a page draws on, as the writer asks it; its types leave that out. */
interface Drawable {
	readonly fonts: Record<string, unknown>;
	readonly xobjects: Record<string, unknown>;
	write(chunk: string): void;
}

type Open = Omit<Document, 'page' | 'ref'> & {
	page: Drawable;
	_ctm: number[];
	ref(data: Record<string, unknown>): { data: Record<string, unknown>; write(chunk: string): void; end(): void };
	addContent(content: string): void;
};

/**
 * Draws once what many pages show: everything that `draw` draws goes into a form of the document (a Form XObject, ISO 32000-1,
 * 8.10) instead of the page, in whatever user unit the page has when the form is shown. The document must have a page.
 *
 * @returns shows the form on the page that is then the document's
 */
export function drawnOnce(document: Document, width: number, height: number, draw: () => void): () => void {
	const open = document as unknown as Open;
	const form = open.ref({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, width, height] });
	const fonts = {};
	const { page, _ctm } = open;
	open.page = Object.create(page, {
		fonts: { value: fonts },
		write: { value: (chunk: string) => form.write(chunk) }
	}) as Drawable;
	open._ctm = [1, 0, 0, 1, 0, 0];
	draw();
	open.page = page;
	open._ctm = _ctm;
	form.data.Resources = { Font: fonts };
	form.end();
	return () => {
		open.page.xobjects.Drawing = form;
		open.addContent('/Drawing Do');
	};
}
