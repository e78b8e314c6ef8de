import { typedIn, type Typed } from '$lib/server/http/form.ts';
import type { Unit } from '$lib/measure/units.ts';
import { unitCookie } from '$lib/ui/cookies.ts';
import { inUnit } from '$lib/ui/fitting/form/in-unit.ts';
import { addressOf } from '$lib/ui/fitting/typed.ts';
import { fail, redirect } from '@sveltejs/kit';
import type { Answer, Refusal, Stale } from '$lib/server/journal/answer.ts';
import type { Journal } from '$lib/server/journal/journal.ts';
import { notKept } from '$lib/server/http/form.ts';
import { sameWords } from '$lib/server/http/same-words.ts';
import type { RequestEvent } from './$types';

/** Which of the page's forms is answered; the others stay as they are. */
export type Which = 'keep' | 'order' | 'steps' | 'observe' | 'verdict' | 'pins' | 'close';

/**
 * What was sent, and the unit that its lengths are in; `came`: what it came to, if it was sent and kept before, with the same key or
 * word for word from the same page.
 */
export async function asked({
	request,
	cookies,
	locals
}: RequestEvent): Promise<{ typed: Typed; unit: Unit; came: string | undefined }> {
	const unit = cookies.get(unitCookie) === 'cm' ? 'cm' : 'in';
	const typed = inUnit(typedIn(await request.formData()), unit);
	const [came] = keysOf(typed).flatMap((key) => locals.journal.cameTo(key) ?? []);
	return { typed, unit, came };
}

/** Does what a form asks: once for each key. */
export function doneOnce<T extends { readonly id: string }, C>(
	journal: Journal,
	typed: Typed,
	act: () => Answer<T, C>
): Answer<{ readonly id: string }, C> {
	const once = keysOf(typed).reduceRight<() => Answer<{ readonly id: string }, C>>(
		(inner, key) => () => journal.once(key, inner),
		act
	);
	return once();
}

/**
 * What a form is known by when it is sent again: the key that its browser gave it, and what it says word for word with the key of the
 * page that it was drawn on. A button is pressed twice before its page has come to life, or where it has no script.
 */
function keysOf({ once = '', inHand: _, ...said }: Typed): readonly string[] {
	return [once, said.drawn ? sameWords(said) : ''].filter((key) => key !== '');
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
