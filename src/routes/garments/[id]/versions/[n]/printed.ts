import { error, type RequestEvent } from '@sveltejs/kit';
import type { PaperName } from '$lib/output/page/paper.ts';
import type { PatternSheetInput } from '$lib/output/pattern-input.ts';
import { SheetTooLarge } from '$lib/output/sheet.ts';
import { foundGarment, foundVersion } from '$lib/server/http/found.ts';
import { patternFileName } from '$lib/server/pattern/file-name.ts';
import { patternInput } from '$lib/server/pattern/pattern-input.ts';
import { allowancesToCut } from '$lib/ui/allowances/allowances-to-cut.ts';
import { unitCookie } from '$lib/ui/cookies.ts';

type Asked = Pick<RequestEvent<{ id: string; n: string }>, 'locals' | 'params' | 'url' | 'cookies'>;

/** The version of the address, as it is printed; with the lines that the address asks for. */
export function printedVersion({ locals, params, url, cookies }: Asked): PatternSheetInput {
	const page = foundGarment(locals.journal, params.id);
	const version = foundVersion(locals.journal, page, params.n);
	return patternInput(page, version, {
		allowances: allowancesToCut(version, page.lining),
		lines: oneOf(url, 'lines', { 'with-allowances': 'with allowances', stitching: 'stitching only' }),
		unit: cookies.get(unitCookie) === 'cm' ? 'cm' : 'in'
	});
}

const papers = { 'one-sheet': undefined, a4: 'A4', letter: 'Letter' } as const;

/** What it is printed on: sheets for a home printer, or undefined for one large sheet. */
export function askedPaper({ url }: Pick<Asked, 'url'>): PaperName | undefined {
	return oneOf(url, 'paper', papers);
}

/** What an option of an address stands for; the first is meant where it is left out. */
function oneOf<const T>(url: URL, name: string, values: Readonly<Record<string, T>>): T {
	const asked = url.searchParams.get(name) ?? Object.keys(values)[0];
	if (Object.hasOwn(values, asked)) return values[asked];
	return error(
		400,
		`“${name}” takes one of these: ${Object.keys(values).join(', ')}. Choose it on the version’s page.`
	);
}

/** A file with its own name; `shown` in the browser, where it can be printed from, or kept at once. */
export function fileOf(
	body: string | Uint8Array<ArrayBuffer>,
	{ title }: Pick<PatternSheetInput, 'title'>,
	{ extension, type, what, shown = false }: { extension: string; type: string; what?: string; shown?: boolean }
): Response {
	const name = patternFileName(title, extension, what);
	return new Response(body, {
		headers: { 'content-type': type, 'content-disposition': `${shown ? 'inline' : 'attachment'}; filename="${name}"` }
	});
}

/** What a writer gives, or a sentence for a version that no sheet can hold. */
export async function written<T>(write: () => T | Promise<T>): Promise<T> {
	try {
		return await write();
	} catch (problem) {
		if (problem instanceof SheetTooLarge) error(400, problem.message);
		throw problem;
	}
}
