/**
 * What the head says of keeping while a page is open: how many forms wait in this browser, and when something was last kept here.
 * Written in the browser only, by the page that is open.
 */
export const keptNow = $state<{ waiting: number; last: string | undefined }>({ waiting: 0, last: undefined });
