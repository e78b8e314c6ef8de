import { navigating } from '$app/state';

/**
 * Where the page is on its way to, if it is. One that was given up, by Back while it was loading, is told as under way by the framework
 * until the next one has arrived: here it is over.
 */
export function underWay(): () => URL | undefined {
	const givenUp = new WeakSet<Promise<void>>();
	$effect(() => {
		const { complete } = navigating;
		complete?.then(undefined, () => givenUp.add(complete));
	});
	return () => {
		const { to, complete } = navigating;
		return complete && givenUp.has(complete) ? undefined : to?.url;
	};
}
