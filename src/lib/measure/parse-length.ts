import { formatLength } from './format-length.ts';
import { fractionProblem } from './fraction.ts';
import type { Fraction } from './fraction.ts';
import { plainText, said } from './plain-text.ts';
import type { Unit } from './units.ts';

export interface LengthOptions {
	readonly allowNegative?: boolean;
	/** The greatest length that makes sense here, either way, in mm. */
	readonly max?: number;
}

export interface LengthProblem {
	/** One sentence that says what would be right. What was typed stays in the field. */
	readonly problem: string;
	/** What to write instead, if the sentence asks for it. */
	readonly suggestion?: string;
}

export type ParsedLength = { readonly mm: number } | LengthProblem;

type Mark = 'yd' | 'ft' | 'in' | 'm' | 'cm' | 'mm';

/** Tenths of a millimetre in each, whole numbers, so that a single length comes out as the nearest double to the true one. */
const tenths: Readonly<Record<Mark, number>> = { yd: 9144, ft: 3048, in: 254, m: 10_000, cm: 100, mm: 10 };

const marks: Readonly<Record<string, Mark>> = {
	...same('in', '"', 'in', 'ins', 'inch', 'inches'),
	...same('ft', "'", 'ft', 'foot', 'feet'),
	...same('yd', 'yd', 'yds', 'yard', 'yards'),
	...same('m', 'm', 'metre', 'metres', 'meter', 'meters'),
	...same('cm', 'cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
	...same('mm', 'mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters')
};

/** After feet a bare number is inches, after metres it is centimetres. */
const next: Readonly<Partial<Record<Mark, Mark>>> = { ft: 'in', m: 'cm' };
const order: readonly (readonly Mark[])[] = [
	['yd', 'ft', 'in'],
	['m', 'cm', 'mm']
];

const figures = /^(?:(\d+)(?: ?(?:and|&) ?| |-)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d*)[.,](\d+)|(\d+)(?![\d.,/]))/;
const defaultMax = 3000;
/** Figures after the point that are read; the rest is far under a millionth of a millimetre. */
const decimals = 12;

/**
 * Reads one length as people type it: `3/8`, `1 1/4`, `1-1/4`, `1¼`, `3⅜`, `.5`, `0,5`, `3 1/2"`, `3½″`, `0.6 cm`, `−6 mm`,
 * `1 ft 2 in`, with any kind of space, dash or quote mark. A bare number is in the user's unit. Gives mm, or the sentence
 * that says what would be right; never guesses between two readings.
 */
export function parseLength(typed: string, unit: Unit, options: LengthOptions = {}): ParsedLength {
	const { allowNegative = false, max = defaultMax } = options;
	const example = unit === 'in' ? 'such as 3/8 or 1 1/4' : 'such as 6 mm or 1.5';
	const text = plainText(typed).toLowerCase();
	if (text === '') return { problem: `Write a length here, ${example}.` };
	if (text.length > 80) return { problem: `That is too long for one length. Write it ${example}.` };
	const sign = /^[+-] ?/.exec(text)?.[0] ?? '';
	if (!/\d/.test(text)) return { problem: `“${said(typed)}” is not in figures. Write a length ${example}.` };
	if (/\de[+-]?\d/.test(text)) return { problem: `${said(typed)} is not written out. Write a length ${example}.` };
	const terms = readTerms(text.slice(sign.length), unit, example);
	if ('problem' in terms) return withSign(terms, sign);
	const size = terms.reduce((sum, { value, mark }) => sum + (value.top * tenths[mark]) / (value.bottom * 10), 0);
	if (size > max) return withSign(tooLong(typed, terms, unit, max), sign);
	const negative = sign.startsWith('-') && size > 0;
	if (negative && !allowNegative) {
		const suggestion = text.slice(sign.length);
		return {
			problem: `${said(typed)} is less than nothing, which this length cannot be. Write ${suggestion}?`,
			suggestion
		};
	}
	return { mm: negative ? -size : size };
}

interface Term {
	readonly value: Fraction;
	readonly mark: Mark;
	readonly figures: string;
	/** The unit was written, not taken from the user's choice. */
	readonly marked: boolean;
}

function readTerms(text: string, unit: Unit, example: string): readonly Term[] | LengthProblem {
	const dashed = /^(\d+)(?: - ?| ?- )(\d+\/\d+)(.*)$/.exec(text);
	if (dashed) {
		const suggestion = `${dashed[1]} ${dashed[2]}${dashed[3]}`;
		return { problem: `The dash leaves two readings. Write ${suggestion}?`, suggestion };
	}
	const terms: Term[] = [];
	let at = 0;
	while (at < text.length) {
		const found = figures.exec(text.slice(at));
		if (!found) return { problem: notRead(text, at, terms.length > 0, example) };
		const [whole] = found;
		const value = readFigures(found);
		const after = /^ ?("|'|[a-z]+)?\.?/.exec(text.slice(at + whole.length));
		const word = after?.[1];
		if (word !== undefined && !Object.hasOwn(marks, word))
			return { problem: `“${said(word)}” is not a unit known here. Write in, ft, yd, mm, cm or m after the figures.` };
		const last = terms.at(-1);
		const before = last?.mark;
		const mark = word === undefined ? (before === undefined ? unit : next[before]) : marks[word];
		if (
			last?.marked &&
			last.mark === 'in' &&
			word === undefined &&
			found[4] !== undefined &&
			/^\d+$/.test(last.figures)
		) {
			const suggestion = `${last.figures} ${whole} in`;
			return { problem: `The mark goes after the fraction. Write ${suggestion}?`, suggestion };
		}
		if (mark === undefined || (before !== undefined && !follows(before, mark)))
			return { problem: `${said(text)} reads as more than one length. Write one, ${example}.` };
		const wrong = problemOf(found, mark);
		if (wrong) {
			const rest = text.slice(at + whole.length);
			const suggestion = wrong.instead === undefined ? undefined : text.slice(0, at) + wrong.instead + rest;
			return suggestion === undefined ? { problem: wrong.problem } : { problem: wrong.problem, suggestion };
		}
		terms.push({ value, mark, figures: whole, marked: word !== undefined });
		at += whole.length + (after?.[0].length ?? 0);
		if (text[at] === ' ') at += 1;
	}
	return terms;
}

function problemOf(found: RegExpExecArray, mark: Mark): ReturnType<typeof fractionProblem> {
	const top = found[2] ?? found[4];
	const bottom = found[3] ?? found[5];
	if (top === undefined) return undefined;
	return fractionProblem(Number(found[1] ?? 0), Number(top), Number(bottom), order[1].includes(mark));
}

function readFigures(found: RegExpExecArray): Fraction {
	const [, whole, top, bottom, loneTop, loneBottom, units, parts, count] = found;
	if (top !== undefined) return { top: Number(whole) * Number(bottom) + Number(top), bottom: Number(bottom) };
	if (loneTop !== undefined) return { top: Number(loneTop), bottom: Number(loneBottom) };
	if (count !== undefined) return { top: Number(count), bottom: 1 };
	const read = parts.slice(0, decimals);
	return { top: Number(units + read), bottom: 10 ** read.length };
}

function follows(before: Mark, mark: Mark): boolean {
	return order.some((family) => family.includes(before) && family.indexOf(mark) > family.indexOf(before));
}

function notRead(text: string, at: number, some: boolean, example: string): string {
	const rest = said(text.slice(at));
	if (some) return `“${rest}” is left over after the length. Write one length, ${example}.`;
	return `“${rest}” is not read as a length. Write it ${example}.`;
}

function withSign(found: LengthProblem, sign: string): LengthProblem {
	if (found.suggestion === undefined || !sign.startsWith('-')) return found;
	return { ...found, suggestion: `-${found.suggestion}` };
}

function tooLong(typed: string, terms: readonly Term[], unit: Unit, max: number): LengthProblem {
	const limit = max === defaultMax ? '3 m' : formatLength(max, unit).text;
	const over = `${said(typed)} is over ${limit}, the most that makes sense here.`;
	const only = terms.length === 1 ? terms[0] : undefined;
	const smaller = (['cm', 'mm'] as const).find(
		(mark) =>
			only && tenths[mark] < tenths[only.mark] && (only.value.top * tenths[mark]) / (only.value.bottom * 10) <= max
	);
	if (!only || !smaller) return { problem: `${over} Write a shorter length.` };
	const suggestion = `${only.figures} ${smaller}`;
	return { problem: `${over} Did you mean ${suggestion}?`, suggestion };
}

function same(mark: Mark, ...words: string[]): Record<string, Mark> {
	return Object.fromEntries(words.map((word) => [word, mark]));
}
