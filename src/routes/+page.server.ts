import { dayWords } from '$lib/ui/day-words.ts';
import { layAlike } from '$lib/ui/drawing/lay-alike.ts';
import { stageNow } from '$lib/ui/stage-now.ts';
import { waitingRow } from '$lib/ui/waiting-row.ts';
import type { HeadData } from '$lib/ui/head.ts';
import type { PageServerLoad } from './$types';

/** The largest a garment is drawn, px. */
const largest = { width: 262, height: 232 };

export const load: PageServerLoad = ({ locals }) => {
	const { today, waiting, fittingsToday, garments, wearers } = locals.journal.workroom();
	const scenes = layAlike(
		garments.map(({ draft }) => draft),
		largest.width,
		largest.height
	);
	const head: HeadData = { crumbs: [{ name: 'Workroom' }] };
	return {
		head,
		today: dayWords(today, 'weekday'),
		waiting: waiting.map(waitingRow),
		fittingsToday: fittingsToday.map(({ fitting, garment, wearer }) => ({
			href: `/garments/${garment.id}/fittings/${fitting.id}`,
			at: fitting.from,
			name: garment.name,
			wearer: wearer.name
		})),
		garments: garments.map(({ garment, wearer, life, latest }, i) => ({
			id: garment.id,
			name: garment.name,
			wearer: wearer.name,
			scene: scenes[i],
			...stageNow(life, latest)
		})),
		wearers: wearers.map(({ wearer, garments: count, lastMeasured, lastFoundation }) => ({
			id: wearer.id,
			name: wearer.name,
			initials: initials(wearer.name),
			garments: count,
			measured: lastMeasured && dayWords(lastMeasured),
			foundation: lastFoundation
		}))
	};
};

function initials(name: string): string {
	const words = name.split(/\s+/).filter(Boolean);
	return [words[0], words.length > 1 ? words[words.length - 1] : undefined]
		.map((word) => word?.[0]?.toUpperCase() ?? '')
		.join('');
}
