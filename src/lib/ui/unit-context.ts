import { createContext } from 'svelte';
import type { Unit } from '../measure/units.ts';

const [read, write] = createContext<() => Unit>();

/** The layout says once which unit the page is read in; components below ask `readUnit()()` each time they draw. */
export { read as readUnit, write as provideUnit };
