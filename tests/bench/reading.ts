import { check, cuttingLines, parseDraft } from '../../src/lib/engine/index.ts';
import file from '../../src/lib/intake/demo-draft.json';
import { report } from './report.ts';

export const readAnew = () =>
	report('A draft read anew each time, so that nothing is remembered from the time before', [
		{ name: 'read the draft file', run: () => parseDraft(file) },
		{ name: 'read and check', run: () => check(parseDraft(file)) },
		{ name: 'read and lay the cutting lines', run: () => cuttingLines(parseDraft(file), { default: 15 }) }
	]);
