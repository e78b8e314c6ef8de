/** The busy day in a process of its own, to be killed in the middle: a dot on the standard output after each step. */
import { writeSync } from 'node:fs';
import { openJournal } from '../../../src/lib/server/open-journal.ts';
import { busyDay } from './busy-day.ts';
import { clockAndIds } from './plain.ts';

const journal = openJournal({ file: process.argv[2], ...clockAndIds() });
busyDay(journal, Number(process.argv[3]), () => writeSync(1, '.'));
writeSync(1, 'finished');
