export interface FileProblem {
	/** Where in the file: `pieces[0].edges[2].path`; empty for the file as a whole. */
	readonly path: string;
	/** A sentence that says what would be right. */
	readonly message: string;
}

const mostInMessage = 20;

/** A draft file that is refused, with every problem that was found in it. */
export class DraftError extends Error {
	readonly problems: readonly FileProblem[];

	constructor(problems: readonly FileProblem[]) {
		const shown = problems.slice(0, mostInMessage).map(({ path, message }) => (path ? `${path}: ${message}` : message));
		if (problems.length > mostInMessage) shown.push(`… and ${problems.length - mostInMessage} more.`);
		super(shown.join('\n'));
		this.name = 'DraftError';
		this.problems = problems;
	}
}

/** `['pieces', 0, 'edges']` is written `pieces[0].edges`. */
export function pathText(path: readonly PropertyKey[]): string {
	return path.reduce<string>((text, key) => {
		if (typeof key === 'number') return `${text}[${key}]`;
		return text === '' ? String(key) : `${text}.${String(key)}`;
	}, '');
}
