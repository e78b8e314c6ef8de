import type { z } from 'zod';
import type { FileProblem } from './draft-error.ts';
import { pathText } from './draft-error.ts';

type Issue = z.core.$ZodIssue;

/** Where the shape of the file is wrong, each with a sentence; `path` as keys, for asking what lies below. */
export interface ShapeProblem extends FileProblem {
	readonly keys: readonly PropertyKey[];
	/** The value is of the right shape apart from fields that nobody knows. */
	readonly harmless: boolean;
}

export function shapeProblems(issues: readonly Issue[], file: unknown): ShapeProblem[] {
	return issues.flatMap((issue) => problemsOf(issue, [], file));
}

function problemsOf(issue: Issue, above: readonly PropertyKey[], file: unknown): ShapeProblem[] {
	const keys = [...above, ...issue.path];
	if (issue.code === 'invalid_union') {
		// A seam's side b: what is no list at all is wrong as a whole, else the list says what is wrong in it.
		const inside = issue.errors.find((branch) =>
			branch.some(({ path, code }) => path.length > 0 || code === 'too_big')
		);
		if (inside) return inside.flatMap((inner) => problemsOf(inner, keys, file));
	}
	return [
		{
			keys,
			path: pathText(keys),
			message: sentence(issue, keys, valueAt(file, keys)),
			harmless: issue.code === 'unrecognized_keys'
		}
	];
}

function valueAt(file: unknown, keys: readonly PropertyKey[]): unknown {
	return keys.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], file);
}

function sentence(issue: Issue, keys: readonly PropertyKey[], value: unknown): string {
	if (value === undefined && issue.code !== 'unrecognized_keys') {
		return `${said(keys)} is missing: it is ${wanted(issue)}.`;
	}
	switch (issue.code) {
		case 'invalid_type':
			return `${said(keys)} should be ${wanted(issue)}, not ${called(value)}.`;
		case 'invalid_value':
			return `${said(keys)} should be ${wanted(issue)}, not ${called(value)}.`;
		case 'invalid_format':
			if (keys[keys.length - 1] === 'name') return 'This name is too long: the most is 200 letters.';
			return keys[keys.length - 1] === 'mate' || (keys.includes('seams') && keys[keys.length - 1] === 'edge')
				? `${called(value)} should name piece and id with a slash between them, like "front/side".`
				: `${called(value)} is no id: use letters, digits and hyphens, like "side-back".`;
		case 'too_big':
			if (issue.origin === 'number')
				return `${called(value)} is too large: nothing lies farther out than ${issue.maximum} mm.`;
			return issue.maximum === 2
				? 'A point is two numbers, across and down: [x, y].'
				: `This list is too long: the most is ${issue.maximum}.`;
		case 'too_small':
			if (issue.origin === 'number')
				return `${called(value)} is too small: nothing lies farther out than ${issue.minimum} mm.`;
			return issue.minimum === 2
				? 'Two are needed here: [x, y] for a point, two points for a line.'
				: 'This list is too short.';
		case 'unrecognized_keys': {
			const known = issue.keys.slice(0, 10).map((key) => `"${key.slice(0, 40)}"`);
			const many = issue.keys.length > 10 ? ' and others' : '';
			return `This format knows no field ${known.join(', ')}${many} here: take it out, or see how it is spelt.`;
		}
		case 'invalid_union':
			return 'Side b should be a list of edges, or "mirror" for a centre seam.';
		default:
			return `This is not what belongs here: ${issue.message}.`;
	}
}

function said(keys: readonly PropertyKey[]): string {
	const key = keys[keys.length - 1];
	return key === undefined ? 'The file' : typeof key === 'number' ? 'This' : `"${String(key)}"`;
}

function wanted(issue: Issue): string {
	if (issue.code === 'invalid_value') return issue.values.map((value) => JSON.stringify(value)).join(' or ');
	if (issue.code === 'invalid_union') return 'a list of edges, or "mirror"';
	if (issue.code !== 'invalid_type') return 'needed';
	switch (issue.expected) {
		case 'number':
			return 'a finite number';
		case 'string':
			return 'text';
		case 'boolean':
			return 'true or false';
		case 'array':
		case 'tuple':
			return 'a list';
		default:
			return 'an object with named fields';
	}
}

/** What somebody wrote, short enough for a sentence. */
function called(value: unknown): string {
	if (typeof value === 'string') return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
	if (Array.isArray(value)) return 'a list';
	if (value === null) return 'null';
	return typeof value === 'object' ? 'an object' : String(value);
}
