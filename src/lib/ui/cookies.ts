/** Names of the two cookies of the shell. */
export const unitCookie = 'unit';
export const dimCookie = 'dim';
/** Of the one that tells apart what several devices have in the hand at a fitting: random letters, made by the browser. */
export const handCookie = 'hand';

/** A year; sent over plain http too, for the workroom runs on its own machine. */
export const cookieOptions = {
	path: '/',
	maxAge: 365 * 24 * 60 * 60,
	sameSite: 'lax',
	httpOnly: true,
	secure: false
} as const;
