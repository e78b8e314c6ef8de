/** Where what had the keyboard is gone, it is on the chosen place, else on the first thing of the hand that can be chosen next. */
export function keepFocus(): void {
	if (document.activeElement !== document.body) return;
	const next = ['[aria-pressed="true"].place-name', '.act', '.hand :is(select, input:not([type="hidden"]))', 'a'];
	const found = next.map((one) => document.querySelector<HTMLElement>(`#in-hand ${one}`));
	found.find((one) => one !== null)?.focus({ preventScroll: true });
}
