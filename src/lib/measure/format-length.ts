import { inch, nearestPart } from './units.ts';
import type { Unit } from './units.ts';

export interface LengthParts {
	readonly sign: '' | '+' | '−';
	/** The whole inches, or the figures of a metric length; empty when only a fraction is left. */
	readonly whole: string;
	/** `3/8`, or empty. The face sets it with the font's fraction feature. */
	readonly fraction: string;
	/** `″`, ` cm`, ` mm`, or empty. */
	readonly mark: string;
	/** The length itself is more than 0.05 mm away from what is written. */
	readonly about: boolean;
}

export interface LengthText {
	readonly text: string;
	readonly parts: LengthParts;
}

export interface FormatOptions {
	/** Eighths (whole millimetres) unless sixteenths (half millimetres) are asked for. */
	readonly denominator?: 8 | 16;
	/** `minus` writes a sign on negative lengths only; `never` leaves it to a word beside the number. */
	readonly sign?: 'minus' | 'always' | 'never';
	readonly mark?: boolean;
}

/** Farther than this from what is written, a length is only about that, in mm. */
const exactWithin = 0.05;

/**
 * A length in mm as the user reads it: inches in whole eighths or sixteenths, never decimals; below 1 cm in millimetres,
 * from there in centimetres with one decimal (two for half millimetres). Halves are rounded away from zero. Refuses what
 * is not a finite number: that is a mistake of ours.
 */
export function formatLength(mm: number, unit: Unit, options: FormatOptions = {}): LengthText {
	if (!Number.isFinite(mm)) throw new Error(`a length must be finite, not ${mm}`);
	const { denominator = 8, sign = 'minus', mark = true } = options;
	const written = unit === 'in' ? inInches(Math.abs(mm), denominator) : inCentimetres(Math.abs(mm), denominator);
	const parts: LengthParts = {
		sign: signOf(mm, written.mm, sign),
		whole: written.whole,
		fraction: written.fraction,
		mark: mark ? written.mark : '',
		about: Math.abs(written.mm - Math.abs(mm)) > exactWithin
	};
	return { text: textOf(parts), parts };
}

interface Written {
	readonly mm: number;
	readonly whole: string;
	readonly fraction: string;
	readonly mark: string;
}

function inInches(mm: number, denominator: 8 | 16): Written {
	const inches = nearestPart(mm / inch, denominator);
	const whole = Math.floor(inches);
	let top = (inches - whole) * denominator;
	let bottom: number = denominator;
	while (top > 0 && top % 2 === 0) {
		top /= 2;
		bottom /= 2;
	}
	return {
		mm: inches * inch,
		whole: whole === 0 && top > 0 ? '' : String(whole),
		fraction: top > 0 ? `${top}/${bottom}` : '',
		mark: '″'
	};
}

function inCentimetres(mm: number, denominator: 8 | 16): Written {
	const steps = denominator === 8 ? 1 : 2;
	const rounded = Math.round(mm * steps) / steps;
	return rounded < 10
		? { mm: rounded, whole: String(rounded), fraction: '', mark: ' mm' }
		: { mm: rounded, whole: String(Math.round(rounded * 10) / 100), fraction: '', mark: ' cm' };
}

function signOf(mm: number, written: number, wanted: 'minus' | 'always' | 'never'): LengthParts['sign'] {
	if (wanted === 'never' || written === 0) return '';
	if (mm < 0) return '−';
	return wanted === 'always' ? '+' : '';
}

function textOf(parts: LengthParts): string {
	const gap = parts.whole !== '' && parts.fraction !== '' ? ' ' : '';
	return parts.sign + parts.whole + gap + parts.fraction + parts.mark;
}
