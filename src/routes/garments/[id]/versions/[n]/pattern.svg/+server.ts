import { writeSvg } from '$lib/output/svg.ts';
import { fileOf, printedVersion, written } from '../printed.ts';
import type { RequestHandler } from './$types';

/** The pattern true to size in mm, on one sheet. */
export const GET: RequestHandler = async (event) => {
	const input = printedVersion(event);
	const body = await written(() => writeSvg(input));
	return fileOf(body, input, { extension: 'svg', type: 'image/svg+xml' });
};
