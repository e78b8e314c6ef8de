import type { AlterationBase, On } from '../alteration/types.ts';
import { sideOfName, undividedName } from '../draft/undivided-name.ts';

/** An alteration that would settle a query. Its id follows from the query, so that the same query always offers the same one. */
export type Settling = AlterationBase & Readonly<Record<string, unknown>>;

/** The undivided name that alterations use, and the half of the wearer that a divided name means. */
export function asAltered(name: string): { readonly name: string; readonly on: On } {
	return { name: undividedName(name), on: sideOfName(name) ?? 'both' };
}

/** `settle-seam-length-side-a`, `settle-dart-legs-front-waist-dart` */
export function settleId(code: string, where: string, which?: string): string {
	const name = where.replace(/[/@]/g, '-');
	return which === undefined ? `settle-${code}-${name}` : `settle-${code}-${name}-${which}`;
}
