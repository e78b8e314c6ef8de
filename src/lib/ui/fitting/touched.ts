interface Touch {
	readonly press: () => void;
	readonly lift: () => void;
}

/** Tells when a finger, or the first button of a mouse, is put on the page and when it is lifted. Answers what stops it. */
export function touched({ press, lift }: Touch, page: Window = window): () => void {
	const down = ({ isPrimary, button }: PointerEvent) => {
		if (isPrimary && button === 0) press();
	};
	const up = ({ isPrimary }: PointerEvent) => {
		if (isPrimary) lift();
	};
	// Where a menu opens, or something of the machine's comes before the page, some browsers do not tell that it was lifted.
	const lifting = ['contextmenu', 'blur', 'dragend'] as const;
	page.addEventListener('pointerdown', down, true);
	page.addEventListener('pointerup', up, true);
	page.addEventListener('pointercancel', up, true);
	for (const one of lifting) page.addEventListener(one, lift);
	return () => {
		page.removeEventListener('pointerdown', down, true);
		page.removeEventListener('pointerup', up, true);
		page.removeEventListener('pointercancel', up, true);
		for (const one of lifting) page.removeEventListener(one, lift);
	};
}
