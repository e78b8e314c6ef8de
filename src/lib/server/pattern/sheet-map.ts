import type { Draft } from '../../engine/index.ts';
import { formatPathData } from '../../engine/index.ts';
import type { PatternSheetInput } from '../../output/pattern-input.ts';
import type { PaperName } from '../../output/page/paper.ts';
import { planTiles } from '../../output/tiled/plan-tiles.ts';

/** How a pattern goes on sheets for a home printer, small: mm on the whole drawing. */
export interface SheetMap {
	readonly paper: PaperName;
	readonly width: number;
	readonly height: number;
	/** Cut outlines as path data. */
	readonly outlines: readonly string[];
	readonly sheets: readonly { number: number; x: number; y: number; width: number; height: number }[];
}

/** A plan is laid out once for a draft: it never changes while its allowances are the same. */
const planned = new WeakMap<Draft, Map<string, SheetMap>>();

/** The map of the sheets that `writeTiledPdf` would write. */
export function sheetMap(input: PatternSheetInput, paper: PaperName): SheetMap {
	const maps = planned.get(input.draft) ?? new Map<string, SheetMap>();
	planned.set(input.draft, maps);
	const key = JSON.stringify([paper, input.allowances, input.lines, input.title.version]);
	const known = maps.get(key);
	if (known) return known;
	const { width, height, pieces, tiles } = planTiles(input, paper);
	const map = {
		paper,
		width,
		height,
		outlines: pieces.map(({ outline }) => formatPathData(outline)),
		sheets: tiles.map(({ number, own: { left, top, right, bottom } }) => ({
			number,
			x: left,
			y: top,
			width: right - left,
			height: bottom - top
		}))
	};
	maps.set(key, map);
	return map;
}
