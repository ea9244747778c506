/**
 * The rooms that turn a description into cards, as one part that is fetched by itself: the first visit shows its
 * first screen without it, and a return to the bench fetches it while the ledger opens.
 */
export { cardFor } from '../order/card.ts';
export { explain, runningOrder } from '../order/running.ts';
export { readOutfit } from '../outfit/reading.ts';
