import type { deserialize } from '$app/forms';
import type { Answered } from './unsent.ts';

/** What a form came to, as the server says it. */
export type FormResult = ReturnType<typeof deserialize>;

/** Whether a form was kept; to be asked to sign in is not that. */
export function wasKept(result: FormResult): boolean {
	return result.type === 'success' || (result.type === 'redirect' && !asksToSignIn(result));
}

export function asksToSignIn(result: FormResult): boolean {
	return result.type === 'redirect' && /^\/sign-in\b/.test(result.location);
}

/** What a form that was not kept was answered, as its page says it. */
export function answeredOf(result: FormResult): Answered {
	if (result.type === 'failure') {
		const { problems = {}, stands, current } = (result.data ?? {}) as Failure;
		return {
			status: result.status,
			sentence: Object.values(problems).join(' '),
			...(stands !== undefined && { stands }),
			...(current?.revision !== undefined && { revision: current.revision })
		};
	}
	const error = result.type === 'error' ? (result.error as { message?: string } | undefined) : undefined;
	return { status: result.status ?? 500, sentence: error?.message ?? 'It was not kept.' };
}

interface Failure {
	readonly problems?: Readonly<Record<string, string>>;
	readonly stands?: string;
	readonly current?: { readonly revision?: number };
}
