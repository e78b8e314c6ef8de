/** The engine's laws over random drafts and histories. The seed stands in each test's name. */
import { describe, it } from 'vitest';
import { laws } from '../../support/laws.ts';
import { rigidLaws } from '../../support/rigid-laws.ts';

const seed = Number(process.env.LAW_SEED ?? 20261125);
const numRuns = Number(process.env.LAW_RUNS ?? 60);

describe('the laws over random drafts and histories', () => {
	for (const law of [...laws, ...rigidLaws])
		it(`${law.name} (seed ${seed}, ${numRuns} runs)`, { timeout: 600_000 }, () => law.hold({ seed, numRuns }));
});
