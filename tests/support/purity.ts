import ts from 'typescript';
import type { Source } from './layers.ts';

const pure = /^src\/lib\/(engine|intake|output|measure)\/.*\.ts$/;
const server = /^src\/lib\/server\/.*\.ts$/;

const clockAndChance = ['Date.now', 'Math.random', 'performance.now'];
const outside = [
	'process',
	'crypto',
	'localStorage',
	'document',
	'window',
	'fetch',
	'setTimeout',
	'setInterval',
	'console'
];

/**
 * The sentence for each use of the clock, of chance, of disk, network, process or page in the pure rooms, and of the
 * clock or chance in the server, to which both are handed in. A date made from something given is no clock.
 */
export function purityProblems(sources: readonly Source[]): string[] {
	return sources
		.filter(({ path }) => pure.test(path) || server.test(path))
		.flatMap(({ path, text }) => usesIn(path, text, pure.test(path)).map((use) => `${path}: uses ${use}`));
}

function usesIn(path: string, text: string, wholly: boolean): string[] {
	const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
	const own = declaredIn(source);
	const reaches = (name: string): boolean => wholly && outside.includes(name) && !own.has(name);
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isTypeNode(node)) return;
		if (ts.isPropertyAccessExpression(node)) {
			const said = `${node.expression.getText()}.${node.name.text}`;
			if (clockAndChance.includes(said)) found.push(said);
			if (ts.isIdentifier(node.expression) && reaches(node.expression.text)) found.push(said);
		}
		const called = ts.isCallExpression(node) || ts.isNewExpression(node) ? node.expression : undefined;
		if (called && ts.isIdentifier(called)) {
			if (called.text === 'Date' && !(node as ts.NewExpression).arguments?.length)
				found.push('the clock (Date without a time)');
			if (reaches(called.text)) found.push(called.text);
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

/** The names that a file gives to things of its own: a `document` that is handed in is not the browser's. */
function declaredIn(source: ts.SourceFile): Set<string> {
	const names = new Set<string>();
	const visit = (node: ts.Node): void => {
		const declares =
			ts.isVariableDeclaration(node) ||
			ts.isParameter(node) ||
			ts.isBindingElement(node) ||
			ts.isFunctionDeclaration(node) ||
			ts.isImportSpecifier(node) ||
			ts.isImportClause(node);
		if (declares && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
		ts.forEachChild(node, visit);
	};
	visit(source);
	return names;
}
