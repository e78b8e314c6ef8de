import { spawnSync } from 'node:child_process';
import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { parseDraft } from '../../src/lib/engine/index.ts';
import { draftDifferences } from '../../src/lib/server/draft-differences.ts';
import { thisEngine } from '../../src/lib/server/engine.ts';
import { verifyJournal } from '../../src/lib/server/verify-journal.ts';
import { carriedOnce, clockAndIds, kept, rawDatabase, takenIn } from './support/journal.ts';
import { waistcoatFile } from './support/waistcoat.ts';
import { openJournal } from '../../src/lib/server/open-journal.ts';

function carriedTwice() {
	const all = carriedOnce();
	const second = kept(all.journal.addFitting(all.garment.id, { kind: 'table', date: '2026-02-24' }));
	kept(all.journal.addAlteration(second.id, { intent: takenIn(-3.175) }));
	kept(all.journal.carryToPaper(second.id, all.journal.fitting(second.id)!.wholeRevision));
	return all;
}

/** What `npm run verify` runs, on the journal of a folder. */
function verifyCommand(folder: string) {
	const { status, stdout, stderr } = spawnSync('npx', ['tsx', 'src/lib/server/verify.ts'], {
		env: { ...process.env, PIN_TO_PAPER_JOURNAL: folder },
		encoding: 'utf8'
	});
	return { status, lines: stdout.trim().split('\n'), stderr };
}

test('[REPLAY] every version is its replay from the base draft', () => {
	const { journal } = carriedTwice();
	const replays = verifyJournal(journal);
	expect(replays.map(({ version, alterations }) => [version, alterations])).toEqual([
		[0, 0],
		[1, 1],
		[2, 2]
	]);
	expect(replays.flatMap(({ differences }) => differences)).toEqual([]);
});

/** Moves one corner of the front in the frozen draft of version 1, as only somebody who takes the trigger away can. */
function tampered() {
	const all = carriedTwice();
	all.journal.close();
	const sqlite = rawDatabase(all.file);
	sqlite.exec('DROP TRIGGER versions_are_never_changed');
	const { draft } = sqlite.prepare('SELECT draft FROM versions WHERE number = 1').get() as { draft: string };
	const file = JSON.parse(draft);
	const front = file.pieces[0];
	expect(front.edges[0].path).toBe('M 0 0 L 200 0');
	front.edges[0].path = 'M 0 0 L 200 0.5';
	front.edges[1].path = front.edges[1].path.replace(/^M 200 0 /, 'M 200 0.5 ');
	sqlite.prepare('UPDATE versions SET draft = ? WHERE number = 1').run(JSON.stringify(file));
	sqlite.close();
	return all;
}

test('a snapshot that is not its replay is reported, with the greatest distance and where', () => {
	const { file } = tampered();
	const journal = openJournal({ file, ...clockAndIds() });
	const differences = verifyJournal(journal).flatMap((replay) => replay.differences);
	journal.close();
	expect(differences.map(({ where }) => where)).toEqual(['front/top', 'front/side']);
	// The corner was moved half a millimetre at right angles to the top edge.
	expect(differences[0].greatest).toBeCloseTo(0.5, 6);
	expect(differences[1].greatest).toBeGreaterThan(0.01);
});

test('a replay by another engine is held against what this one wrote', () => {
	const { journal } = carriedTwice();
	const wider = {
		...thisEngine,
		carry: ((draft, alterations, options) =>
			thisEngine.carry(
				draft,
				alterations.map((alteration) => thisEngine.parseAlteration({ ...takenIn(7.35), id: alteration.id })),
				options
			)) as typeof thisEngine.carry
	};
	const differing = verifyJournal(journal, wider).filter(({ differences }) => differences.length > 0);
	expect(differing.map(({ version }) => version)).toEqual([1, 2]);
	const side = differing[0].differences.find(({ where }) => where === 'front/side')!;
	// 7.35 mm at the waist instead of 6.35.
	expect(side.greatest).toBeCloseTo(1, 2);
});

test('the command prints a line for each version, and ends with 1 where one differs', () => {
	const good = carriedTwice();
	good.journal.close();
	expect(verifyCommand(dirname(good.file))).toEqual({
		status: 0,
		lines: [
			'Waistcoat, version 0: 0 alterations, as it was',
			'Waistcoat, version 1: 1 alteration, as it was',
			'Waistcoat, version 2: 2 alterations, as it was',
			'3 versions replayed; every one is its snapshot.'
		],
		stderr: ''
	});
	const bad = verifyCommand(dirname(tampered().file));
	expect(bad.status).toBe(1);
	expect(bad.lines).toContain('Waistcoat, version 1: 1 alteration, written by engine 1, DIFFERS');
	expect(bad.lines).toContain('    front/top differs by 0.500 mm.');
	expect(bad.lines.at(-1)).toBe('3 versions replayed; one differs from the snapshot.');
}, 60_000);

test('the command says in a sentence that there is no journal, and makes none', () => {
	const { file, journal } = carriedOnce();
	journal.close();
	const nowhere = `${dirname(file)}/nowhere`;
	expect(verifyCommand(nowhere)).toMatchObject({
		status: 2,
		stderr: `There is no journal at ${nowhere}/journal.sqlite.\n`
	});
});

test('the command reads a journal that is open elsewhere', () => {
	const { file } = carriedOnce();
	expect(verifyCommand(dirname(file)).status).toBe(0);
});

test('the same line divided into other curves is no difference', () => {
	const halved = waistcoatFile();
	halved.pieces[0].edges[0].path = 'M 0 0 L 80 0 L 200 0';
	expect(draftDifferences(parseDraft(halved), parseDraft(waistcoatFile()))).toEqual([]);
});

test('what is there besides, what is gone and what is moved are told apart', () => {
	const changed = waistcoatFile();
	changed.pieces[0].darts![0].point = [105, 123];
	changed.pieces[1].levels = [];
	changed.seams[1].name = 'Middle seam';
	expect(draftDifferences(parseDraft(changed), parseDraft(waistcoatFile()))).toEqual([
		{ where: 'front/waist-dart', greatest: 3, sentence: 'front/waist-dart differs by 3.00 mm.' },
		{ where: 'back waist line 1', sentence: 'back waist line 1 is not there any more.' },
		{ where: 'seam centre-back', sentence: 'seam centre-back is not the same.' }
	]);
	expect(draftDifferences(parseDraft(waistcoatFile()), parseDraft(changed)).at(-1)).toEqual({
		where: 'back waist line 1',
		sentence: 'back waist line 1 was not there before.'
	});
});
