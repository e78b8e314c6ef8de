/**
 * Body measurements: what they are called, how each is taken, and which balance line of a garment each is held against.
 *
 * The terms are those of ISO 8559-1:2017, Size designation of clothes, Part 1: Anthropometric definitions for body
 * measurement (EN ISO 8559-1:2020; it superseded EN 13402-1), as the upper-body items of ISO 8559:1989 are listed in
 * Gupta and Zakaria (eds), Anthropometry, Apparel Sizing and Design (2014), table 4.1. How to take each is said in our own
 * words. Measures that the trade uses and that list does not hold are marked `own`.
 */

export const isoStandard = 'ISO 8559-1:2017';

export interface BodyMeasure {
	readonly key: string;
	readonly name: string;
	readonly how: string;
	readonly group: 'round' | 'width' | 'length';
	/** The standard's term for it, or `own`. */
	readonly isoReference: string;
	/** The balance line of a garment whose round is held against it. */
	readonly level?: string;
}

export const bodyMeasures: readonly BodyMeasure[] = [
	{
		key: 'neck',
		name: 'Neck',
		how: 'Round the neck, just below the voice box in front and over the prominent bone at the back.',
		group: 'round',
		isoReference: 'neck girth'
	},
	{
		key: 'neck-base',
		name: 'Neck base',
		how: 'Round the root of the neck, where a close necklace lies.',
		group: 'round',
		isoReference: 'neck-base girth'
	},
	{
		key: 'upper-chest',
		name: 'Upper chest',
		how: 'Round the body close under the arms: over the shoulder blades and above the fullest part in front.',
		group: 'round',
		isoReference: 'chest girth'
	},
	{
		key: 'bust',
		name: 'Bust',
		how: 'Level round the fullest part, standing and breathing as usual, the tape neither tight nor loose.',
		group: 'round',
		isoReference: 'bust girth',
		level: 'bust'
	},
	{
		key: 'under-bust',
		name: 'Under-bust',
		how: 'Level round the ribs, close below the bust.',
		group: 'round',
		isoReference: 'own'
	},
	{
		key: 'waist',
		name: 'Waist',
		how: 'Level round the natural waist, half way between the lowest rib and the top of the hip bone at the side.',
		group: 'round',
		isoReference: 'waist girth',
		level: 'waist'
	},
	{
		key: 'hip',
		name: 'Hip',
		how: 'Level round the fullest part of the seat, feet together.',
		group: 'round',
		isoReference: 'hip girth',
		level: 'hip'
	},
	{
		key: 'shoulder-girth',
		name: 'Round the shoulders',
		how: 'Level round the body over both upper arms, just below the shoulder bones, arms hanging.',
		group: 'round',
		isoReference: 'own'
	},
	{
		key: 'armscye',
		name: 'Armhole',
		how: 'Over the end of the shoulder and round under the arm, where the armhole seam is wanted.',
		group: 'round',
		isoReference: 'armscye girth'
	},
	{
		key: 'upper-arm',
		name: 'Upper arm',
		how: 'Round the fullest part of the upper arm, the arm hanging a little bent.',
		group: 'round',
		isoReference: 'upper-arm girth',
		level: 'upper-arm'
	},
	{
		key: 'elbow',
		name: 'Elbow',
		how: 'Round the elbow with the arm bent.',
		group: 'round',
		isoReference: 'own',
		level: 'elbow'
	},
	{
		key: 'wrist',
		name: 'Wrist',
		how: 'Round the wrist over the outer bone.',
		group: 'round',
		isoReference: 'own',
		level: 'wrist'
	},
	{
		key: 'chest-width',
		name: 'Width of chest',
		how: 'Across the front from armhole to armhole, about half way down the armhole.',
		group: 'width',
		isoReference: 'own'
	},
	{
		key: 'back-width',
		name: 'Width of back',
		how: 'Across the back from armhole to armhole, where the arms part from the back.',
		group: 'width',
		isoReference: 'back width'
	},
	{
		key: 'shoulder-width',
		name: 'Shoulder to shoulder',
		how: 'Across the back from the end of one shoulder to the end of the other.',
		group: 'width',
		isoReference: 'shoulder width'
	},
	{
		key: 'bust-point-width',
		name: 'Between the bust points',
		how: 'From one bust point straight to the other.',
		group: 'width',
		isoReference: 'own'
	},
	{
		key: 'shoulder-length',
		name: 'Shoulder length',
		how: 'Along the top of the shoulder from the side of the neck to the end of the shoulder.',
		group: 'length',
		isoReference: 'shoulder length'
	},
	{
		key: 'scye-depth',
		name: 'Depth of armhole',
		how: 'At the back, from the prominent neck bone down to the level of the underarm.',
		group: 'length',
		isoReference: 'scye depth'
	},
	{
		key: 'back-waist-length',
		name: 'Length of back',
		how: 'From the prominent neck bone down the middle of the back to the waist.',
		group: 'length',
		isoReference: 'cervicale to waist (back)'
	},
	{
		key: 'front-waist-length',
		name: 'Length of front',
		how: 'From the prominent neck bone over the side of the neck and the bust point down to the waist in front.',
		group: 'length',
		isoReference: 'cervicale to waist (front)'
	},
	{
		key: 'neck-to-waist-front',
		name: 'Neck side to waist',
		how: 'From where the shoulder meets the neck over the bust point down to the waist.',
		group: 'length',
		isoReference: 'neck-shoulder point to waist'
	},
	{
		key: 'neck-to-breast-point',
		name: 'Neck side to bust point',
		how: 'From where the shoulder meets the neck down to the bust point.',
		group: 'length',
		isoReference: 'neck-shoulder point to breast point'
	},
	{
		key: 'nape-to-breast-point',
		name: 'Nape to bust point',
		how: 'From the prominent neck bone round the side of the neck to the bust point.',
		group: 'length',
		isoReference: 'cervicale to breast point'
	},
	{
		key: 'underarm-length',
		name: 'Underarm to waist',
		how: 'At the side, from the level of the underarm straight down to the waist.',
		group: 'length',
		isoReference: 'underarm length'
	},
	{
		key: 'waist-to-hip',
		name: 'Waist to hip line',
		how: 'At the side, from the waist down to where the hip was measured.',
		group: 'length',
		isoReference: 'own'
	},
	{
		key: 'arm-length',
		name: 'Length of arm',
		how: 'From the end of the shoulder over the bent elbow to the wrist bone.',
		group: 'length',
		isoReference: 'own'
	},
	{
		key: 'height',
		name: 'Height',
		how: 'Standing without shoes, from the floor to the crown.',
		group: 'length',
		isoReference: 'own'
	}
];

/** Values of one measurement sheet, in mm by key. */
export type MeasurementSheet = Readonly<Record<string, number | undefined>>;

export function findBodyMeasure(key: string): BodyMeasure | undefined {
	return bodyMeasures.find((measure) => measure.key === key);
}

/** The measured values that are held against balance lines, in mm by level. Values that were not taken are left out. */
export function measuresByLevel(sheet: MeasurementSheet): Readonly<Record<string, number>> {
	const rows = bodyMeasures.flatMap(({ key, level }) => {
		const mm = sheet[key];
		return level === undefined || mm === undefined ? [] : [[level, mm] as const];
	});
	return Object.fromEntries(rows);
}
