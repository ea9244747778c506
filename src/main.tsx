import { render } from 'preact';
import { App } from './screens/app.tsx';
import { keepChoices, lastOutfit } from './screens/choices.ts';
import { watchHouse } from './screens/house.tsx';
import { followAddress } from './screens/route.ts';
import './ui/ground.css';
import './ui/parts.css';

keepChoices();
followAddress(lastOutfit.value);
const place = document.getElementById('app');
if (place) render(<App />, place);
requestAnimationFrame(() => setTimeout(() => void watchHouse(), 0));
