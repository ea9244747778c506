import { render } from 'preact';
import { App } from './screens/app.tsx';
import { keepChoices, lastOutfit } from './screens/choices.ts';
import { watchHouse } from './screens/house.tsx';
import { followAddress, outfitOf, readHash, route } from './screens/route.ts';
import { comeBack, takeUp } from './screens/workroom.ts';
import './ui/ground.css';
import './ui/parts.css';

/** How long the first drawing waits for the card. */
const PATIENCE_MS = 600;

keepChoices();
followAddress(lastOutfit.value);
// A browser that is killed may lose the note of the last outfit, never the ledger.
if (lastOutfit.value === undefined && readHash(location.hash) === undefined) comeBack().catch(() => {});
// What goes wrong with the ledger is said on the screen.
const outfit = outfitOf(route.value);
const coming = outfit === undefined ? undefined : takeUp(outfit).catch(() => {});
const place = document.getElementById('app');
const draw = (): void => {
  if (place) render(<App />, place);
};
// Drawing twice, first without the card, would put the card off; but nobody looks at nothing for long.
if (coming) void Promise.race([coming, new Promise((late) => setTimeout(late, PATIENCE_MS))]).then(draw);
else draw();
// Storing the app for later must not slow down its first card.
setTimeout(() => void watchHouse(), 1000);
