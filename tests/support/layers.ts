import { posix } from 'node:path';
import { importsOf, type Import } from './imports-of.ts';

/** A source file as the checks see it: its path from the project's folder, with `/`, and its text. */
export interface Source {
	readonly path: string;
	readonly text: string;
}

/** Each room: where it is, and which other rooms it may know. The first whose place fits is the file's room. */
const rooms: Record<string, { at: RegExp; knows: readonly string[] }> = {
	geometry: { at: /^src\/lib\/engine\/geometry\//, knows: [] },
	draft: { at: /^src\/lib\/engine\/draft\//, knows: ['geometry'] },
	alteration: { at: /^src\/lib\/engine\/alteration\//, knows: ['geometry', 'draft'] },
	review: { at: /^src\/lib\/engine\/review\//, knows: ['geometry', 'draft', 'alteration'] },
	cutting: { at: /^src\/lib\/engine\/cutting\//, knows: ['geometry', 'draft'] },
	door: { at: /^src\/lib\/engine\/[^/]+$/, knows: ['geometry', 'draft', 'alteration', 'review', 'cutting'] },
	measure: { at: /^src\/lib\/measure\//, knows: [] },
	intake: { at: /^src\/lib\/intake\//, knows: ['door'] },
	output: { at: /^src\/lib\/output\//, knows: ['door', 'measure'] },
	ui: { at: /^src\/lib\/ui\//, knows: ['door', 'measure'] },
	server: { at: /^src\/lib\/server\//, knows: ['door', 'output', 'intake', 'measure'] },
	start: { at: /^src\/start\//, knows: [] },
	routes: { at: /^src\/(routes\/|[^/]+$)/, knows: ['server', 'door', 'output', 'intake', 'measure', 'ui'] }
};

/** Who may use which package. One that is not named here may be used by nobody: naming it is the decision. */
const packages: Record<string, RegExp> = {
	zod: /^src\/(lib\/engine\/(draft\/file|alteration)\/|lib\/server\/http\/|routes\/)/,
	'drizzle-orm': /^src\/lib\/server\//,
	'better-sqlite3': /^src\/lib\/server\//,
	'clipper2-ts': /^src\/lib\/engine\/geometry\/polygon\.ts$/,
	svgpath: /^src\/lib\/engine\/geometry\/path-data\.ts$/,
	'd3-selection': /^src\/lib\/ui\/drawing\/(zooming|nothing-glides)\.ts$/,
	'd3-zoom': /^src\/lib\/ui\/drawing\/zooming\.ts$/,
	pdfkit: /^src\/lib\/output\//,
	fontkit: /^src\/lib\/output\//,
	sharp: /^src\/lib\/server\//,
	qrcode: /^src\/lib\/server\//,
	svelte: /^src\/(lib\/ui|routes)\//,
	'@sveltejs/kit': /^src\/(routes\/|hooks\.|lib\/server\/http\/)/,
	'@fontsource-variable/commissioner': /^src\/(lib\/ui|routes)\//,
	'@fontsource-variable/literata': /^src\/(lib\/ui|routes)\//
};
const nodeOwn = /^src\/(lib\/server\/|start\/|hooks\.server\.ts$|routes\/.*\.server\.ts$|routes\/.*\+server\.ts$)/;
const kitOwn = /^src\/(lib\/ui\/|routes\/|hooks\.)/;

/** What of the routes goes to the browser: there the server's room may be named for its types only. */
const inBrowser = /^src\/routes\/.*(\.svelte|\+(page|layout)\.ts)$/;

/** The sentence for each import that crosses a line; none when the layers hold. */
export function layerProblems(sources: readonly Source[]): string[] {
	return sources.flatMap(({ path, text }) =>
		importsOf(path, text).flatMap((asked) => problemOf(path, asked).map((why) => `${path}: ${why}`))
	);
}

const roomOf = (path: string): string | undefined => Object.keys(rooms).find((name) => rooms[name].at.test(path));

function problemOf(path: string, { specifier, typeOnly }: Import): string[] {
	const room = roomOf(path);
	if (!room) return ['stands in no room'];
	if (specifier === undefined)
		return room === 'start' ? [] : ['imports something that is computed, so nobody can hold it'];
	const target = targetOf(path, specifier.replace(/\?.*$/, ''));
	if (target === undefined) return packageProblem(path, specifier);
	const other = roomOf(target);
	if (!other) return [`imports ${specifier}, which stands in no room`];
	if (other !== room && !rooms[room].knows.includes(other)) return [`${room} may not know ${other} (${specifier})`];
	if (other === 'door' && room !== 'door' && target !== 'src/lib/engine/index.ts')
		return [`imports past the engine's door (${specifier})`];
	if (other === 'server' && inBrowser.test(path) && !typeOnly)
		return [`would bring the server to the browser (${specifier})`];
	return [];
}

/** The path that a specifier of our own stands for; undefined for a package. */
function targetOf(path: string, specifier: string): string | undefined {
	if (specifier.startsWith('.')) return posix.join(posix.dirname(path), specifier);
	if (specifier.startsWith('$lib/')) return `src/lib/${specifier.slice('$lib/'.length)}`;
	return undefined;
}

function packageProblem(path: string, specifier: string): string[] {
	if (specifier.startsWith('node:')) return nodeOwn.test(path) ? [] : [`may not use ${specifier}`];
	if (/^\$(app|env)\//.test(specifier)) return kitOwn.test(path) ? [] : [`may not use ${specifier}`];
	const name = specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/');
	if (!(name in packages)) return [`uses ${specifier}, which has no place in the list of packages`];
	return packages[name].test(path) ? [] : [`may not use ${specifier}`];
}
