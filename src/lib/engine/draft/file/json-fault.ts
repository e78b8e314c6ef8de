export interface JsonFault {
	/** From 1. */
	readonly line: number;
	readonly column: number;
	/** What should have been there: "a comma or ]". */
	readonly wanted: string;
	/** The character that is there; empty at the end of the text. */
	readonly found: string;
}

type Wanted = 'value' | 'value or end' | 'key' | 'key or end' | 'colon' | 'comma or end' | 'nothing';

/**
 * The first place where a text stops being JSON (RFC 8259), undefined if it nowhere does. JSON.parse says where only in some
 * engines, and in words of its own.
 */
export function jsonFault(text: string): JsonFault | undefined {
	const open: ('{' | '[')[] = [];
	let wanted: Wanted = 'value';
	let at = 0;
	for (;;) {
		at = past(/[ \t\r\n]*/y, text, at);
		const character = text.charAt(at);
		const inside = open[open.length - 1];
		if (character === '') return wanted === 'nothing' ? undefined : faultAt(text, at, inWords(wanted, inside));
		const value: boolean = wanted === 'value' || wanted === 'value or end';
		const key: boolean = wanted === 'key' || wanted === 'key or end';
		const ends: boolean = wanted.endsWith('or end') && character === (inside === '[' ? ']' : '}');
		if (ends) {
			open.pop();
			at++;
			wanted = open.length === 0 ? 'nothing' : 'comma or end';
		} else if (value && (character === '{' || character === '[')) {
			open.push(character);
			at++;
			wanted = character === '{' ? 'key or end' : 'value or end';
		} else if ((value || key) && character === '"') {
			const end = stringEnd(text, at);
			if (typeof end !== 'number') return faultAt(text, end.at, end.wanted);
			at = end;
			wanted = key ? 'colon' : open.length === 0 ? 'nothing' : 'comma or end';
		} else if (wanted === 'colon' && character === ':') {
			at++;
			wanted = 'value';
		} else if (wanted === 'comma or end' && character === ',') {
			at++;
			wanted = inside === '[' ? 'value' : 'key';
		} else {
			const end = value ? past(/-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?|true|false|null/y, text, at) : at;
			if (end === at) return faultAt(text, at, inWords(wanted, inside));
			at = end;
			wanted = open.length === 0 ? 'nothing' : 'comma or end';
		}
	}
}

function past(token: RegExp, text: string, at: number): number {
	token.lastIndex = at;
	return token.test(text) ? token.lastIndex : at;
}

function stringEnd(text: string, start: number): number | { readonly at: number; readonly wanted: string } {
	for (let at = start + 1; at < text.length; at++) {
		const code = text.charCodeAt(at);
		if (code === 0x22) return at + 1;
		if (code < 0x20) return { at, wanted: 'the closing " of a text (a line break in it is written \\n)' };
		if (code === 0x5c) {
			const end = past(/\\(["\\/bfnrt]|u[0-9a-fA-F]{4})/y, text, at);
			if (end === at) return { at, wanted: 'a known escape after \\' };
			at = end - 1;
		}
	}
	return { at: text.length, wanted: 'the closing " of a text' };
}

function inWords(wanted: Wanted, inside: '{' | '[' | undefined): string {
	const close = inside === '[' ? ']' : '}';
	switch (wanted) {
		case 'value':
			return 'a value';
		case 'value or end':
			return 'a value or ]';
		case 'key':
			return 'a field name in double quotes';
		case 'key or end':
			return 'a field name in double quotes, or }';
		case 'colon':
			return 'a colon';
		case 'comma or end':
			return `a comma or ${close}`;
		case 'nothing':
			return 'the end of the file';
	}
}

function faultAt(text: string, at: number, wanted: string): JsonFault {
	const before = text.slice(0, at);
	const line = before.split('\n').length;
	return { line, column: at - before.lastIndexOf('\n'), wanted, found: String.fromCodePoint(...codePointAt(text, at)) };
}

function codePointAt(text: string, at: number): number[] {
	const code = text.codePointAt(at);
	return code === undefined ? [] : [code];
}
