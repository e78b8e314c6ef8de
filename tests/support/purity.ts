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
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isTypeNode(node)) return;
		if (ts.isPropertyAccessExpression(node)) {
			const said = `${node.expression.getText()}.${node.name.text}`;
			if (clockAndChance.includes(said)) found.push(said);
			if (wholly && ts.isIdentifier(node.expression) && outside.includes(node.expression.text)) found.push(said);
		}
		const called = ts.isCallExpression(node) || ts.isNewExpression(node) ? node.expression : undefined;
		if (called && ts.isIdentifier(called)) {
			if (called.text === 'Date' && !(node as ts.NewExpression).arguments?.length)
				found.push('the clock (Date without a time)');
			if (wholly && outside.includes(called.text)) found.push(called.text);
		}
		ts.forEachChild(node, visit);
	};
	visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
	return found;
}
