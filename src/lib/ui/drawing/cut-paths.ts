import type { CutPath } from './cut-path.ts';
import { parsePathData } from './engine.ts';

/** What `cuttingLines` gives, with its outlines as lines to be drawn. Thrown: path data that the engine did not write. */
export function cutPaths(lines: readonly { readonly piece: string; readonly outline: string }[]): readonly CutPath[] {
	return lines.map(({ piece, outline }) => {
		const read = parsePathData(outline);
		if ('problem' in read) throw new Error(read.problem);
		return { piece, outline: read.path };
	});
}
