const kinds: readonly [RegExp, string][] = [
	[/iPad/, 'a tablet (iPad)'],
	[/iPhone/, 'a phone (iPhone)'],
	[/Android(?!.*Mobile)/, 'a tablet (Android)'],
	[/Android/, 'a phone (Android)'],
	[/Windows/, 'a computer (Windows)'],
	[/CrOS/, 'a computer (ChromeOS)'],
	[/Macintosh/, 'a computer (Mac)'],
	[/Linux|X11/, 'a computer (Linux)']
];

const browsers: readonly [RegExp, string][] = [
	[/\bEdgA?\//, 'Edge'],
	[/\bFirefox\/|\bFxiOS\//, 'Firefox'],
	[/\bSamsungBrowser\//, 'Samsung Internet'],
	[/\bChrom(?:e|ium)\/|\bCriOS\//, 'Chrome'],
	[/\bSafari\//, 'Safari']
];

/**
 * What a browser says it is, in words by which its owner knows it among others: “a phone (Android), Firefox”. Browsers may
 * say anything; nothing but these words depends on it.
 */
export function deviceWords(userAgent: string | null): string {
	const find = (list: typeof kinds) => list.find(([pattern]) => pattern.test(userAgent ?? ''))?.[1];
	return [find(kinds) ?? 'a device', find(browsers)].filter(Boolean).join(', ');
}
