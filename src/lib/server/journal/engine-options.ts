import { and, desc, eq, isNotNull } from 'drizzle-orm';
import { fittings } from '../database/schema/fittings.ts';
import { findEasePreset } from '../../measure/ease-ranges.ts';
import type { CheckOptions, Draft } from '../engine.ts';
import { fittingsMade } from './fittings-made.ts';
import { currentLining } from './lining.ts';
import { measuresByLevel } from './measures.ts';
import type { Fitting, Garment, MeasurementSheet } from './records.ts';
import type { Store } from './store.ts';
import { findToile, toileRow } from './toiles.ts';
import { draftOf, findVersion } from './versions.ts';
import { findFoundation, findSheet, sheetsOf } from './wearers.ts';

/** The sheet that ease is reckoned from: the one that the garment names, else the wearer's latest. */
export function sheetForEase(store: Store, garment: Garment): MeasurementSheet | null {
	return (garment.sheet ? findSheet(store, garment.sheet) : undefined) ?? sheetsOf(store, garment.wearer)[0] ?? null;
}

/** What a check is told of the garment: its wearer's measures and the ease that is wanted. */
export function garmentOptions(store: Store, garment: Garment): CheckOptions {
	const sheet = sheetForEase(store, garment);
	const preset = garment.easePreset ? findEasePreset(garment.easePreset) : undefined;
	return {
		...(sheet ? { measures: measuresByLevel(sheet.measures) } : {}),
		...(preset
			? {
					bands: {
						ease: Object.fromEntries(
							Object.entries(preset.bands).map(([level, { low, high = Infinity }]) => [
								level,
								{ least: low, most: high }
							])
						)
					}
				}
			: {})
	};
}

/** What a check is told besides when a fitting is carried: the drafts before, the cloth on the body, and what was worn under it. */
export function fittingOptions(store: Store, garment: Garment, fitting: Fitting, before: Draft): CheckOptions {
	const base = findVersion(store, garment.id, 0)!;
	const foundations = foundationsCarried(store, garment, fitting);
	const cloth = clothOnBody(store, fitting);
	return {
		...garmentOptions(store, garment),
		base: draftOf(store, base.id),
		before,
		...(foundations.length > 0 ? { foundations } : {}),
		...(cloth ? { toile: cloth } : {}),
		...fittingsMade(store, fitting)
	};
}

/** What a seam can be let out into: the toile's cloth, or, once the lining is on the body, the lining's. */
function clothOnBody(store: Store, fitting: Fitting): CheckOptions['toile'] {
	if (fitting.tried === 'toile') {
		if (!fitting.toile) return undefined;
		const { allowance, allowances } = findToile(store, fitting.toile)!;
		return {
			draft: draftOf(store, toileRow(store, fitting.toile)!.cutFrom),
			allowances: { default: allowance, edges: allowances },
			cut: 'toile'
		};
	}
	const lining = fitting.tried === null ? null : currentLining(store, fitting.garment);
	if (!lining) return undefined;
	return {
		draft: draftOf(store, findVersion(store, fitting.garment, lining.version)!.id),
		allowances: { default: lining.allowance, edges: lining.allowances },
		cut: 'cloth'
	};
}

/** What was worn at the last fitting that was carried to the latest version, and at this one. */
function foundationsCarried(store: Store, garment: Garment, fitting: Fitting): readonly string[] {
	const before = store.db
		.select({ foundation: fittings.foundation })
		.from(fittings)
		.where(and(eq(fittings.garment, garment.id), isNotNull(fittings.carriedInto), isNotNull(fittings.foundation)))
		.orderBy(desc(fittings.closedAt))
		.limit(1)
		.get();
	const ids = [before?.foundation, fitting.foundation].filter((id) => typeof id === 'string');
	return ids.map((id) => findFoundation(store, id)!.name);
}
