import { easeTable } from '../../engine/index.ts';
import type { Draft } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { Unit } from '../../measure/units.ts';
import { inSentence } from '../fitting/casing.ts';
import { listed } from '../fitting/feature-names.ts';

/** The garment's round at a balance line in two versions, mm; what one of them does not have is absent. */
export interface RoundChange {
	readonly name: string;
	readonly before?: number;
	readonly after?: number;
	readonly change: number;
	/** Over the body, where it was measured. */
	readonly easeBefore?: number;
	readonly easeAfter?: number;
}

/** Less than this is said to be the same, mm: half of a sixteenth of an inch. */
const least = 25.4 / 32;

/** Every balance line of the later draft, then those that only the earlier one has. */
export function roundChanges(
	before: Draft,
	after: Draft,
	measures: Readonly<Record<string, number>> = {}
): readonly RoundChange[] {
	const was = easeTable(before, measures);
	const is = easeTable(after, measures);
	const rows = is.map(({ level, limb, garment, ease }): RoundChange => {
		const old =
			was.find((row) => row.level === level && row.limb === limb) ??
			was.find((row) => row.level === level && row.limb === 'both' && limb !== undefined);
		return {
			name: nameOf(level, limb),
			...(old && { before: old.garment }),
			after: garment,
			change: old ? garment - old.garment : 0,
			...(old?.ease !== undefined && { easeBefore: old.ease }),
			...(ease !== undefined && { easeAfter: ease })
		};
	});
	return rows;
}

export const isChanged = ({ change }: RoundChange) => Math.abs(change) >= least;

/** “waist smaller by 1″ and hip larger by 5/8″, all round”; “as large as it was” where nothing changed by a sixteenth. */
export function roundWords(changes: readonly RoundChange[], unit: Unit): string {
	const said = changes
		.filter(isChanged)
		.map(
			({ name, change }) =>
				`${inSentence(name)} ${change < 0 ? 'smaller' : 'larger'} by ${formatLength(change, unit, { denominator: 16, sign: 'never' }).text}`
		);
	return said.length === 0 ? 'as large as it was at every balance line' : `${listed(said)}, all round`;
}

/** “Ease at the waist was 2″, is 1″.” for every line that was measured and changed. */
export function easeWords(changes: readonly RoundChange[], unit: Unit): string {
	const say = (mm: number) => formatLength(mm, unit, { denominator: 16 }).text;
	return changes
		.filter((one) => isChanged(one) && one.easeBefore !== undefined && one.easeAfter !== undefined)
		.map(
			({ name, easeBefore, easeAfter }) =>
				`Ease at the ${inSentence(name)} was ${say(easeBefore!)}, is ${say(easeAfter!)}.`
		)
		.join(' ');
}

function nameOf(level: string, limb: string | undefined): string {
	const words = level.replaceAll('-', ' ');
	const name = words.charAt(0).toUpperCase() + words.slice(1);
	return limb === 'left' || limb === 'right' ? `${name}, ${limb}` : name;
}
