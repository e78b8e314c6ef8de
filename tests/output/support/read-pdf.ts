import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

type Matrix = readonly [number, number, number, number, number, number];
type XY = readonly [x: number, y: number];

/** One painted path of a page, in points of 1/72 in from the page's lower left corner. */
export interface PaintedPath {
	/** Tags of the marked content it stands in, outermost first. */
	readonly marks: readonly string[];
	readonly paint: 'stroke' | 'fill';
	readonly lineWidth: number;
	/** As drawn: a corner or end, or three points of a cubic. */
	readonly steps: readonly { readonly kind: 'move' | 'line' | 'curve'; readonly points: readonly XY[] }[];
	readonly closed: boolean;
}

export interface ReadPage {
	readonly width: number;
	readonly height: number;
	readonly paths: readonly PaintedPath[];
	readonly texts: readonly string[];
	/** As the file names them, with whether the font program is in the file. */
	readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
}

export interface ReadPdf {
	readonly info: Readonly<Record<string, unknown>>;
	readonly pages: readonly ReadPage[];
}

/** A PDF as a general-purpose reader sees it: page sizes, painted paths with their transforms applied, text, fonts. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
	const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
	const { info } = await document.getMetadata();
	const pages: ReadPage[] = [];
	for (let number = 1; number <= document.numPages; number++)
		pages.push(await readPage(await document.getPage(number)));
	await document.destroy();
	return { info: info as Record<string, unknown>, pages };
}

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: Page): Promise<ReadPage> {
	const { fnArray, argsArray } = await page.getOperatorList();
	const text = await page.getTextContent();
	const [left, bottom, right, top] = page.view;
	const fontNames = new Set<string>();
	const paths: PaintedPath[] = [];
	let state = { matrix: [1, 0, 0, 1, 0, 0] as Matrix, lineWidth: 1 };
	const saved: (typeof state)[] = [];
	const marks: string[] = [];
	fnArray.forEach((operation, i) => {
		const args = argsArray[i];
		if (operation === OPS.save || operation === OPS.paintFormXObjectBegin) saved.push(state);
		if (operation === OPS.restore || operation === OPS.paintFormXObjectEnd) state = saved.pop() ?? state;
		if (operation === OPS.transform) state = { ...state, matrix: product(state.matrix, args as Matrix) };
		if (operation === OPS.paintFormXObjectBegin && args[0])
			state = { ...state, matrix: product(state.matrix, args[0] as Matrix) };
		if (operation === OPS.setLineWidth) state = { ...state, lineWidth: args[0] as number };
		if (operation === OPS.setFont) fontNames.add(args[0] as string);
		if (operation === OPS.beginMarkedContent) marks.push((args[0] as { name: string }).name);
		if (operation === OPS.endMarkedContent) marks.pop();
		if (operation === OPS.constructPath && (args[0] === OPS.stroke || args[0] === OPS.fill))
			paths.push({
				marks: [...marks],
				paint: args[0] === OPS.stroke ? 'stroke' : 'fill',
				lineWidth: state.lineWidth * Math.sqrt(Math.abs(determinant(state.matrix))),
				...steps(args[1][0] as Float32Array, state.matrix)
			});
	});
	return {
		width: right - left,
		height: top - bottom,
		paths,
		texts: text.items.flatMap((item) => ('str' in item && item.str !== '' ? [item.str] : [])),
		fonts: [...fontNames].map((name) => {
			const font = page.commonObjs.get(name) as { name: string; missingFile: boolean };
			return { name: font.name, embedded: font.missingFile === false };
		})
	};
}

/** The reader's own coding of a path: 0 move, 1 line, 2 cubic, 4 close, each followed by its points. */
function steps(data: Float32Array, matrix: Matrix): Pick<PaintedPath, 'steps' | 'closed'> {
	const kinds = { 0: ['move', 1], 1: ['line', 1], 2: ['curve', 3] } as const;
	const found: PaintedPath['steps'][number][] = [];
	let closed = false;
	for (let i = 0; i < data.length;) {
		const code = data[i++];
		if (code === 4) {
			closed = true;
			continue;
		}
		if (code !== 0 && code !== 1 && code !== 2) throw new Error(`a path step of an unknown kind: ${code}`);
		const [kind, count] = kinds[code];
		const points = Array.from({ length: count }, (_, k) => applied(matrix, [data[i + 2 * k], data[i + 2 * k + 1]]));
		i += 2 * count;
		found.push({ kind, points });
	}
	return { steps: found, closed };
}

function product(outer: Matrix, inner: Matrix): Matrix {
	const [a, b, c, d, e, f] = outer;
	const [p, q, r, s, t, u] = inner;
	return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

function applied([a, b, c, d, e, f]: Matrix, [x, y]: XY): XY {
	return [a * x + c * y + e, b * x + d * y + f];
}

function determinant([a, b, c, d]: Matrix): number {
	return a * d - b * c;
}

/** The length of a painted path in points, cubics by many chords. */
export function lengthInPoints({ steps, closed }: PaintedPath): number {
	let length = 0;
	let at: XY = steps[0].points[0];
	const start = at;
	const go = (to: XY) => {
		length += Math.hypot(to[0] - at[0], to[1] - at[1]);
		at = to;
	};
	for (const { kind, points } of steps) {
		if (kind === 'move') at = points[0];
		else if (kind === 'line') go(points[0]);
		else {
			const from = at;
			for (let k = 1; k <= 2000; k++) go(onCubic(from, points, k / 2000));
		}
	}
	if (closed) go(start);
	return length;
}

function onCubic(from: XY, [one, two, to]: readonly XY[], t: number): XY {
	const u = 1 - t;
	const at = (i: 0 | 1) => u ** 3 * from[i] + 3 * u * u * t * one[i] + 3 * u * t * t * two[i] + t ** 3 * to[i];
	return [at(0), at(1)];
}
