/**
 * `npm run bench`: the engine's figures, those that a general-purpose library can also give beside that library's, in one
 * run on this machine. Nothing here passes or fails.
 */
import { carryOne, carryHistory } from './carrying.ts';
import { differences } from './differences.ts';
import { eachKind } from './each-kind.ts';
import { lengths } from './lengths.ts';
import { offsets } from './offsets.ts';
import { readAnew } from './reading.ts';

await carryOne();
await carryHistory();
await eachKind();
await readAnew();
await lengths();
await offsets();
await differences();
// The browser's driver is not loaded before: what it brings to the heap slows the engine by a fifth.
const { fittingPage } = await import('./fitting-page.ts');
await fittingPage();
