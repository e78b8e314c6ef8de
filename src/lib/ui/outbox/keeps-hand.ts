import type { Unsent } from './unsent.ts';

/** Fields of the hand that say how it is looked at, and not what is pinned. */
const looks = ['side', 'here', 'places', 'along', 'revision'];

/** Whether a form that is not answered yet keeps what is in the hand, as it stands there. */
export function keepsHand({ action, fields, answer }: Unsent, typed: Readonly<Record<string, string>>): boolean {
	if (answer !== undefined || !/\?\/keep\b/.test(action)) return false;
	const said = Object.entries(typed).filter(([name, text]) => text.trim() !== '' && !looks.includes(name));
	return said.length > 0 && said.every(([name, text]) => fields[name]?.trim() === text.trim());
}
