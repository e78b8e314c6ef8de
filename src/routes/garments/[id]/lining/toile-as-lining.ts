import { compare, cuttingLines, reuse } from '$lib/engine/index.ts';
import { inch, type Unit } from '$lib/measure/units.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import type { GarmentPage } from '$lib/server/journal/pages.ts';
import type { Version } from '$lib/server/journal/records.ts';
import type { AllowanceGroup } from '$lib/ui/allowances/allowance-groups.ts';
import type { AllowancesByEdge } from '$lib/ui/allowances/usual-allowances.ts';
import { cutPaths } from '$lib/ui/drawing/cut-paths.ts';
import { layClose } from '$lib/ui/drawing/lay-close.ts';
import { layTable } from '$lib/ui/drawing/lay-table.ts';
import { lessAllowance } from '$lib/ui/lining/less-allowance.ts';
import { answerWords, verdictRows } from '$lib/ui/lining/verdict-rows.ts';

interface Asked {
	readonly journal: Journal;
	readonly page: GarmentPage;
	readonly version: Version;
	readonly allowances: AllowancesByEdge;
	readonly groups: readonly AllowanceGroup[];
	readonly cut: ReturnType<typeof cuttingLines>;
	/** The id of a toile, or the latest that is not scrap. */
	readonly asked: string | null;
	readonly unit: Unit;
}

/** Whether a toile's cloth can become the lining, piece by piece, with what to look at; undefined where there is no toile. */
export function toileAsLining({ journal, page, version, allowances, groups, cut, asked, unit }: Asked) {
	const usable = page.toiles.filter(({ state }) => state !== 'scrap');
	const toile = usable.find(({ id }) => id === asked) ?? usable[usable.length - 1];
	if (!toile) return undefined;
	const { draft } = version;
	const draftOf = (number: number) => journal.version(page.garment.id, number)!.draft;
	const cloth = cuttingLines(draftOf(toile.cutFrom), { default: toile.allowance, edges: toile.allowances });
	const lines = { cut: cutPaths(cloth), wanted: cutPaths(cut) };
	const stitched = draftOf(toile.stitchedTo);
	const verdicts = reuse(cloth, cut);
	const rows = verdictRows({ draft, cloth, changes: compare(stitched, draft), verdicts, wanted: allowances, unit });
	const less = lessAllowance(cloth, draft, groups, allowances, unit === 'in' ? inch / 8 : 1);
	return {
		id: toile.id,
		number: toile.number,
		cloth: toile.cloth,
		others: usable.map(({ id, number }) => ({
			name: `Toile ${number}`,
			href: `?version=${version.number}&toile=${id}`,
			here: id === toile.id
		})),
		answer: answerWords(rows),
		recut: rows.some(({ verdict }) => verdict === 'recut'),
		rows,
		...(less && {
			less: {
				seams: less.less,
				typed: Object.entries(less.lengths).map(([key, mm]) => ({ key, value: `${Number(mm.toFixed(3))} mm` }))
			}
		}),
		scene: layTable(draft, {
			...{ unit, before: stitched, ...lines, material: 'calico', caption: 60 }
		}),
		close: rows.flatMap(({ letter, where, near, name }) =>
			letter && where
				? [
						{
							letter,
							name,
							scene: layClose(draft, {
								...{ unit, edges: [where], before: stitched, ...lines, material: 'calico' },
								...{ width: 300, height: 240, perInch: 60 },
								...(near !== undefined && { at: near })
							})
						}
					]
				: []
		)
	};
}
