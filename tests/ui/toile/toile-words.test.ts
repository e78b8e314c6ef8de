import { expect, it } from 'vitest';
import {
	canBeTriedOn,
	nextState,
	stateInWords,
	toileStateWords,
	type ToileStateSaid
} from '../../../src/lib/ui/toile/toile-words.ts';

const states = Object.keys(toileStateWords) as ToileStateSaid[];

it('a restitched toile says whose lines it is sewn on', () => {
	expect(stateInWords('restitched', 2)).toBe('Restitched on the lines of version 2');
	expect(stateInWords('taken-apart', 2)).toBe('Taken apart');
});

it('from being cut, what usually comes next leads round to the next fitting', () => {
	const walk: ToileStateSaid[] = ['cut'];
	for (let i = 0; i < 6; i++) walk.push(nextState(walk[walk.length - 1]!));
	expect(walk).toEqual(['cut', 'put-together', 'fitted', 'marked', 'taken-apart', 'restitched', 'fitted']);
});

it('a toile can be tried on while it holds together and was not tried on since', () => {
	expect(states.filter(canBeTriedOn)).toEqual(['cut', 'put-together', 'restitched']);
});
