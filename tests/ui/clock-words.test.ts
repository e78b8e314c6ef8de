import { expect, test } from 'vitest';
import { clockWords } from '../../src/lib/ui/clock-words.ts';

test.each([
	[0, 5, '12.05 am'],
	[9, 30, '9.30 am'],
	[12, 0, '12.00 pm'],
	[14, 32, '2.32 pm'],
	[23, 59, '11.59 pm']
])('%i:%i is said as on a watch', (hours, minutes, words) => {
	expect(clockWords(new Date(2026, 2, 10, hours, minutes))).toBe(words);
});

test('as the British way of writing it has it, but for the stop', () => {
	for (let minute = 0; minute < 24 * 60; minute += 7) {
		const instant = new Date(2026, 2, 10, 0, minute);
		const said = instant.toLocaleTimeString('en-GB', { hour: 'numeric', minute: '2-digit', hour12: true });
		expect(clockWords(instant)).toBe(said.replace(':', '.').replace(/^0(?=\.)/, '12'));
	}
});
