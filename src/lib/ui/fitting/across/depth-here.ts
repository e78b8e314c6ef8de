import { parseLength } from '../../../measure/parse-length.ts';
import type { Unit } from '../../../measure/units.ts';
import { field, type Typed } from '../typed.ts';

/** The depth that the rule sets, at the first end or at the last of a wedge, with what it reads now. */
export interface DepthHere {
	readonly name: 'first' | 'last';
	/** mm; absent where nothing can be read. */
	readonly mm?: number;
}

export function depthHere(typed: Typed, unit: Unit): DepthHere {
	const name = field(typed, 'here') === 'last' && field(typed, 'shape') === 'wedge' ? 'last' : 'first';
	const read = parseLength(field(typed, name), unit);
	return { name, ...('mm' in read && { mm: read.mm }) };
}
