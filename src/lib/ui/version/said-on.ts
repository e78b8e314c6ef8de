import type { Draft } from '../../engine/index.ts';
import { dartOf } from '../fitting/feature-names.ts';

/**
 * The draft that an alteration is told on: the one before its version was made, or, where it was made to a dart that the same
 * carry added, the one after.
 */
export function saidOn(before: Draft, after: Draft, intent: object): Draft {
	const name = 'dart' in intent ? intent.dart : undefined;
	return typeof name === 'string' && !dartOf(before, name) && dartOf(after, name) ? after : before;
}
