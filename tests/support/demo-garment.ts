import type { APIRequestContext } from '@playwright/test';

/** The address of the demo's garment, found in the workroom: `/garments/k3x…`. */
export async function demoGarment(request: APIRequestContext, server = ''): Promise<string> {
	const workroom = await (await request.get(`${server}/`)).text();
	const link = /href="(\/garments\/(?!new)[a-z0-9]+)"[^>]*>(?:(?!<\/a>)[^])*?Governess jacket/.exec(workroom);
	if (!link) throw new Error('the workroom does not show the demo’s garment');
	return link[1];
}
