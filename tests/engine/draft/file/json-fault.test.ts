import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../../../src/lib/engine/draft/file/json-fault.ts';

function isJson(text: string): boolean {
	try {
		JSON.parse(text);
		return true;
	} catch (error) {
		if (error instanceof SyntaxError) return false;
		throw error;
	}
}

describe('a fault in JSON', () => {
	it('is found in a text if and only if JSON.parse refuses it', () => {
		const spoilt = fc
			.tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '}', ']', '"', '\\', 'x', '-', '\n', '0'))
			.map(([json, at, character]) => {
				const i = at % (json.length + 1);
				return json.slice(0, i) + character + json.slice(i + 1);
			});
		const anything = fc.oneof(fc.json(), spoilt, spoilt, fc.string());
		fc.assert(
			fc.property(anything, (text) => {
				expect(jsonFault(text) === undefined).toBe(isJson(text));
			}),
			{ seed: 20_007, numRuns: 3000 }
		);
	});

	it.each([
		['', 1, 1, 'a value', ''],
		['{\n  "a": 1,\n}', 3, 1, 'a field name in double quotes', '}'],
		['{"a" 1}', 1, 6, 'a colon', '1'],
		['{"a": 1\n "b": 2}', 2, 2, 'a comma or }', '"'],
		['[1 2]', 1, 4, 'a comma or ]', '2'],
		['{"a": 01}', 1, 8, 'a comma or }', '1'],
		["{'a': 1}", 1, 2, 'a field name in double quotes, or }', "'"],
		['[NaN]', 1, 2, 'a value or ]', 'N'],
		['[1e400] x', 1, 9, 'the end of the file', 'x'],
		['{"a": "b\nc"}', 1, 9, 'the closing " of a text (a line break in it is written \\n)', '\n'],
		['["\\q"]', 1, 3, 'a known escape after \\', '\\'],
		['{"a": [1, 2', 1, 12, 'a comma or ]', ''],
		['"open', 1, 6, 'the closing " of a text', '']
	])('in %j is at line %d, column %d: %s is wanted', (text, line, column, wanted, found) => {
		expect(jsonFault(text)).toEqual({ line, column, wanted, found });
	});

	it('is looked for without end in depth or length', () => {
		expect(jsonFault('['.repeat(2_000_000))).toMatchObject({ column: 2_000_001 });
		expect(jsonFault(`"${'a'.repeat(4_000_000)}`)).toMatchObject({ column: 4_000_002 });
	});
});
