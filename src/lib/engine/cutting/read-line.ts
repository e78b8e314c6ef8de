import { parsePathData } from '../geometry/path-data.ts';
import type { Path } from '../geometry/types.ts';

/** A line of a cut piece as a path again, to the bit. Thrown: text that is no line, which is our own mistake. */
export function readLine(data: string): Path {
	const parsed = parsePathData(data);
	if ('problem' in parsed) throw new Error(`A line of a cut piece cannot be read: ${parsed.problem}`);
	return parsed.path;
}
