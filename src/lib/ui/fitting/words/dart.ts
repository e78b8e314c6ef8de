import { dartLegs, findDart, findFoldDart, findPlace, pointAt } from '../../../engine/index.ts';
import type { Alteration, Draft, InnerPoint, Place } from '../../../engine/index.ts';
import { directionOf } from '../../../measure/directions.ts';
import type { Unit } from '../../../measure/units.ts';
import { inSentence } from '../casing.ts';
import { dartName, dartOf, edgeName, edgeOf } from '../feature-names.ts';
import { placeInSentence } from '../place/place-words.ts';
import { sayLength } from './along.ts';
import { sidesInWords, type Teller } from './told.ts';

type DartIntent = Extract<Alteration, { kind: 'dart' }>;
type DartSetIntent = Extract<Alteration, { kind: 'dart-set' }>;
type DartSwingIntent = Extract<Alteration, { kind: 'dart-swing' }>;

/** Pinned out a new dart. */
export const dartWords: Teller<DartIntent> = (draft, { edge, on, at, intake, point }, unit) => {
	const where = placeInSentence(draft, { of: 'edge', id: edge }, at, unit);
	const wide = intake === undefined ? undefined : `${sayLength(intake, unit)} wide`;
	const long = point && dartLength(draft, edge, at, point, unit);
	return {
		subject: `New dart, ${inSentence(edgeName(draft, edge))}`,
		...(wide && { done: `${[wide, long].filter(Boolean).join(long?.startsWith('to') ? ', ' : ' and ')}, ${where}` }),
		sides: sidesInWords(on, edgeOf(draft, edge)?.piece.limb),
		amounts: intake === undefined ? [] : [{ place: '', mm: -intake, way: 'in', word: 'in' }]
	};
};

/** “3 3/4″ long”, “to 1″ short of the bust point”. */
function dartLength(draft: Draft, edge: string, at: Place, point: InnerPoint, unit: Unit): string | undefined {
	if ('from' in point) return `${sayLength(point.in, unit)} long`;
	if ('mark' in point) return pointWords(point, unit);
	const found = edgeOf(draft, edge);
	const place = found && findPlace(draft, `${found.piece.id}/${found.edge.id}`, at);
	if (!found || !place || 'problem' in place) return undefined;
	const [x, y] = pointAt(found.edge.path, place.s);
	return `${sayLength(Math.hypot(point[0] - x, point[1] - y), unit)} long`;
}

function pointWords(point: InnerPoint, unit: Unit): string {
	if ('from' in point) return `${sayLength(point.in, unit)} in from the edge`;
	if ('mark' in point) {
		const mark = `the ${point.mark.replaceAll('-', ' ')}`;
		return point.short ? `to ${sayLength(point.short, unit)} short of ${mark}` : `to ${mark}`;
	}
	return 'to a point inside the piece';
}

/** Made a dart wider, narrower, longer or shorter, or took it out. */
export const dartSetWords: Teller<DartSetIntent> = (draft, { dart: name, on, intake, point }, unit) => {
	const read = intake !== undefined || point !== undefined;
	const before = dartIntake(draft, name);
	const shift = point && dartLonger(draft, name, point);
	const parts = [
		intake === undefined ? undefined : widthWords(intake, before, unit),
		shift === undefined
			? point && `its point moved ${pointWords(point, unit)}`
			: `made ${sayLength(shift, unit)} ${directionOf('length', shift)}`
	];
	const wider = intake === undefined ? 0 : intake - (before ?? intake);
	return {
		subject: dartName(draft, name),
		...(read && { done: parts.filter(Boolean).join(', ') }),
		sides: sidesInWords(on, dartOf(draft, name)?.piece.limb),
		amounts:
			Math.abs(wider) < 1e-9
				? []
				: // A wider dart takes cloth away.
					[{ place: '', mm: -wider, way: wider > 0 ? 'in' : 'out', word: directionOf('dart', wider) }]
	};
};

function widthWords(intake: number, before: number | undefined, unit: Unit): string {
	const wide = sayLength(intake, unit);
	if (intake === 0) return 'taken out';
	if (before === undefined || Math.abs(intake - before) < 1e-9) return `made ${wide} wide`;
	const change = intake - before;
	return `made ${sayLength(change, unit)} ${directionOf('dart', change)}, to ${wide}`;
}

/** Off the fold line by more than this a point is not only farther or nearer, mm. */
const onFold = 0.01;

/** By how much a dart gets longer, mm, when its point goes to a bare point of the piece; undefined if that is not on its fold. */
export function dartLonger(draft: Draft, name: string, point: InnerPoint): number | undefined {
	if ('mark' in point || 'from' in point) return undefined;
	const found = findDart(draft, dartOf(draft, name)?.whole ?? '');
	if (!found) return undefined;
	const { foldAt } = dartLegs(found.piece, found.dart);
	const [ux, uy] = [found.dart.point[0] - foldAt[0], found.dart.point[1] - foldAt[1]];
	const [vx, vy] = [point[0] - foldAt[0], point[1] - foldAt[1]];
	const before = Math.hypot(ux, uy);
	if (Math.abs(ux * vy - uy * vx) / before > onFold) return undefined;
	return (ux * vx + uy * vy) / before - before;
}

/** The whole width of a dart of the draft, mm. */
export function dartIntake(draft: Draft, name: string): number | undefined {
	const whole = dartOf(draft, name)?.whole;
	if (whole === undefined) return undefined;
	const dart = findDart(draft, whole);
	if (dart) return dartLegs(dart.piece, dart.dart).intake;
	return findFoldDart(draft, whole)?.foldDart.widest.intake;
}

/** Moved a dart to another edge, whole or in part. */
export const dartSwingWords: Teller<DartSwingIntent> = (draft, { dart, on, edge, at, share }, unit) => {
	const where = `to the ${inSentence(edgeName(draft, edge))}, ${placeInSentence(draft, { of: 'edge', id: edge }, at, unit)}`;
	return {
		subject: dartName(draft, dart),
		...(share !== undefined && {
			done: share === 1 ? `moved ${where}` : `${shareWords(share)} of it moved ${where}`
		}),
		sides: sidesInWords(on, dartOf(draft, dart)?.piece.limb),
		amounts: []
	};
};

function shareWords(share: number): string {
	if (share === 0.5) return 'half';
	return `${Math.round(share * 100)} %`;
}
