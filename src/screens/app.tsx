import { useEffect } from 'preact/hooks';
import { Bench } from './bench/bench.tsx';
import { later, Opening } from './later.tsx';
import { outfitOf, route } from './route.ts';
import type { Session } from './session.ts';
import { session, takeUp } from './workroom.ts';
import './page.css';

const Outfits = later(() => import('./outfits/outfits.tsx'));
const Reckoner = later<{ readonly reckoning?: string }>(() => import('./reckoner/reckoner.tsx'));
const Sources = later(() => import('./sources/sources.tsx'));
const OutfitPaper = later<{ readonly session: Session }>(() => import('./paper/outfit-paper.tsx'));
const Describe = later<{ readonly session: Session; readonly at: readonly string[] }>(
  () => import('./describe/describe.tsx'),
);
const TryOn = later<{ readonly session: Session; readonly at: readonly string[] }>(
  () => import('./try-on/try-on.tsx'),
);
const RunningOrder = later<{ readonly session: Session }>(() => import('./running-order/running-order.tsx'));

function NotHere() {
  return (
    <main class="page">
      <h1>This outfit is not on this device</h1>
      <p>Bring in a saved copy of it on the outfits page.</p>
      <a class="main" href="#/">
        To the outfits
      </a>
    </main>
  );
}

/** The whole app: the screen that the address names. */
export function App() {
  const place = route.value;
  const wanted = outfitOf(place);
  useEffect(() => {
    // What went wrong is said by the notice of the house.
    if (wanted !== undefined) takeUp(wanted).catch(() => {});
  }, [wanted]);
  if (place.screen === 'outfits') return <Outfits />;
  if (place.screen === 'sources') return <Sources />;
  if (place.screen === 'reckoner') {
    return <Reckoner {...(place.reckoning === undefined ? {} : { reckoning: place.reckoning })} />;
  }
  const found = session.value;
  if (!found || found.id !== wanted) return <Opening />;
  if (found.progress.value.description === undefined) return <NotHere />;
  if (place.screen === 'outfit') return <Describe session={found} at={place.at} />;
  if (place.screen === 'try') return <TryOn session={found} at={place.at} />;
  if (place.screen === 'paper') return <OutfitPaper session={found} />;
  return place.screen === 'bench' ? <Bench session={found} /> : <RunningOrder session={found} />;
}
