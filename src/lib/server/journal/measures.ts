import { bodyMeasures } from '../../measure/names.ts';
import type { Problem } from './answer.ts';
import type { Measures } from './records.ts';

/** Longest and shortest body measure that is kept, in mm: what is outside is a slip of the unit, whoever is measured. */
const least = 10;
const most = 5000;

/** The problems of body measures, each under `field.name`. Names are those that `measure` lists. */
export function checkMeasures(field: string, measures: Measures | undefined): Problem[] {
	return Object.entries(measures ?? {}).flatMap(([name, mm]) => {
		const known = bodyMeasures.find(({ key }) => key === name);
		if (!known)
			return [{ field: `${field}.${name}`, sentence: `“${name}” is not one of the measurements that a sheet holds.` }];
		if (typeof mm === 'number' && mm >= least && mm <= most) return [];
		return [{ field: `${field}.${name}`, sentence: `${known.name} must be between 1 cm (3/8″) and 5 m (196″).` }];
	});
}

/** Body measures by the balance line that each is held against, as the engine asks for them. */
export function measuresByLevel(measures: Measures): Readonly<Record<string, number>> {
	return Object.fromEntries(
		bodyMeasures.flatMap(({ key, level }) => (level && key in measures ? [[level, measures[key]!]] : []))
	);
}
