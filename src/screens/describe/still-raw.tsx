import { useMemo } from 'preact/hooks';
import { spell } from '../../outfit/chains.ts';
import { edgeWords } from '../../outfit/edge-words.ts';
import type { EdgeRef, Garment } from '../../outfit/outfit.ts';
import { rawEdges } from '../../outfit/raw-edges.ts';
import type { Session } from '../session.ts';
import { hashOf } from './head.tsx';
import './still-raw.css';

/** Edges by their pieces, in the order of the pieces. */
function byPiece(edges: readonly EdgeRef[]): ReadonlyMap<string, readonly EdgeRef[]> {
  const found = new Map<string, EdgeRef[]>();
  for (const edge of edges) found.set(edge.piece, [...(found.get(edge.piece) ?? []), edge]);
  return found;
}

/** Edges that nothing finishes yet, by their pieces; each leads to the parts that can be put on it. */
export function StillRaw(props: { readonly session: Session; readonly garment: Garment }) {
  const { session, garment } = props;
  const pieces = useMemo(() => byPiece(rawEdges(garment)), [garment]);
  if (garment.pieces.length === 0) return null;
  return (
    <section data-part="still-raw">
      <h2>Still raw</h2>
      {pieces.size === 0 ? (
        <p class="quiet">Nothing: every edge goes into a seam or is finished.</p>
      ) : (
        <>
          <p class="quiet">
            Something is still to come here: a seam, a collar, a cuff, a facing or a hem. Each edge shows what
            fits it.
          </p>
          <ul class="raw-edges">
            {[...pieces].map(([id, edges]) => {
              const name = garment.pieces.find((piece) => piece.id === id)?.name ?? id;
              return (
                <li key={id} class="choice">
                  <b>{name}</b>
                  {edges.map((edge) => (
                    <a
                      key={edge.edge}
                      class="plain"
                      data-edge={spell(edge)}
                      href={hashOf(session, 'garment', garment.id, 'edge', spell(edge))}
                    >
                      <span class="unseen">{name}, </span>
                      {edgeWords(edge.edge)}
                    </a>
                  ))}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}
