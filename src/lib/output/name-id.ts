/**
 * The id that a thing has in a printed file: `edge.front.left.side` for the edge `front@left/side`. Characters that an XML
 * name or a PDF name may not hold are written as their code between underscores, so that no two names become one.
 */
export function nameId(kind: string, ...names: readonly string[]): string {
	const parts = names.flatMap((name) => name.split(/[@/]/));
	return [kind, ...parts.map((part) => part.replace(/[^A-Za-z0-9-]/gu, escaped))].join('.');
}

function escaped(character: string): string {
	return `_${(character.codePointAt(0) as number).toString(16)}_`;
}
