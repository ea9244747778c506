import { render } from 'preact';
import { App } from './screens/app.tsx';
import { keepChoices, lastOutfit } from './screens/choices.ts';
import { watchHouse } from './screens/house.tsx';
import { followAddress, readHash, route } from './screens/route.ts';
import { comeBack, takeUp } from './screens/workroom.ts';
import './ui/ground.css';
import './ui/parts.css';

keepChoices();
followAddress(lastOutfit.value);
// A browser that is killed may lose the note of the last outfit, never the ledger.
if (lastOutfit.value === undefined && readHash(location.hash) === undefined) comeBack().catch(() => {});
// The ledger opens and the rooms are fetched while the first screen is drawn; what goes wrong is said there.
if (route.value.screen !== 'outfits') takeUp(route.value.outfit).catch(() => {});
const place = document.getElementById('app');
if (place) render(<App />, place);
// Storing the app for later must not slow down its first card.
setTimeout(() => void watchHouse(), 1000);
