import { parseDraft } from '../../../src/lib/engine/draft/file/parse.ts';
import type { Draft } from '../../../src/lib/engine/draft/types.ts';

interface Sides {
	readonly right?: number;
	readonly top?: number;
	readonly bottom?: number;
	readonly darts?: readonly object[];
	readonly id?: string;
}

/**
 * A plain piece 100 mm wide and 200 mm high from (0, 0), its waist half way down, whose right, top and lower edges lie so
 * many mm farther out than that. Right is a seam; top, left and bottom are open.
 */
export function rectangle({ right = 0, top = 0, bottom = 0, darts = [], id = 'front' }: Sides = {}): Draft {
	const [r, t, b] = [100 + right, -top, 200 + bottom];
	const edge = (name: string, kind: string, path: string) => ({ id: name, name, kind, path });
	return parseDraft({
		format: 'pin-to-paper/draft@1',
		name: 'Plain piece',
		pieces: [
			{
				id,
				name: 'Plain front',
				cut: 'pair',
				side: 'both',
				edges: [
					edge('top', 'open', `M 0 ${t} L ${r} ${t}`),
					edge('right', 'seam', `M ${r} ${t} L ${r} ${b}`),
					edge('bottom', 'open', `M ${r} ${b} L 0 ${b}`),
					edge('left', 'open', `M 0 ${b} L 0 ${t}`)
				],
				notches: [{ id: 'n1', edge: 'right', at: 50 }],
				darts,
				levels: [
					{
						level: 'waist',
						line: [
							[10, 100],
							[90, 100]
						]
					}
				]
			}
		],
		seams: []
	});
}
