import { seamsOf } from '../../engine/index.ts';
import type { Draft, Edge, Piece } from '../../engine/index.ts';
import { inch } from '../../measure/units.ts';
import type { AllowancesByEdge } from '../allowances/usual-allowances.ts';

/** On the long seams, so that they can be let out; and round neck and armhole, where more would keep the cloth from lying. */
const long = inch;
const close = inch / 4;

/**
 * The allowances of a fitting toile by common practice: 1″ on the seams, 1/4″ round neck and armhole (Construction of
 * Clothing, University of Wisconsin). A neck is known by its name, an armhole by its name or by the limb that is set into
 * it; the head of the limb itself keeps its inch, for it is pinned in.
 */
export function toileAllowances(draft: Draft): AllowancesByEdge {
	const edges = draft.pieces.flatMap((piece) =>
		piece.edges
			.filter((edge) => edge.kind !== 'fold' && (isNeck(edge) || isArmhole(draft, piece, edge)))
			.map(({ id }) => [`${piece.id}/${id}`, close] as const)
	);
	return { default: long, edges: Object.fromEntries(edges) };
}

/** The preset in lengths, for its button. */
export const toilePreset = { long, close } as const;

const isNeck = ({ id, name }: Edge) => /\bneck\b/i.test(`${id.replaceAll('-', ' ')} ${name}`);

function isArmhole(draft: Draft, piece: Piece, { id, name }: Edge): boolean {
	if (piece.limb) return false;
	if (/arm(hole|scye)/i.test(`${id} ${name}`)) return true;
	const whole = `${piece.id}/${id}`;
	const pieceOf = (edge: string) => draft.pieces.find((one) => edge.startsWith(`${one.id}/`));
	return seamsOf(draft, whole).some(({ seam, side }) => {
		const other = side === 'a' ? seam.b : seam.a;
		return other !== 'mirror' && other.every(({ edge }) => pieceOf(edge)?.limb);
	});
}
