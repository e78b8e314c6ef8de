import { otherSide, seamRun, seamsOf } from '../draft/seam.ts';
import { asAltered, settleId, type Settling } from './settle.ts';
import type { Draft } from '../draft/types.ts';
import type { ClothUsed } from './cloth-used.ts';

/**
 * What settles a let-out that its cloth does not hold: the seam moved over, so that the other side gives the cloth, if it has it to
 * give; or the seam taken in again on both sides as far as the cloth asks. An edge that is in no seam is taken in alone.
 */
export function giveToOtherSide(code: string, draft: Draft, edge: ClothUsed, used: readonly ClothUsed[]): Settling[] {
	const [sewn] = seamsOf(draft, edge.name);
	if (!sewn) {
		const { name, on } = asAltered(edge.name);
		const pins = [{ at: { end: 'start' }, move: -edge.short }];
		return [{ id: settleId(code, edge.name, 'less'), kind: 'edge', on, edge: name, pins }];
	}
	const { seam, side } = sewn;
	const { name, on } = asAltered(seam.id);
	const settling = (which: string, amounts: Readonly<Record<string, number>>): Settling => ({
		id: settleId(code, edge.name, which),
		kind: 'seam',
		on,
		seam: name,
		pins: [{ at: { end: 'start' }, ...amounts }]
	});
	if (seam.b === 'mirror') return [settling('less', { a: -edge.short })];
	const other = otherSide(side);
	const spare = Math.min(
		...seamRun(draft, seam, other).map((run) => {
			const there = used.find((one) => one.name === run.name);
			return there ? there.room - there.outward : 0;
		})
	);
	const less = settling('less', { [side]: -edge.short, [other]: -edge.short });
	return spare >= edge.short ? [settling('over', { [side]: -edge.short, [other]: edge.short }), less] : [less];
}
