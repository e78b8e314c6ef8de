/** Numbers of the entries that are looked for (Exif 2.32, JEITA CP-3451E, 4.6.3 and 4.6.5). */
const exifFolder = 0x8769;
const dateTimeOriginal = 0x9003;

/**
 * Day and time at which a picture was taken, from its Exif data: `2026-03-10T14:32:05`, by the camera's own clock; `null`
 * where it does not say, or says nonsense. Nothing else of the data is looked at, and none of it is kept.
 */
export function takenAt(exif: Uint8Array | undefined): string | null {
	if (!exif) return null;
	const all = Buffer.from(exif.buffer, exif.byteOffset, exif.byteLength);
	const tiff = all.subarray(all.toString('latin1', 0, 6) === 'Exif\0\0' ? 6 : 0);
	const order = tiff.toString('latin1', 0, 2);
	if (tiff.length < 8 || (order !== 'II' && order !== 'MM')) return null;
	const little = order === 'II';
	const short = (at: number) => (little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
	const long = (at: number) => (little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at));

	/** The value field of an entry of the folder that begins at `at`: a number, or the offset of something longer. */
	const valueOf = (at: number, wanted: number): number | undefined => {
		if (at + 2 > tiff.length) return undefined;
		for (let entry = at + 2, left = short(at); left > 0 && entry + 12 <= tiff.length; entry += 12, left--)
			if (short(entry) === wanted) return long(entry + 8);
		return undefined;
	};

	const folder = valueOf(long(4), exifFolder);
	const text = folder === undefined ? undefined : valueOf(folder, dateTimeOriginal);
	if (text === undefined || text + 19 > tiff.length) return null;
	return asIso(tiff.toString('latin1', text, text + 19));
}

/** Exif writes `2026:03:10 14:32:05`, and zeros or blanks where the clock was not set. */
function asIso(text: string): string | null {
	const parts = /^([12]\d{3}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)$/.exec(text);
	if (!parts) return null;
	const iso = `${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}`;
	const instant = Date.parse(`${iso}Z`);
	return Number.isNaN(instant) || !new Date(instant).toISOString().startsWith(iso) ? null : iso;
}
