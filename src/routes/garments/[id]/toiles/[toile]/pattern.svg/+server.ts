import { writeSvg } from '$lib/output/svg.ts';
import { fileOf, written } from '../../../versions/[n]/printed.ts';
import { printedToile } from '../printed-toile.ts';
import type { RequestHandler } from './$types';

/** The toile's pattern true to size in mm, with its allowances, on one sheet. */
export const GET: RequestHandler = async (event) => {
	const input = printedToile(event);
	const body = await written(() => writeSvg(input));
	return fileOf(body, input, { extension: 'svg', type: 'image/svg+xml' });
};
