import { inch } from '../../measure/units.ts';
import type { Unit } from '../../measure/units.ts';
import type { Measure } from './scene.ts';

/** Crosses stand at least this far apart, px. */
const crossesFrom = 14;
/** Labels on the measure stand at least this far apart, px. */
const labelsFrom = 62;

/** Distance between the crosses in px: one inch (two cm) of this drawing, or the first round number of them with room. */
export function crossStep(scale: number, unit: Unit): number {
	const steps = unit === 'in' ? [1, 2, 3, 6, 12].map((n) => n * inch) : [20, 50, 100, 200, 500];
	return (steps.find((step) => step * scale >= crossesFrom) ?? steps[steps.length - 1]) * scale;
}

/**
 * The measure let into the lower edge of the table: true inches (cm) of the drawing from `zero` on to the right, and back
 * to the left edge without figures. `scale` is px to a mm; widths are px.
 */
export function measureStrip(scale: number, unit: Unit, zero: number, width: number, top: number): Measure {
	const { every, tall, label } = unit === 'in' ? inchSteps(scale) : centimetreSteps(scale);
	const step = every * (unit === 'in' ? inch : 10) * scale;
	const ticks = [];
	for (let i = -Math.floor(zero / step); zero + i * step <= width; i++) {
		const value = i * every;
		const labelled = i >= 0 && Math.abs(value % label) < 1e-9;
		const high = Math.abs(value % tall) < 1e-9;
		const x = zero + step * i;
		const name = i === 0 ? `0 ${unit}` : String(value);
		ticks.push({ x, height: labelled ? 13 : high ? 8 : 4.5, ...(labelled && x < width - 30 && { label: name }) });
	}
	return { top, ticks };
}

/** In inches. */
function inchSteps(scale: number): { every: number; tall: number; label: number } {
	const px = inch * scale;
	const label = [1, 2, 3, 6, 12, 24, 48].find((n) => n * px >= labelsFrom) ?? 48;
	if (px >= 16) return { every: 0.5, tall: 1, label: Math.max(label, 1) };
	return px >= 7 ? { every: 1, tall: 3, label } : { every: 3, tall: 12, label };
}

/** In centimetres. */
function centimetreSteps(scale: number): { every: number; tall: number; label: number } {
	const px = 10 * scale;
	const label = [1, 5, 10, 20, 50, 100].find((n) => n * px >= labelsFrom) ?? 100;
	if (px >= 12) return { every: 0.5, tall: 1, label };
	return px >= 5 ? { every: 1, tall: 5, label } : { every: 5, tall: 10, label };
}
