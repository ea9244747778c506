import type { Place, View } from '../../fitting/entry.ts';
import { smoothPath } from '../describe/body-figure.tsx';
import { FIGURE } from '../describe/body-lines.ts';
import { begun } from '../describe/words.ts';
import { BOX, type NamedSpot, namedSpots, nearestPlace } from './places.ts';

const [LEFT, TOP, WIDTH, HEIGHT] = BOX;
const percent = (part: number): string => `${Math.round(part * 1e4) / 100}%`;

/** Where the line from a name to its spot begins: at the inner edge of the name. */
const NAME = 45;
const lineTo = ({ x, y, row, side }: NamedSpot): string =>
  `M${side === 'left' ? LEFT + NAME : LEFT + WIDTH - NAME} ${row}L${x} ${y}`;

/**
 * The body as it stands before the maker, to touch: anywhere on the figure, or the name of the place, which is a button of
 * its own for fingers, keyboard and readers. Places where something was noted say how much.
 */
export function BodyMap(props: {
  readonly view: View;
  readonly here: ReadonlySet<Place>;
  readonly noted: ReadonlyMap<Place, number>;
  readonly onPlace: (place: Place) => void;
}) {
  const { view, here, noted, onPlace } = props;
  const shown = namedSpots(view, here);
  return (
    <div class="body-room">
      <div class="body-map" data-view={view}>
        {/* The buttons beside it do the same for everybody who cannot touch the drawing. */}
        <svg
          viewBox={BOX.join(' ')}
          aria-hidden="true"
          onClick={(event) => {
            const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
            const place = nearestPlace(shown, {
              x: LEFT + ((event.clientX - left) / width) * WIDTH,
              y: TOP + ((event.clientY - top) / height) * HEIGHT,
            });
            if (place !== undefined) onPlace(place);
          }}
        >
          {FIGURE[view === 'side' ? 'arm' : view].map((line) => (
            <path
              key={line.spots.join()}
              class={line.faint ? 'body-line body-faint' : 'body-line'}
              d={smoothPath(line)}
            />
          ))}
          {shown.map((spot) => (
            <path key={spot.place} class="body-lead" d={lineTo(spot)} />
          ))}
          {shown.map(({ place, x, y }) => (
            <circle
              key={place}
              class={noted.has(place) ? 'body-spot body-noted' : 'body-spot'}
              cx={x}
              cy={y}
              r={noted.has(place) ? 3.6 : 2.2}
            />
          ))}
        </svg>
        <ul aria-label={`Places, ${view}`}>
          {shown.map(({ place, row, side }) => {
            const count = noted.get(place) ?? 0;
            return (
              <li key={place} class={`body-name ${side}`} style={{ top: percent((row - TOP) / HEIGHT) }}>
                <button type="button" class="plain" data-place={place} onClick={() => onPlace(place)}>
                  <span>{begun(place)}</span>
                  {count > 0 && (
                    <b class="count">
                      {count}
                      <span class="unseen"> noted</span>
                    </b>
                  )}
                </button>
              </li>
            );
          })}
        </ul>
      </div>
    </div>
  );
}
