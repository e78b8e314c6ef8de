import type { Draft } from '../types.ts';
import { nameOf, splitName } from '../find.ts';
import { flippedRuns } from '../turn-piece.ts';
import { sideOfName, undividedName } from '../undivided-name.ts';
import { DraftError, type FileProblem } from './draft-error.ts';
import { inLatestFormat } from './formats.ts';
import { jsonFault } from './json-fault.ts';
import { readPiece, type ReadPiece } from './read-piece.ts';
import { readSeams } from './read-seams.ts';
import type { Report } from './report.ts';
import { limits, type DraftFile } from './schema.ts';
import { shapeOf, type Shape } from './shape.ts';

/**
 * A draft from its file, as JSON already read or as text: every default filled in, outlines clockwise, corners that meet within
 * `joined` made one to the bit. Refused (DraftError): a file with anything wrong in it, with every problem that was found.
 */
export function parseDraft(json: unknown): Draft {
	if (typeof json === 'string') return parseDraftText(json);
	const file = inLatestFormat(json) as unknown as DraftFile;
	const shape = shapeOf(file);
	const problems: FileProblem[] = [...shape.problems];
	const report: Report = (path, message) => problems.push({ path, message });

	const segmentsLeft = { count: limits.segments };
	const read = shape.allIn(file.pieces, 'pieces').map((piece) => readPiece(piece, shape, segmentsLeft, report));
	if (shape.isSound('pieces') && read.length === 0) report('pieces', 'A draft needs at least one piece.');
	const pieces = byId(read, report);
	const seams = readSeams(file.seams, shape, pieces, report);
	checkMates(file, shape, pieces, report);
	if (problems.length > 0) throw new DraftError(problems);

	return {
		name: file.name ?? 'Draft',
		pieces: read.map(({ piece }) => piece!),
		seams: seams.map((seam) => flippedRuns(seam, (id) => pieces.get(id)?.turned ?? false))
	};
}

/** The same from text. Refused too: more than 5 MB, and what is not JSON, with line and column. */
export function parseDraftText(text: string): Draft {
	if (text.length > limits.textLength) {
		throw new DraftError([{ path: '', message: 'This file is larger than 5 MB; a draft is never that large.' }]);
	}
	const content = text.startsWith('\uFEFF') ? text.slice(1) : text;
	const fault = jsonFault(content);
	if (fault) {
		const found = fault.found === '' ? 'the file ends' : `there is ${JSON.stringify(fault.found)}`;
		const where = `line ${fault.line}, column ${fault.column}`;
		throw new DraftError([
			{ path: '', message: `This is not JSON. At ${where} ${fault.wanted} is wanted, but ${found}.` }
		]);
	}
	const json: unknown = JSON.parse(content);
	if (typeof json === 'string') return parseDraft({ text: json });
	return parseDraft(json);
}

function byId(read: readonly ReadPiece[], report: Report): ReadonlyMap<string, ReadPiece> {
	const pieces = new Map<string, ReadPiece>();
	for (const piece of read) {
		if (piece.id === undefined) continue;
		const before = pieces.get(piece.id);
		if (before)
			report(`${piece.at}.id`, `"${piece.id}" is already the id of ${before.at}: every piece has an id of its own.`);
		else pieces.set(piece.id, piece);
	}
	for (const { id, at } of pieces.values()) {
		const whole = pieces.get(undividedName(id!));
		if (sideOfName(id!) && whole)
			report(`${at}.id`, `"${id}" is a side of "${whole.id}", which is here whole at ${whole.at}.`);
	}
	return pieces;
}

function checkMates(file: DraftFile, shape: Shape, pieces: ReadonlyMap<string, ReadPiece>, report: Report): void {
	for (const piece of pieces.values()) {
		const index = Number(/\d+/.exec(piece.at));
		for (const { value: notch, at } of shape.soundIn(file.pieces[index].notches, `${piece.at}.notches`)) {
			if (notch.mate === undefined) continue;
			const { piece: mateId, id } = splitName(notch.mate);
			const mate = pieces.get(mateId);
			if (mate === undefined) report(`${at}.mate`, `There is no piece "${mateId}" for this notch to meet.`);
			else if (!mate.notches.has(id)) {
				report(
					`${at}.mate`,
					`There is no notch "${id}" on ${mateId}. It has ${[...mate.notches.keys()].join(', ') || 'none'}.`
				);
			} else if (isOnFold(piece, notch.id) || isOnFold(mate, id)) {
				report(`${at}.mate`, 'A notch on the fold meets no other: the fold is not sewn.');
			} else if (notch.mate === nameOf(piece.id!, notch.id) && piece.cut !== 'pair') {
				report(`${at}.mate`, 'A notch meets another, not itself; only across a mirror seam can it name itself.');
			}
		}
	}
}

function isOnFold(piece: ReadPiece, notch: string): boolean {
	return piece.edges.get(piece.notches.get(notch) ?? '')?.kind === 'fold';
}
