import { describe, expect, it } from 'vitest';
import { observations } from '../../../src/lib/measure/observations.ts';
import { findAct } from '../../../src/lib/ui/fitting/acts.ts';
import { targetsFor } from '../../../src/lib/ui/fitting/targets.ts';
import { usualCures } from '../../../src/lib/ui/fitting/usual-cures.ts';
import { jacket } from './drafts.ts';

const seen = (what: string, feature?: string) => ({ id: 'seen', what, feature });
const typedIn = (href: string) => Object.fromEntries(new URLSearchParams(href.slice(1)));

describe('what usually cures a thing that is seen', () => {
	it('leads to acts that there are, on things that there are, with no amount and as an answer to it', () => {
		for (const { what } of observations)
			for (const feature of [undefined, 'side', 'front/neck', 'front/second-dart'])
				for (const { words, href } of usualCures(jacket, seen(what, feature), 'right')!.ways) {
					expect(words).toMatch(/^[A-Z]/);
					if (href === undefined) continue;
					const { side, act, answers, ...rest } = typedIn(href);
					expect({ side, answers }).toEqual({ side: 'right', answers: 'seen' });
					const found = findAct(act);
					expect(found, what).toBeDefined();
					const [target] = Object.values(rest);
					expect(Object.keys(rest).length).toBeLessThanOrEqual(1);
					if (target !== undefined) expect(targetsFor(jacket, found!.to).map(({ id }) => id)).toContain(target);
				}
	});

	// A front that sags is taken in at its shoulder, most at the neck, and the neck redrawn (Fitting Dresses, US Department of
	// Agriculture, rev. 1946, as corrected by fitting practice).
	it('of a sagging front is taken in at the shoulder, where it was seen, and the neck chalked', () => {
		const { causes, ways } = usualCures(
			jacket,
			seen('The front sags in folds below the bust line', 'shoulder'),
			'right'
		)!;
		expect(causes).toEqual(['too much length in the front between shoulder and waist']);
		expect(ways.map(({ href }) => typedIn(href!))).toMatchObject([
			{ act: 'took-in', seam: 'shoulder' },
			{ act: 'chalked' }
		]);
	});

	it('leaves the pattern alone where pinning again is the cure, and says nothing of what was said in other words', () => {
		const twists = observations.find(({ key }) => key === 'twists')!;
		expect(usualCures(jacket, seen(twists.what), 'right')!.ways.map(({ href }) => href)).toEqual([undefined]);
		expect(usualCures(jacket, seen('It creaks.'), 'right')).toBeUndefined();
	});
});
