import { typedIn, type Typed } from '$lib/server/http/form.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { inUnit } from '$lib/ui/fitting/form/in-unit.ts';
import { addressOf } from '$lib/ui/fitting/typed.ts';
import { fail, redirect } from '@sveltejs/kit';
import type { Answer, Refusal, Stale } from '$lib/server/journal/answer.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import { notKept } from '$lib/server/http/form.ts';
import type { RequestEvent } from './$types';

/** Which of the page's forms is answered; the others stay as they are. */
export type Which = 'keep' | 'order' | 'steps' | 'observe' | 'verdict' | 'pins' | 'close';

/** What was sent, and the unit that its lengths are written in; `came`: what it came to, if it was sent and kept before. */
export async function asked({
	request,
	cookies,
	locals
}: RequestEvent): Promise<{ typed: Typed; unit: Unit; came: string | undefined }> {
	const unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const typed = inUnit(typedIn(await request.formData()), unit);
	const came = typed.once ? locals.journal.cameTo(typed.once) : undefined;
	return { typed, unit, came };
}

/** Does what a form asks: once for each key, where its browser gave it one. */
export function doneOnce<T extends { readonly id: string }, C>(
	journal: Journal,
	{ once = '' }: Typed,
	act: () => Answer<T, C>
): Answer<{ readonly id: string }, C> {
	return once === '' ? act() : journal.once(once, act);
}

/** A form of the page that was wrong: what was typed is kept, every field has its sentence. */
export function wrong(which: Which, typed: Typed, problems: Readonly<Record<string, string>>, status = 400) {
	return fail(status, { which, typed, problems, current: undefined as unknown });
}

/** A form whose writing the journal did not keep; `stands` says in words how the record is now, where it was changed meanwhile. */
export function refusedBy<Current>(which: Which, answer: Refusal | Stale<Current>, typed: Typed, stands?: string) {
	const { status, data } = notKept(answer, typed);
	const { problems, current } = data;
	return fail(status, {
		which,
		typed: data.typed,
		problems,
		current: current as unknown,
		...(stands !== undefined && { stands })
	});
}

/** Back to the page, in the state that these fields say. */
export function backTo({ params }: RequestEvent, typed: Readonly<Record<string, string>>, anchor = ''): never {
	const query = addressOf(typed);
	redirect(303, `/garments/${params.id}/fittings/${params.fitting}${query === '?' ? '' : query}${anchor}`);
}
