/** What the keyboard does in the rows of places; undefined until steps are computed in the browser. */
export interface RowKeys {
	readonly stepBy: (name: string, by: number) => void;
	readonly putDown: () => void;
}

/** Up and down step the amount that has the keyboard, or that of its place; with Shift by two. Escape puts the line down. */
export function pressInRow(event: KeyboardEvent, keys: RowKeys | undefined): void {
	const row = (event.target as Element).closest('[data-place]')?.getAttribute('data-place');
	if (!keys || !row || event.ctrlKey || event.metaKey || event.altKey) return;
	const by = { ArrowUp: 1, ArrowDown: -1 }[event.key];
	const { name } = event.target as HTMLInputElement;
	if (by !== undefined) keys.stepBy(name.includes('.') ? name : `amount.${row}`, event.shiftKey ? 2 * by : by);
	else if (event.key === 'Escape') keys.putDown();
	else return;
	event.preventDefault();
}
