import type { Answer } from '$lib/server/journal/answer.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Alteration, Version } from '$lib/server/journal/records.ts';

/**
 * Takes one of the ways that a query offers as an alteration of table work: of the one that is open, else of a new one.
 * Carried to paper it settles the query. Refused for a version that is not the latest: a later one is what is carried onto.
 */
export function settleAtTheTable(
	journal: Journal,
	{ garment, versions, fittings }: GarmentPage,
	version: Version,
	asked: { code: string; where: string; way: number },
	today: string
): Answer<Alteration> {
	const query = version.unsettled.find(({ code, where }) => code === asked.code && where === asked.where);
	const way = query?.settle[asked.way];
	const refused = (sentence: string): Answer<Alteration> => ({
		ok: false,
		stale: false,
		code: 'refused',
		problems: [{ sentence }]
	});
	if (version.number !== versions.length - 1)
		return refused(`Version ${versions.length - 1} is the latest: settle it there, for that is what is carried onto.`);
	if (!query || !way)
		return refused('This query is not asked any more, or has no such way. Look at the queries again.');
	const open = fittings.find(({ fitting }) => fitting.kind === 'table' && fitting.closedAt === null)?.fitting;
	return journal.together((): Answer<Alteration> => {
		const work = open
			? ({ ok: true, value: open } as const)
			: journal.addFitting(garment.id, { kind: 'table', date: today, on: version.number });
		if (!work.ok) return work.stale ? refused('The table work was changed meanwhile. Try once more.') : work;
		const { id: _, ...intent } = way;
		return journal.addAlteration(work.value.id, {
			intent,
			settles: { code: query.code, where: query.where, sentence: query.sentence }
		});
	});
}
