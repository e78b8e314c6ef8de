import { expect, test } from 'vitest';
import { parseDraft } from '../../../../src/lib/engine/index.ts';
import { stepWords } from '../../../../src/lib/ui/fitting/words/step.ts';
import { waistcoatFile } from '../../../server/support/waistcoat.ts';

const draft = parseDraft(waistcoatFile());
const seam = { number: 4, act: 'took-in', intent: { kind: 'seam', seam: 'side', pins: [] } };
const dart = {
	number: 5,
	act: 'new-dart',
	intent: {
		kind: 'dart',
		edge: 'front/top',
		at: { end: 'start' },
		intake: 10,
		point: { from: { edge: 'front/top', end: 'start' }, in: 50 }
	}
};
const seen = { letter: 'b', what: 'Drag lines from the under-arm to the waist, and folds across the back' };

test.each([
	[{ what: 'alteration-added', alteration: seam }, 'took in the side seam'],
	[{ what: 'alteration-changed', alteration: seam }, 'changed alteration 4, the side seam'],
	[{ what: 'alteration-left-out', alteration: seam }, 'left out alteration 4, the side seam'],
	[{ what: 'alteration-taken-up', alteration: seam }, 'took up alteration 4, the side seam, again'],
	[{ what: 'alteration-moved', alteration: seam }, 'put alteration 4, the side seam, elsewhere in the order'],
	[{ what: 'alteration-added', alteration: { ...seam, act: 'trued' } }, 'kept alteration 4, the side seam'],
	[{ what: 'alteration-added', alteration: dart }, 'pinned out a new dart, front top'],
	[{ what: 'observation-added', observation: seen }, 'noted b, drag lines from the under-arm to the waist, …'],
	[{ what: 'observation-changed', observation: seen }, 'changed what was noted at b']
])('%o is told as what it undoes', (step, words) => {
	expect(stepWords(draft, step, 'in')).toBe(words);
});
