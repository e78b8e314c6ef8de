/**
 * What a fitting page computes by itself once its script has come: fetched after the page is usable, because the engine is the
 * greater part of it. Until then every link and button asks the server, which computes the same.
 */
export { afterCommand } from './commands.ts';
export { placeAlong, placeTapped } from './view/place-tapped.ts';
export { fittingView } from './view/fitting-view.ts';
export { keptView } from './view/kept-view.ts';
export { shorthandAsked } from './view/shorthand-asked.ts';
export { spokenHand } from './view/spoken-hand.ts';
export { withUnsent } from './view/with-unsent.ts';
export { steppedView } from './view/stepped-view.ts';
