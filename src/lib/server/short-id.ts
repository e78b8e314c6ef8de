import { randomBytes } from 'node:crypto';

/** Letters and figures that cannot be taken for one another: 32 of them, so that each byte gives one evenly. */
const alphabet = 'abcdefghjkmnpqrstuvwxyz023456789';

/**
 * A random id, `p` and nine letters and figures (45 bits), fit for addresses and for names of darts. Two alike are refused by
 * the database; among ten thousand that happens to one journal in 700,000.
 */
export function shortId(): string {
	return 'p' + [...randomBytes(9)].map((byte) => alphabet[byte % alphabet.length]).join('');
}
