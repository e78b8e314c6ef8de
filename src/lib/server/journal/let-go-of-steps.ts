import { eq } from 'drizzle-orm';
import { fittingSteps, hands } from '../database/schema/steps.ts';
import type { Store } from './store.ts';

/** Lets go of what only an open fitting needs: what can be undone there, and what is in the hand. */
export function letGoOfSteps({ db }: Store, fittingId: string): void {
	db.delete(fittingSteps).where(eq(fittingSteps.fitting, fittingId)).run();
	db.delete(hands).where(eq(hands.fitting, fittingId)).run();
}
