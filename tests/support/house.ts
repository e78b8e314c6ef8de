import type { Source } from './layers.ts';

/** Words are kept in parts, so that this file does not hold what it looks for. */
const said = (...parts: string[]): string => parts.join('');

/** What no file may say: paths of the machine that a file was written on, where packages came from, who typed. */
const unsayable: readonly RegExp[] = [
	new RegExp(said('(^|[^\\w.-])/(wo', 'rk|ro', 'ot|ho', 'me|tm', 'p|Us', 'ers)/')),
	new RegExp(said('reg', 'istry\\.np', 'm|np', 'mjs\\.|deb\\.deb', 'ian')),
	new RegExp(said('\\b(seed[ -]doc', 'ument|trans', 'cript|lang', 'uage model|chat', 'bot)'), 'i'),
	new RegExp(said('\\b(Cla', 'ude|Anth', 'ropic|LL', 'Ms?|G', 'PT|A', 'I)\\b')),
	new RegExp(said('\\b(this|a|my|our) ses', 'sion\\b'), 'i'),
	new RegExp(said('\\b(prac', 'tice|eng', 'ine|che', 'cks|prod', 'uct|ho', 'use|sta', 'ck|lo', 'ok)\\.m', 'd\\b')),
	new RegExp(said('\\biss', 'ues? #?\\d'), 'i')
];

/** A sentence for each line that says what no file may say. */
export function unsayableIn({ path, text }: Source): string[] {
	return text.split('\n').flatMap((line, index) => {
		const found = unsayable.map((pattern) => pattern.exec(line)?.[0]).find(Boolean);
		return found ? [`${path}:${index + 1} says "${found}"`] : [];
	});
}

/** The scripts of package.json that a text tells its reader to run: `npm start`, `npm test`, `npm run bench`. */
export function commandsIn(text: string): string[] {
	return [...text.matchAll(/\bnpm (?:run ([\w:-]+)|(start|test)\b)/g)].map((match) => match[1] ?? match[2]);
}

/** The project's own files and folders that a text names between backticks: `src/start/serve.js`, `drizzle/`. */
export function pathsIn(text: string): string[] {
	return [...text.matchAll(/`((?:\.ci|drizzle|src|static|tests)\/[^`\s*…<>]*|[\w.-]+\.(?:ts|js|json|md))`/g)].map(
		(match) => match[1]
	);
}

/** The named rules that a text speaks of: `[CLOSED]`, `[NOTHING]`. */
export function rulesIn(text: string): string[] {
	return [...new Set([...text.matchAll(/\[([A-Z]{4,})\]/g)].map((match) => match[1]))].sort();
}
