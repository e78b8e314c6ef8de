import type { Problem } from './answer.ts';
import type { Change, FittingFields } from './changes.ts';
import { checkMeasures } from './measures.ts';
import { triedOn, type Garment } from './records.ts';
import { checkCount, checkDay, checkLength, checkOneOf, checkTime, checkWords, problemsOf } from './soundness.ts';
import type { Store } from './store.ts';
import { findToile } from './toiles.ts';
import { findFoundation } from './wearers.ts';

/** Everything that is wrong with what was noted of a fitting or of table work. */
export function fittingProblems(store: Store, garment: Garment, fields: Change<FittingFields>): Problem[] {
	return problemsOf(
		checkDay('date', fields.date),
		checkTime('from', fields.from),
		checkTime('to', fields.to),
		fields.from && fields.to && fields.to < fields.from
			? { field: 'to', sentence: `It ends at ${fields.to}, before it begins at ${fields.from}.` }
			: undefined,
		checkOneOf('tried', fields.tried, triedOn),
		fields.toile && findToile(store, fields.toile)?.garment !== garment.id
			? { field: 'toile', sentence: 'Choose one of this garment’s toiles.' }
			: undefined,
		fields.foundation && findFoundation(store, fields.foundation)?.wearer !== garment.wearer
			? { field: 'foundation', sentence: 'Choose what was worn under it, one of this wearer’s own.' }
			: undefined,
		checkOneOf('worn', fields.worn, ['outside', 'inside']),
		checkMeasures('checkMeasures', fields.checkMeasures),
		...(['bust', 'waist', 'neck', 'armhole'] as const).map((measure) =>
			checkLength(`asSewn.${measure}`, fields.asSewn?.[measure], 10, 5000)
		),
		checkOneOf('asSewn.readFrom', fields.asSewn?.readFrom, ['traced-line', 'stitching']),
		checkLength('stateOfToile.closingWidth', fields.stateOfToile?.closingWidth, 0, 500),
		checkLength('heel', fields.heel, 0, 300),
		checkCount('pinsIn', fields.pinsIn),
		checkCount('pinsOut', fields.pinsOut),
		...(['shoes', 'pinnedBy', 'note', 'bring'] as const).map((field) => checkWords(field, fields[field]))
	);
}
