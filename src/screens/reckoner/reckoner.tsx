/**
 * The reckoner: every computation by itself, without an outfit.
 *
 * What others may hold on to: `main[data-part="reckonings"]` with the search field `[data-part="search"]` and
 * `a[data-reckoning]`; `main[data-part="reckoning"]` with `[data-field]` round every field, `[data-part="fault"]`,
 * `[data-part="main-figure"]`, `[data-part="figures"]`, `[data-part="sheet-drawing"]`, `[data-part="strip"]`,
 * `[data-part="copy"]`, `[data-part="aloud"]`, `[data-part="start-again"]`, `[data-part="take-back"]`.
 */
import { reckoningOf } from '../../reckon/all.ts';
import { ReckoningList } from './list.tsx';
import { OneReckoning } from './one.tsx';
import './reckoner.css';

/** The list of reckonings, or the one that the address names. */
export default function Reckoner({ reckoning }: { readonly reckoning?: string }) {
  if (reckoning === undefined) return <ReckoningList />;
  const found = reckoningOf(reckoning);
  return found ? <OneReckoning key={found.id} reckoning={found} /> : <ReckoningList unknown />;
}
