type Control = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/**
 * What was typed and chosen in a page before its script took it over, to be put back after: taking over writes the values that
 * the page was sent with, and on a slow telephone that comes a while after the first letter. Called at the last moment before;
 * answers what puts everything back.
 */
export function typedEarly(page: ParentNode): () => void {
	const changed = [...page.querySelectorAll<Control>('input, textarea, select')].filter(isChanged).map(putBack);
	return () => changed.forEach((back) => back());
}

function isChanged(control: Control): boolean {
	if (control instanceof HTMLSelectElement)
		return [...control.options].some((option) => option.selected !== option.defaultSelected);
	if (isTicked(control)) return control.checked !== control.defaultChecked;
	return control.type !== 'file' && control.type !== 'hidden' && control.value !== control.defaultValue;
}

function putBack(control: Control): () => void {
	const { value } = control;
	const ticked = isTicked(control) && control.checked;
	return () => {
		if (isTicked(control)) control.checked = ticked;
		else control.value = value;
		for (const heard of ['input', 'change']) control.dispatchEvent(new Event(heard, { bubbles: true }));
	};
}

const isTicked = (control: Control): control is HTMLInputElement =>
	control instanceof HTMLInputElement && ['radio', 'checkbox'].includes(control.type);
