/**
 * The pattern sheets of one outfit: which pieces, and then the paper.
 *
 * What others may hold on to: `main[data-part="outfit-paper"]`; one `input[type=checkbox][data-piece]` a piece, named
 * `garment/piece`; buttons `All pieces` and `No pieces`; and the parts of `print.tsx`.
 */
import { useSignal } from '@preact/signals';
import { useCallback, useMemo } from 'preact/hooks';
import { outfitSheets, type PieceSheets } from '../../paper/outfit-sheets.ts';
import { Stuck } from '../bench/finished.tsx';
import { markingFor } from '../choices.ts';
import { HouseNotice, HouseTrouble } from '../house.tsx';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { PrintPaper } from './print.tsx';

/** The sheets of an outfit, to be ticked and printed. */
export default function OutfitPaper({ session }: { readonly session: Session }) {
  const outfit = session.outfit.value;
  const marking = markingFor(session.units.value);
  const all = useMemo(() => (outfit ? outfitSheets(outfit, marking) : []), [outfit, marking.unit]);
  const left = useSignal<ReadonlySet<string>>(new Set());
  const out = left.value;
  const sheets = useCallback(
    () => all.flatMap((piece) => (out.has(piece.key) ? [] : piece.sheets)),
    [all, out],
  );
  const garments = new Map<string, PieceSheets[]>();
  for (const piece of all) garments.set(piece.garment, [...(garments.get(piece.garment) ?? []), piece]);
  const tick = (key: string, wanted: boolean): void => {
    const next = new Set(out);
    if (wanted) next.delete(key);
    else next.add(key);
    left.value = next;
  };
  const chosen = all.filter(({ key }) => !out.has(key));
  return (
    <main class="page" data-part="outfit-paper">
      <nav class="choice" aria-label="Where to go">
        <a class="plain" href="#/">
          Outfits
        </a>
        <a class="plain" href={writeHash({ screen: 'bench', outfit: session.id })}>
          To the bench
        </a>
      </nav>
      <h1>{outfit ? `Pattern of ${outfit.name}` : 'Pattern'}</h1>
      <HouseTrouble />
      {(!outfit || all.length === 0) && <Stuck session={session} />}
      {outfit && all.length > 0 && (
        <>
          <p>
            Every piece at true size, with its cutting line, seam line, grain and marks. Pieces with tucks are
            opened through them.
          </p>
          <div class="choice">
            <button
              type="button"
              class="plain"
              onClick={() => {
                left.value = new Set();
              }}
            >
              All pieces
            </button>
            <button
              type="button"
              class="plain"
              onClick={() => {
                left.value = new Set(all.map(({ key }) => key));
              }}
            >
              No pieces
            </button>
          </div>
          {[...garments].map(([garment, pieces]) => (
            <fieldset key={garment} class="pieces">
              <legend>{garment}</legend>
              {pieces.map(({ key, name }) => (
                <label key={key} class="piece-tick">
                  <input
                    type="checkbox"
                    data-piece={key}
                    checked={!out.has(key)}
                    onChange={(event) => tick(key, event.currentTarget.checked)}
                  />
                  {name}
                </label>
              ))}
            </fieldset>
          ))}
          {chosen.length === 0 ? (
            <p role="status">Tick a piece to print it.</p>
          ) : (
            <PrintPaper name={outfit.name} sheets={sheets} />
          )}
        </>
      )}
      <HouseNotice />
    </main>
  );
}
