import { localDay } from '$lib/server/journal/store.ts';
import { dayWords } from '$lib/ui/day-words.ts';
import { garmentsOnTable } from '$lib/ui/drawing/garments-on-table.ts';
import { counted } from '$lib/ui/garment/counted.ts';
import type { HeadData } from '$lib/ui/head.ts';
import { stageNow } from '$lib/ui/stage-now.ts';
import { waitingRow } from '$lib/ui/waiting-row.ts';
import { measureAgain } from '$lib/ui/workroom/measure-again.ts';
import { tableCaption } from '$lib/ui/workroom/table-caption.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, parent }) => {
	const { unit } = await parent();
	const { today, waiting, fittingsToday, garments, wearers, latestNote } = locals.journal.workroom();
	const { scale, scenes } = garmentsOnTable(
		garments.map(({ draft, latest }) => ({ draft, material: latest.number === 0 ? 'paper' : 'white' })),
		unit
	);
	const caption = tableCaption(garments.map(({ garment }) => garment.madeFor));
	const known = wearers.filter(({ wearer }) => wearer.forgottenAt === null);
	const toMeasure = known.flatMap(({ wearer: { id, name }, garments: count, lastMeasured }) => {
		const row = measureAgain({ id, name, garments: count, lastMeasured }, today);
		return row ? [{ ...row, mark: 'tape' as const, count: 0 }] : [];
	});
	const head: HeadData = { crumbs: [{ name: 'Workroom' }], links: [{ name: 'Other devices', href: '/devices' }] };
	return {
		head,
		today: dayWords(today, 'weekday'),
		caption,
		scale,
		waiting: [...waiting.map(waitingRow), ...toMeasure],
		fittingsToday: fittingsToday.map(({ fitting, garment, wearer }) => ({
			href: `/garments/${garment.id}/fittings/${fitting.id}`,
			at: fitting.from,
			name: garment.name,
			wearer: wearer.name
		})),
		garments: garments.map(({ garment, wearer, life, latest }, i) => {
			const { done, toCome, words } = stageNow(life, latest);
			const madeFor = caption.madeFor === undefined && garment.madeFor !== '' ? `, ${garment.madeFor}` : '';
			return {
				name: garment.name,
				href: `/garments/${garment.id}`,
				wearer: `${wearer.name}${madeFor}`,
				done,
				toCome,
				said: words,
				scene: scenes[i]!
			};
		}),
		wearers: known.map(({ wearer, garments: count, lastMeasured }) => ({
			id: wearer.id,
			name: wearer.name,
			initials: initials(wearer.name),
			note: `${counted(count, 'garment', 'garments')}; ${lastMeasured === null ? 'not measured yet' : `measured ${dayWords(lastMeasured)}`}`
		})),
		note: latestNote && {
			words: latestNote.text,
			day: dayWords(localDay(new Date(latestNote.at))),
			href:
				latestNote.garment === null ? `/wearers/${latestNote.wearer}#notes` : `/garments/${latestNote.garment}#notes`
		}
	};
};

function initials(name: string): string {
	const words = name.split(/\s+/).filter(Boolean);
	return [words[0], words.length > 1 ? words[words.length - 1] : undefined]
		.map((word) => word?.[0]?.toUpperCase() ?? '')
		.join('');
}
