/**
 * The engine's one door. A draft and a list of alterations go in; a new draft, what each alteration did, and what still
 * needs a decision come out. No clock, no chance, no disk: the same input gives the same output to the bit.
 */

// The draft and its file
export { parseDraft, parseDraftText } from './draft/file/parse.ts';
export { DraftError } from './draft/file/draft-error.ts';
export { formatDraft } from './draft/file/format.ts';
export { mirrorDraft, movePiece } from './draft/turn-piece.ts';
export type * from './draft/types.ts';

// Lengths and areas
export { edgeLength, stitchedLength } from './draft/length.ts';
export { outlineOf, pieceArea } from './draft/outline.ts';

// Places, levels, darts and seams as they lie on a draft
export { findDart, findEdge, findFoldDart, findPiece, findSeam, levelsOf } from './draft/find.ts';
export { sideOfName, undividedName } from './draft/undivided-name.ts';
export { findInnerPoint, findPlace, findPlaceOnSeam } from './draft/place.ts';
export { heightAbove, lineAcross, placeBeside, plumbBelow } from './draft/line-across.ts';
export { piecesAcross } from './draft/pieces-across.ts';
export type { PiecesAcross } from './draft/pieces-across.ts';
export type { EndAcross } from './draft/line-across.ts';
export { levelOnEdge, levelParts, levelSpan, levelWidth } from './draft/level.ts';
export { dartLegs, foldDartLegs } from './draft/dart-legs.ts';
export { seamRun, seamsOf } from './draft/seam.ts';
export { garmentRounds } from './draft/round.ts';
export { buttonExtension, buttonholeLength } from './draft/buttonhole.ts';
export type { Button, ButtonholeRule, ExtensionRule, Tape } from './draft/buttonhole.ts';

// Alterations
export { parseAlteration, AlterationError } from './alteration/parse.ts';
export type { Alteration } from './alteration/registry.ts';
export type * from './alteration/types.ts';

// What came of them
export { carry } from './review/carry-and-check.ts';
export { check } from './review/check.ts';
export { walk } from './review/walk.ts';
export { easeTable, garmentRound } from './review/ease-table.ts';
export { compare } from './review/compare.ts';
export { edgePairs, piecePairs } from './review/same-feature.ts';
export { story } from './review/story.ts';
export { withdraw } from './review/withdraw.ts';
export { carryOnto } from './review/carry-onto.ts';
export { bandsFor, presets } from './review/bands.ts';
export type * from './review/types.ts';
export type * from './review/inquiry.ts';

// Cutting
export { cuttingLines } from './cutting/cutting-lines.ts';
export { notchCounts } from './cutting/notch-counts.ts';
export { reuse } from './cutting/reuse.ts';

// Lines, for whoever draws or prints them
export { formatPathData, parsePathData } from './geometry/path-data.ts';
export { pathBox, pathLength, pointAt, portion, tangentAt, reversedPath } from './geometry/path.ts';
export { flatten } from './geometry/flatten.ts';
export { nearestOn } from './geometry/nearest.ts';
export { remembered } from './geometry/memo.ts';
export { movePath, movePoint } from './geometry/motion.ts';
export type * from './geometry/types.ts';
