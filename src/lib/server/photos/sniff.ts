import type { Photo } from '../journal/photo-records.ts';

/** What a file is by its first bytes, whatever it calls itself. */
export interface Sniffed {
	readonly kind: Photo['kind'];
	/** Of the HEIF family, the kind that telephones write and that cannot be opened here: HEIC, which is coded as HEVC. */
	readonly heic: boolean;
}

/** How many of a file's first bytes `sniff` looks at. */
export const sniffedBytes = 64;

/** Brands of HEIF files that are coded as HEVC (ISO/IEC 23008-12, annex B). */
const hevcBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'hevm', 'hevs'];
/** Brands that say HEIF or AVIF without naming HEVC (ISO/IEC 23008-12; AV1 Image File Format 1.1, section 6). */
const otherBrands = ['avif', 'avis', 'mif1', 'msf1'];

/**
 * The kind of a picture by its first bytes (JPEG: ISO/IEC 10918-1, SOI and a marker; PNG: its signature, ISO/IEC 15948;
 * WebP: RIFF with the form WEBP; HEIF: an `ftyp` box with one of its brands); nothing for anything else.
 */
export function sniff(bytes: Uint8Array): Sniffed | undefined {
	const latin = Buffer.from(bytes.subarray(0, sniffedBytes)).toString('latin1');
	if (latin.startsWith('\xff\xd8\xff')) return { kind: 'jpeg', heic: false };
	if (latin.startsWith('\x89PNG\r\n\x1a\n')) return { kind: 'png', heic: false };
	if (latin.startsWith('RIFF') && latin.slice(8, 12) === 'WEBP') return { kind: 'webp', heic: false };
	if (latin.slice(4, 8) !== 'ftyp') return undefined;
	const brands = brandsOf(latin);
	if (brands.some((brand) => hevcBrands.includes(brand))) return { kind: 'heif', heic: true };
	return brands.some((brand) => otherBrands.includes(brand)) ? { kind: 'heif', heic: false } : undefined;
}

/** The major brand and the compatible ones, as far as they were read; between them stands a version. */
function brandsOf(latin: string): string[] {
	const size = Buffer.from(latin.slice(0, 4), 'latin1').readUInt32BE();
	const box = latin.slice(8, Math.min(size, latin.length));
	return [box.slice(0, 4), ...(box.slice(8).match(/.{4}/gs) ?? [])];
}
