import type { ShellData } from '$lib/ui/head.ts';
import { dimCookie, unitCookie } from '$lib/ui/cookies.ts';
import type { LayoutServerLoad } from './$types';

/** Unit and dimming are this device's own; the browser keeps them, not the journal. */
export const load: LayoutServerLoad = ({ cookies }): ShellData => ({
	unit: cookies.get(unitCookie) === 'cm' ? 'cm' : 'in',
	dim: cookies.get(dimCookie) === 'yes'
});
