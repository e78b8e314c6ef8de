import type { Measured } from './fold.ts';
import { parseLength } from './parse-length.ts';
import type { ShorthandProblem } from './shorthand-context.ts';
import { problem } from './shorthand-context.ts';
import type { Spoken } from './shorthand-meanings.ts';
import type { Act, ShorthandPlace } from './shorthand-words.ts';
import type { Unit } from './units.ts';

export interface Pinned {
	readonly place?: ShorthandPlace;
	readonly amount?: number;
	readonly act?: Act;
	readonly at: number;
}

export interface ReadItems {
	readonly pinned: readonly Pinned[];
	readonly on?: 'right' | 'left' | 'both';
	readonly act?: Act;
	readonly measured: Measured;
	readonly allAlong: boolean;
}

/** Gathers amounts and places into pins; amounts are as measured, in mm, without the act's sign. */
export function readItems(
	spoken: readonly Spoken[],
	unit: Unit,
	runs: 'down' | 'up',
	widthOnly: boolean
): ReadItems | ShorthandProblem {
	let pinned: Pinned[] = [];
	let open: Pinned | undefined;
	let act: Act | undefined;
	let firstAct: Act | undefined;
	let on: ReadItems['on'];
	let measured: Measured = 'one-layer';
	let allAlong = false;
	let offset: number | undefined;
	const close = () => {
		if (open) pinned.push(open);
		open = undefined;
	};
	for (let i = 0; i < spoken.length; i += 1) {
		const one = spoken[i];
		if (one.kind === 'amount') {
			const inchWord = isInch(spoken, i, act);
			const parsed = parseLength(inchWord ? `${one.text} in` : one.text, unit, { max: 1000 });
			if ('problem' in parsed) return problem(parsed.problem, one.at);
			if (inchWord) i += 1;
			const toward = spoken[i + 1];
			if (toward?.kind === 'said' && toward.meaning.kind === 'offset') {
				offset = parsed.mm * ((toward.meaning.toward === 'below') === (runs === 'down') ? 1 : -1);
				i += 1;
				continue;
			}
			if (open?.amount !== undefined && !allAlong && !widthOnly)
				return problem(`Where is the amount before ${one.text}? Write a place between the two.`, one.at);
			if (open?.amount !== undefined) close();
			open = { act, at: one.at, ...open, amount: parsed.mm };
			if (open.place) close();
			continue;
		}
		const { meaning } = one;
		if (meaning.kind === 'side') {
			if (on !== undefined && on !== meaning.on)
				return problem('One line is for one side. Write the other side in a line of its own.', one.at);
			on = meaning.on;
		} else if (meaning.kind === 'measured') measured = meaning.measured;
		else if (meaning.kind === 'all along') allAlong = true;
		else if (meaning.kind === 'offset')
			return problem(`Write how far before “${one.text}”, such as “2 ${one.text} waist”.`, one.at);
		else if (meaning.kind === 'comma' && open?.amount === undefined) close();
		else if (meaning.kind === 'act') {
			act = meaning.act;
			firstAct ??= act;
			const said = act;
			if (open) open = { ...open, act };
			pinned = pinned.map((pin) => ({ ...pin, act: pin.act ?? said }));
			if (!open && pinned.length > 0 && endsItem(spoken[i + 1])) pinned.push({ ...pinned.pop(), at: one.at, act });
		} else if (meaning.kind === 'place') {
			if (open?.place) close();
			const place = offset === undefined ? meaning.place : { ...meaning.place, offset };
			offset = undefined;
			open = { act, at: one.at, ...open, place };
			if (open.amount !== undefined) close();
		}
	}
	if (offset !== undefined)
		return problem('Above or below which place? Write it after the amount.', spoken.at(-1)?.at ?? 0);
	close();
	return { pinned, on, act: firstAct, measured, allAlong };
}

function isInch(spoken: readonly Spoken[], index: number, act: Act | undefined): boolean {
	const amount = spoken[index];
	const word = spoken[index + 1];
	if (amount.kind !== 'amount' || amount.marked || word?.kind !== 'said' || word.text !== 'in') return false;
	const after = spoken[index + 2];
	return act !== undefined || (after?.kind === 'said' && after.meaning.kind === 'offset');
}

function endsItem(following: Spoken | undefined): boolean {
	return following === undefined || (following.kind === 'said' && following.meaning.kind === 'comma');
}
