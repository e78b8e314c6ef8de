import { parse } from 'svelte/compiler';
import ts from 'typescript';

/** One thing that a source file asks for. */
export interface Import {
	/** As written, e.g. `../draft/types.ts`; undefined where it is computed when the program runs. */
	readonly specifier: string | undefined;
	/** Whether it leaves nothing in the running program. */
	readonly typeOnly: boolean;
}

/**
 * Every import of a source file: static, re-exported, dynamic, `require` and types written as `import('…')`, read by the
 * compilers' own parsers (TypeScript's; Svelte's for components, their markup included), so that one in a comment or a
 * text does not count. Throws on a component that Svelte cannot parse.
 */
export function importsOf(path: string, text: string): Import[] {
	return path.endsWith('.svelte') ? inComponent(text) : inScript(path, text);
}

function inScript(path: string, text: string): Import[] {
	const kind = path.endsWith('.js') ? ts.ScriptKind.JS : ts.ScriptKind.TS;
	const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
	const found: Import[] = [];
	const add = (node: ts.Node | undefined, typeOnly: boolean): void => {
		found.push({ specifier: node && ts.isStringLiteralLike(node) ? node.text : undefined, typeOnly });
	};
	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, onlyTypes(node.importClause));
		else if (ts.isExportDeclaration(node) && node.moduleSpecifier) add(node.moduleSpecifier, node.isTypeOnly);
		else if (ts.isImportTypeNode(node))
			add(ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, true);
		else if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference))
			add(node.moduleReference.expression, node.isTypeOnly);
		else if (ts.isCallExpression(node) && isLoading(node.expression)) add(node.arguments[0], false);
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

function onlyTypes(clause: ts.ImportClause | undefined): boolean {
	if (!clause) return false;
	if (clause.isTypeOnly) return true;
	const named = clause.namedBindings;
	return !clause.name && !!named && ts.isNamedImports(named) && named.elements.every((element) => element.isTypeOnly);
}

const isLoading = (callee: ts.Expression): boolean =>
	callee.kind === ts.SyntaxKind.ImportKeyword || (ts.isIdentifier(callee) && callee.text === 'require');

/** The parts of Svelte's tree (ESTree, with TypeScript's nodes) that this file reads. */
interface TreeNode {
	readonly type?: unknown;
	readonly source?: { readonly value?: unknown } | null;
	readonly importKind?: string;
	readonly exportKind?: string;
	readonly specifiers?: readonly { readonly importKind?: string }[];
	readonly argument?: { readonly value?: unknown; readonly literal?: { readonly value?: unknown } };
}

function inComponent(text: string): Import[] {
	const found: Import[] = [];
	const add = (value: unknown, typeOnly: boolean): void => {
		found.push({ specifier: typeof value === 'string' ? value : undefined, typeOnly });
	};
	const visit = (value: unknown): void => {
		if (typeof value !== 'object' || value === null) return;
		const node = value as TreeNode;
		if (node.type === 'ImportDeclaration') {
			const named = node.specifiers ?? [];
			add(
				node.source?.value,
				node.importKind === 'type' || (named.length > 0 && named.every((s) => s.importKind === 'type'))
			);
		} else if (node.type === 'ExportNamedDeclaration' || node.type === 'ExportAllDeclaration') {
			if (node.source) add(node.source.value, node.exportKind === 'type');
		} else if (node.type === 'ImportExpression') add(node.source?.value, false);
		else if (node.type === 'TSImportType') add(node.argument?.value ?? node.argument?.literal?.value, true);
		for (const child of Object.values(value)) visit(child);
	};
	visit(parse(text, { modern: true }));
	return found;
}
