/** The queries that a form leaves as they are: a ticked `left` names one by its code and place, `note <code> <place>` says why. */
export function leftIn(form: FormData): { code: string; where: string; note: string }[] {
	return form.getAll('left').map((value) => {
		const key = String(value);
		const gap = key.indexOf(' ');
		return { code: key.slice(0, gap), where: key.slice(gap + 1), note: String(form.get(`note ${key}`) ?? '').trim() };
	});
}
