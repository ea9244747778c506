/**
 * An edge that is still raw: the ready-made parts that can be put on it.
 *
 * What others may hold on to: `main[data-part="edge"]`; one `a[data-unit]` a part; the links `Own work`, `Own join`.
 */
import { useMemo } from 'preact/hooks';
import { spell } from '../../outfit/chains.ts';
import { unitsForEdge } from '../../outfit/changing/units-for-edge.ts';
import { edgeWords } from '../../outfit/edge-words.ts';
import { rawEdges } from '../../outfit/raw-edges.ts';
import { HouseNotice } from '../house.tsx';
import type { PartProps } from './describe.tsx';
import { Head, hashOf, NotThere } from './head.tsx';
import { UndoBar } from './undo-bar.tsx';
import { UnitLink } from './unit-link.tsx';

/** What fits an edge that is still raw; the part is put on just there. */
export function EdgePage({ session, garment: id, part: at = '' }: PartProps) {
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  const edge = useMemo(() => garment && rawEdges(garment).find((one) => spell(one) === at), [garment, at]);
  const units = useMemo(() => (outfit && edge ? unitsForEdge(outfit, id, edge) : []), [outfit, edge]);
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const piece = garment.pieces.find((one) => one.id === (edge?.piece ?? at.split('.')[0]));
  const name = edgeWords(at.split('.')[1] ?? '');
  return (
    <main class="page describe" data-part="edge">
      <Head
        session={session}
        up={[{ say: garment.name, href: hashOf(session, 'garment', id) }]}
        title={piece ? `${piece.name}, ${name}` : 'This edge'}
      />
      {!edge ? (
        <p class="quiet">This edge is finished, or not there any more.</p>
      ) : (
        <>
          {units.length > 0 ? (
            <section>
              <h2>Fits this edge</h2>
              <ul class="unit-choice">
                {units.map((unit) => (
                  <li key={unit.id}>
                    <UnitLink unit={unit} href={hashOf(session, 'garment', id, 'add', unit.id, at)} />
                  </li>
                ))}
              </ul>
            </section>
          ) : (
            <p class="quiet">
              No ready-made part goes on it as the garment stands. The piece it belongs with may be wanting,
              or finish it your own way.
            </p>
          )}
          <section>
            <h2>Your own way</h2>
            <div class="choice">
              <a class="plain" href={hashOf(session, 'garment', id, 'work')}>
                Own work
              </a>
              <a class="plain" href={hashOf(session, 'garment', id, 'join')}>
                Own join
              </a>
            </div>
          </section>
        </>
      )}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
