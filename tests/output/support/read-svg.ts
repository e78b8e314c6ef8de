import { SaxesParser } from 'saxes';

export interface SvgElement {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	/** Ids of the groups it stands in, outermost first. */
	readonly within: readonly string[];
	text: string;
}

/** Every element of an SVG file in its order, read by a strict XML reader; a file that is not well-formed throws. */
export function readSvg(file: string): SvgElement[] {
	const elements: SvgElement[] = [];
	const open: SvgElement[] = [];
	const parser = new SaxesParser();
	parser.on('opentag', ({ name, attributes }) => {
		const within = open.filter((element) => element.name === 'g').map((element) => element.attributes.id);
		const element = { name, attributes, within, text: '' };
		elements.push(element);
		open.push(element);
	});
	parser.on('text', (text) => {
		const last = open.at(-1);
		if (last) last.text += text;
	});
	parser.on('closetag', () => open.pop());
	parser.write(file).close();
	return elements;
}

export function byId(elements: readonly SvgElement[], id: string): SvgElement {
	const found = elements.filter(({ attributes }) => attributes.id === id);
	if (found.length !== 1) throw new Error(`${found.length} elements have the id ${id}`);
	return found[0];
}
