/**
 * Sends one picture as a bare body and tells how far it is, which only `XMLHttpRequest` can. Gives back the sentence that
 * says what would be right, or nothing when it was kept. What is too large is not sent at all.
 */
export function sendPicture(
	at: string,
	file: File,
	mirrored: boolean,
	largest: number,
	progress: (part: number) => void
): Promise<string | undefined> {
	if (file.size > largest)
		return Promise.resolve(
			`This is larger than ${largest / 1024 / 1024} MB, the most that a photo may have. Take it in a smaller size, or cut it down first.`
		);
	return new Promise((resolve) => {
		const request = new XMLHttpRequest();
		request.open('POST', mirrored ? `${at}?mirrored=yes` : at);
		request.setRequestHeader('accept', 'application/json');
		request.setRequestHeader('content-type', file.type || 'application/octet-stream');
		request.responseType = 'json';
		request.upload.addEventListener('progress', ({ loaded, total }) => progress(total > 0 ? loaded / total : 1));
		request.addEventListener('load', () => {
			if (request.status === 201) return resolve(undefined);
			const said = (request.response as { message?: unknown } | null)?.message;
			resolve(typeof said === 'string' ? said : 'It was not kept. Send it once more.');
		});
		for (const broken of ['error', 'abort', 'timeout'] as const)
			request.addEventListener(broken, () =>
				resolve('It did not arrive: the connection broke. It is still chosen here; send it again.')
			);
		request.send(file);
	});
}
