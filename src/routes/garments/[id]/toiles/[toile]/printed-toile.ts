import type { RequestEvent } from '@sveltejs/kit';
import type { PatternSheetInput } from '$lib/output/pattern-input.ts';
import { foundGarment, foundToile } from '$lib/server/http/found.ts';
import { patternInput } from '$lib/server/pattern/pattern-input.ts';
import { unitCookie } from '$lib/ui/cookies.ts';

/** The toile of the address as it is printed to be cut: the version that it is cut from, with its own allowances. */
export function printedToile({
	locals: { journal },
	params,
	cookies
}: Pick<RequestEvent<{ id: string; toile: string }>, 'locals' | 'params' | 'cookies'>): PatternSheetInput {
	const page = foundGarment(journal, params.id);
	const toile = foundToile(page, params.toile);
	const printed = patternInput(page, journal.version(params.id, toile.cutFrom)!, {
		allowances: { default: toile.allowance, edges: toile.allowances },
		lines: 'with allowances',
		unit: cookies.get(unitCookie) === 'cm' ? 'cm' : 'in'
	});
	const garment = `${page.garment.name}, toile ${toile.number}`;
	return { ...printed, title: { ...printed.title, garment, lining: false } };
}
