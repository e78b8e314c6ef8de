import { expect, test } from 'vitest';
import { inUnit } from '../../src/lib/measure/in-unit.ts';

// 1 in is 25.4 mm exactly (international yard and pound agreement, 1959).
test.each([
	['One leg is 1/16″ longer than the other.', 'One leg is 1.5 mm longer than the other.'],
	['It takes 1″; over 3/4″, two lie flatter.', 'It takes 2.5 cm; over 1.9 cm, two lie flatter.'],
	['At most 12 1/2″ works there.', 'At most 31.8 cm works there.'],
	['The 2 notches of 3/8 pleats are 45° off.', 'The 2 notches of 3/8 pleats are 45° off.']
])('%s', (written, read) => {
	expect(inUnit(written, 'in')).toBe(written);
	expect(inUnit(written, 'cm')).toBe(read);
});
