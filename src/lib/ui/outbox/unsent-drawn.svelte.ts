import { onMount } from 'svelte';
import type { FittingGround } from '../fitting/ground.ts';
import type * as Reading from '../fitting/view/with-unsent.ts';
import type { Unsent } from './unsent.ts';

type Read = (typeof Reading)['withUnsent'];

/** The ground of a fitting with what this browser has not sent yet; as it was sent until the engine is here to read that. */
export function unsentDrawn(ground: () => FittingGround, unsent: () => readonly Unsent[]): () => Reading.WithUnsent {
	let read = $state.raw<Read>();
	onMount(() => {
		void import('../fitting/live.ts').then(({ withUnsent }) => (read = withUnsent));
	});
	const drawn = $derived(read && unsent().length > 0 ? read(ground(), unsent()) : { ground: ground(), waiting: [] });
	return () => drawn;
}
