import type { GarmentPage, Preview, Station } from '$lib/server/journal/pages.ts';
import type { Alteration, Version } from '$lib/server/journal/records.ts';
import type { Draft, Step } from '$lib/engine/index.ts';
import type { Unit } from '$lib/measure/units.ts';
import { layThin } from '$lib/ui/drawing/lay-thin.ts';
import { pinsOfAlteration } from '$lib/ui/drawing/pins-of-alteration.ts';
import type { Material, PinOnDrawing } from '$lib/ui/drawing/scene.ts';
import { dayNear } from '$lib/ui/garment/day-near.ts';
import { stationName, stationNotes, stationsToCome } from '$lib/ui/garment/station-words.ts';
import type { Stage } from '$lib/ui/life-strip.ts';

/** px that the small drawing of a stage takes. */
const size = { width: 152, height: 122 } as const;

/** What the stages are drawn from, read by the page. */
export interface LifeDrawn {
	readonly page: GarmentPage;
	readonly versions: readonly Version[];
	/** Of the fittings that are still open. */
	readonly previews: ReadonlyMap<string, Preview>;
	readonly today: string;
	readonly unit: Unit;
}

/** The life of a garment as its strip shows it: each station as a true drawing in its material, then what is to come, dotted. */
export function garmentStages(drawn: LifeDrawn): readonly Stage[] {
	const { page, versions, today, unit } = drawn;
	const latest = versions[versions.length - 1]!.draft;
	const last = page.life.length - 1;
	const stages = page.life.map((station, i): Stage => {
		const { draft, before, pins, material } = drawingOf(station, drawn);
		return {
			name: stationName(station),
			href: `/garments/${page.garment.id}/${addressOf(station)}`,
			when: dayNear(station.date, today),
			notes: stationNotes(station, unit),
			state: i === last ? 'now' : 'done',
			scene: layThin(draft, { ...size, unit, material, pins: pins ?? [], ...(before && { before }) })
		};
	});
	const dotted = layThin(latest, { ...size, unit, material: 'to-come' });
	const toCome = stationsToCome(page.life).map(({ name, note }): Stage => ({
		name,
		notes: [note],
		state: 'to come',
		scene: dotted
	}));
	return [...stages, ...toCome];
}

function addressOf(station: Station): string {
	switch (station.kind) {
		case 'version':
			return `versions/${station.version.number}`;
		case 'toile':
			return `toiles/${station.toile.id}`;
		case 'fitting':
			return `fittings/${station.fitting.id}`;
		case 'lining':
			return 'lining';
	}
}

interface Drawing {
	readonly draft: Draft;
	readonly before?: Draft;
	readonly pins?: readonly PinOnDrawing[];
	readonly material: Material;
}

function drawingOf(station: Station, { page, versions, previews }: LifeDrawn): Drawing {
	const draftOf = (number: number) => versions[number]!.draft;
	switch (station.kind) {
		case 'version': {
			const { number } = station.version;
			return { draft: draftOf(number), material: number === 0 ? 'paper' : 'white' };
		}
		case 'toile':
			return { draft: draftOf(station.toile.cutFrom), material: 'calico' };
		case 'lining':
			return { draft: draftOf(station.lining.version), material: 'white' };
		case 'fitting': {
			const { id, on, carriedInto } = station.fitting;
			const alterations = page.fittings.find(({ fitting }) => fitting.id === id)?.alterations ?? [];
			const preview = previews.get(id);
			if (preview) return changed(preview.before, preview.after, preview.steps, alterations);
			if (carriedInto === null) return { draft: draftOf(on), material: 'calico' };
			const { draft, steps } = versions[carriedInto]!;
			return changed(draftOf(carriedInto - 1), draft, steps, alterations);
		}
	}
}

/** The cloth on the body with the lines that changed and the pins through them. */
function changed(before: Draft, draft: Draft, steps: readonly Step[], alterations: readonly Alteration[]): Drawing {
	const pins = steps.flatMap(({ alteration, touched }) => {
		const number = alterations.find(({ id }) => id === alteration)?.number;
		if (number === undefined) return [];
		const features = touched.map(({ feature }) => feature);
		return pinsOfAlteration({ number, before, after: draft, touched: features });
	});
	return { draft, before, pins: onePerAlteration(pins), material: 'calico' };
}

/** In so small a drawing one pin stands for both layers of a seam. */
function onePerAlteration(pins: readonly PinOnDrawing[]): readonly PinOnDrawing[] {
	const seen = new Set<number>();
	return pins.filter(({ number }) => !seen.has(number) && seen.add(number));
}
