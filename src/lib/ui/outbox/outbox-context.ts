import { createContext } from 'svelte';
import type { PostOptions } from './post-form.ts';

/** How the forms of a page are sent: an action for each, with what it is called while it waits. */
export type Post = (form: HTMLFormElement, options: PostOptions) => { update: (options: PostOptions) => void };

const [read, write] = createContext<Post>();

/** The page says once how its forms are sent; the forms in it ask `readPost()`. */
export { read as readPost, write as providePost };
