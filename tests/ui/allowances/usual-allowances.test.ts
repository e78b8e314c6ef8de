import { expect, test } from 'vitest';
import demo from '../../../src/lib/intake/demo-draft.json';
import { parseDraft } from '../../../src/lib/engine/index.ts';
import { allowancesToCut } from '../../../src/lib/ui/allowances/allowances-to-cut.ts';
import { usualAllowances } from '../../../src/lib/ui/allowances/usual-allowances.ts';

const draft = parseDraft(demo);
const inch = 25.4;

test('a jacket has 1 1/2 in to turn under, 1 in at its closing, 3/8 in at neck and armhole, and 3/4 in elsewhere', () => {
	const { default: usual, edges } = usualAllowances(draft);
	expect(usual).toBe(0.75 * inch);
	expect(edges['front/hem']).toBe(1.5 * inch);
	expect(edges['top-sleeve/wrist']).toBe(1.5 * inch);
	expect(edges['front/front-edge']).toBe(inch);
	for (const name of ['front/neck', 'back/neck', 'under-arm/armhole', 'under-sleeve/head', 'top-sleeve/head-back'])
		expect(edges[name], name).toBe(0.375 * inch);
	for (const name of ['front/side', 'front/shoulder', 'top-sleeve/hind']) expect(edges[name], name).toBeUndefined();
});

test('the version chosen for the lining is cut with the lining’s own', () => {
	const lining = { version: 2, allowance: 12.7, allowances: { 'front/neck': 6.35 } };
	expect(allowancesToCut({ number: 2, draft }, lining)).toEqual({ default: 12.7, edges: { 'front/neck': 6.35 } });
	expect(allowancesToCut({ number: 1, draft }, lining)).toEqual(usualAllowances(draft));
	expect(allowancesToCut({ number: 2, draft }, null)).toEqual(usualAllowances(draft));
});
