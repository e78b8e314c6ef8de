import { findDart, findFoldDart, undividedName } from '../../engine/index.ts';
import type { compare } from '../../engine/index.ts';
import { formatLength } from '../../measure/format-length.ts';
import type { MarkingSheetInput } from './marking-input.ts';
import { numbersFor } from './numbers-for.ts';
import type { MarkingTable } from './marking-tables.ts';

type DartChange = ReturnType<typeof compare>['darts'][number];

/** A table for each dart that is new, changed or gone: its place, its whole width and each leg's, its length. */
export function dartTables(input: MarkingSheetInput, changes: readonly DartChange[]): MarkingTable[] {
	return changes.map((change) => {
		const { piece, name, edge, place } = whereIs(input, change);
		const { before, after } = change;
		return {
			numbers: numbersFor(input, change.dart),
			heading: after === undefined ? name : before === undefined ? `New dart` : name,
			said: `${piece}${edge === undefined ? '' : `, from the ${edge}`}: ${after === undefined ? 'unpick' : before === undefined ? 'sew' : 'sew anew'}.`,
			columns: ['what', 'measure'],
			boxes: [piece],
			features: [change.dart],
			rows: rowsOf(input, change, place)
		};
	});
}

interface Where {
	readonly piece: string;
	readonly name: string;
	/** The edge it opens on; a fold dart opens on none. */
	readonly edge?: string;
	/** The middle of its mouth, mm along the edge, and the edge that this starts from. */
	readonly place?: { readonly from: string; readonly mm: number };
}

function whereIs({ before, after }: MarkingSheetInput, change: DartChange): Where {
	const drafts = change.after === undefined ? [before] : [after, before];
	for (const draft of drafts) {
		for (const name of [change.dart, undividedName(change.dart)]) {
			const fold = findFoldDart(draft, name);
			if (fold) return { piece: fold.piece.name, name: fold.foldDart.name };
			const found = findDart(draft, name);
			if (!found) continue;
			const { piece, dart, edge } = found;
			const index = piece.edges.indexOf(edge);
			const previous = piece.edges[(index + piece.edges.length - 1) % piece.edges.length];
			return {
				piece: piece.name,
				name: dart.name,
				edge: edge.name.toLowerCase(),
				place: { from: previous.name.toLowerCase(), mm: (dart.from + dart.to) / 2 }
			};
		}
	}
	throw new Error(`the dart ${change.dart} is in neither draft`);
}

function rowsOf(input: MarkingSheetInput, { before, after }: DartChange, place: Where['place']): MarkingTable['rows'] {
	const said = (mm: number) => formatLength(mm, input.unit, { denominator: 16 }).text;
	const row = (what: string, measure: string) => ({ cells: [what, measure], places: [], most: false });
	if (after === undefined) return [row('whole width', before ? said(before.intake) : '')];
	const changed = (now: number, then: number | undefined) =>
		then === undefined || said(then) === said(now) ? said(now) : `${said(now)}, was ${said(then)}`;
	return [
		...(place ? [row(`middle, along from the ${place.from}`, said(place.mm))] : []),
		row('whole width', changed(after.intake, before?.intake)),
		row('each leg from the middle', said(after.intake / 2)),
		row('length to the point', changed(after.length, before?.length))
	];
}
