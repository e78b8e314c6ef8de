type Control = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/**
 * What was typed and chosen in a page before its script took it over, to be put back after: taking over writes the values that
 * the page was sent with, and on a slow telephone that comes a while after the first letter. Called at the last moment before;
 * answers what puts everything back, and then tells the page of each: it is to find all of them as they were.
 */
export function typedEarly(page: ParentNode): () => void {
	const changed = [...page.querySelectorAll<Control>('input, textarea, select')].filter(isChanged);
	const back = changed.map(putBack);
	return () => {
		for (const one of back) one();
		for (const control of changed) tell(control);
	};
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
	};
}

function tell(control: Control) {
	for (const heard of ['input', 'change']) control.dispatchEvent(new Event(heard, { bubbles: true }));
}

const isTicked = (control: Control): control is HTMLInputElement =>
	control instanceof HTMLInputElement && ['radio', 'checkbox'].includes(control.type);
