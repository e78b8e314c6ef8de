/** What is looked at when a piece was cut and put together again: its fold, lost notches and the bridges in its edges. */
import { joined } from '../geometry/accuracy.ts';
import { pathEnd, pathStart } from '../geometry/path.ts';
import { cross, distance, subtract } from '../geometry/point.ts';
import { inches } from '../draft/say.ts';
import type { Edge, Piece } from '../draft/types.ts';
import type { Bridge } from './reassemble.ts';
import type { Remark } from './types.ts';

/** A fold that is no longer one straight line. */
export function bentFold(piece: Piece): Edge | undefined {
	return piece.edges.find((edge) => {
		if (edge.kind !== 'fold') return false;
		const [a, b] = [pathStart(edge.path), pathEnd(edge.path)];
		return edge.path.some(({ to }) => Math.abs(cross(subtract(b, a), subtract(to, a))) > joined * distance(a, b));
	});
}

/** A remark for each notch that lay on cloth that was cut away, and for each bridge that wants smoothing. */
export function remarksOf(piece: Piece, lostNotches: readonly string[], bridges: readonly Bridge[]): Remark[] {
	return [
		...lostNotches.map((notch) => ({
			code: 'notch-lost',
			where: `${piece.id}/${notch}`,
			sentence: `A notch of ${piece.name} lay in the cloth that was folded away. Mark it again where the pieces meet.`
		})),
		...bridges.map((bridge) => ({
			code: 'bridge',
			where: `${piece.id}/${bridge.edge}`,
			figure: bridge.to - bridge.from,
			sentence: `${edgeName(piece, bridge.edge)} of ${piece.name} was bridged straight for ${inches(bridge.to - bridge.from)} where it was cut. Smooth it there.`
		}))
	];
}

function edgeName(piece: Piece, id: string): string {
	return piece.edges.find((edge) => edge.id === id)?.name ?? id;
}
