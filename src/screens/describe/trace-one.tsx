import { edgeLength } from '../../shape/measure.ts';
import { type CutEdge, pointAt } from '../../traced/corners.ts';
import type { Hand } from './trace-hand.ts';
import { middleOf } from './trace-make.ts';
import { crossAt, halfWay, mmOf, pathOf } from './trace-view.ts';

const longOf = ({ start, segments }: CutEdge): number => edgeLength(start, { name: '', segments });

/** A piece in hand, drawn to be touched; all that can be touched stands as buttons below it too. */
export function TraceOne({ hand }: { readonly hand: Hand }) {
  const { line, choice, mode, picked, edges, near, view, nameOf, inward } = hand;
  return (
    <svg class="trace-drawing" viewBox={view.box} aria-hidden="true" data-part="trace-one">
      <path class="piece-cloth" d={pathOf(line.start, line.segments, true)} />
      {near.map(({ line: one }) => (
        <path
          key={one.id}
          class={`trace-line trace-open${mode.value === 'grain' && hand.isTaken(one.id) ? ' trace-on' : ''}`}
          d={pathOf(one.start, one.segments, one.closed)}
        />
      ))}
      {edges.map(({ at, start, segments }) => (
        <path
          key={at}
          class={picked.value === at && mode.value === 'edges' ? 'edge-line edge-picked' : 'edge-line'}
          d={pathOf(start, segments)}
        />
      ))}
      {edges.map(({ at, start, segments }, i) => (
        <text
          key={at}
          class={picked.value === at ? 'edge-words edge-on' : 'edge-words'}
          {...mmOf(inward(halfWay(start, segments)))}
          font-size={view.pixel * 15}
          text-anchor="middle"
        >
          {choice.names[at] ? nameOf(at) : i + 1}
        </text>
      ))}
      {choice.corners.map((at) => {
        const { x, y } = mmOf(pointAt(line, at));
        return <circle key={at} class="trace-corner" cx={x} cy={y} r={view.pixel * 5} />;
      })}
      {near
        .filter((one) => choice.marks.includes(one.line.id))
        .map((one) => (
          <path key={one.line.id} class="trace-point" d={crossAt(middleOf(one.box), view.pixel * 9)} />
        ))}
      {mode.value === 'edges' &&
        edges
          .toSorted((a, b) => longOf(b) - longOf(a))
          .map(({ at, start, segments }) => (
            // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same
            <path
              key={at}
              class="edge-touch"
              data-touch={at}
              d={pathOf(start, segments)}
              onClick={() => {
                picked.value = at;
              }}
            />
          ))}
      {mode.value === 'corners' && (
        // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same
        <rect class="trace-catch" x="-1e6" y="-1e6" width="2e6" height="2e6" onClick={hand.touchCorner} />
      )}
      {(mode.value === 'grain' || mode.value === 'marks') &&
        near
          .filter(({ line: one }) => mode.value === 'marks' || !one.closed)
          .map(({ line: one, box }) => (
            <g key={one.id}>
              {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same */}
              <path
                class="edge-touch"
                data-touch={one.id}
                d={pathOf(one.start, one.segments, one.closed)}
                onClick={() => hand.touchNear(one.id)}
              />
              {one.closed && (
                // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same
                <circle
                  class="trace-catch"
                  cx={mmOf(middleOf(box)).x}
                  cy={mmOf(middleOf(box)).y}
                  r={view.pixel * 20}
                  onClick={() => hand.touchNear(one.id)}
                />
              )}
            </g>
          ))}
    </svg>
  );
}
