/** Whether any of the first element of this selector is on the screen now. */
export function onScreen(selector: string): boolean {
	const box = document.querySelector(selector)?.getBoundingClientRect();
	return box !== undefined && box.width > 0 && box.bottom > 0 && box.top < innerHeight;
}
