import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { nm } from '../../length/length.ts';
import type { Marking } from '../../length/writing.ts';
import { FOLD } from '../../outfit/chains.ts';
import { freshId, idsIn } from '../../outfit/changing/new-outfit.ts';
import { putPart } from '../../outfit/changing/parts.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import { edgeLength } from '../../shape/measure.ts';
import { cornersOf, edgesAt, nearestPlace, pointAt } from '../../traced/corners.ts';
import type { Drawing, DrawnLine } from '../../traced/drawing.ts';
import { lieOf } from '../../traced/piece-outline.ts';
import { FieldBox } from '../reckoner/field.tsx';
import type { Session } from '../session.ts';
import { ask, problem } from './change.ts';
import { saidName } from './edge-lines.ts';
import { hashOf } from './head.tsx';
import { TextBox } from './text-box.tsx';
import type { PieceChoice, TraceDraft } from './trace-draft.ts';
import { boxOf, edgeNames, middleOf, tracedPiece } from './trace-make.ts';
import { trueLength } from './trace-sheet.tsx';
import { halfWay, mmOf, pathOf, touched, viewOf } from './trace-view.ts';

/** Names that edges often have, in the words of the ready-made parts. */
const EDGE_NAMES = [
  'neck',
  'shoulder',
  'armhole',
  'side',
  'hem',
  'waist',
  'opening',
  'cap',
  'front seam',
  'back seam',
  'lower',
  'upper',
];
const MODES = [
  ['edges', 'Edges'],
  ['corners', 'Corners'],
  ['grain', 'Grain'],
  ['marks', 'Marks'],
] as const;
type Mode = (typeof MODES)[number][0];

interface PieceProps {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly trace: TraceDraft;
  readonly drawing: Drawing;
  readonly line: DrawnLine;
  readonly choice: PieceChoice;
  readonly scale: number;
  readonly marking: Marking;
}

/** One line made a piece: its edges named, its corners, how it is cut, its grain and marks. */
export function TracePiece(props: PieceProps) {
  const { session, outfit, garment, trace, drawing, line, choice, scale, marking } = props;
  const mode = useSignal<Mode>('edges');
  const picked = useSignal<number | undefined>(undefined);
  const tried = useSignal(false);
  const change = (to: Partial<PieceChoice>): void => {
    tried.value = false;
    const { pieces } = trace.choices.peek();
    trace.change({ pieces: { ...pieces, [line.id]: { ...choice, ...to } } });
  };
  const edges = useMemo(() => edgesAt(line, choice.corners), [line, choice.corners]);
  const names = edgeNames(choice);
  const nameOf = (at: number): string => saidName(names.get(at) ?? '');
  const near = useMemo(() => {
    const own = boxOf(line);
    return drawing.lines
      .filter((one) => one !== line && !trace.choices.peek().chosen.includes(one.id))
      .map((one) => ({ line: one, box: boxOf(one) }))
      .filter(
        ({ box }) =>
          box.left < own.right && box.right > own.left && box.top < own.bottom && box.bottom > own.top,
      )
      .slice(0, 80);
  }, [drawing, line, trace.choices.value.chosen]);
  const there = choice.put !== undefined && garment.pieces.some(({ id }) => id === choice.put);
  const id = there && choice.put !== undefined ? choice.put : freshId(idsIn(garment), choice.name);
  const made = tracedPiece(drawing, line, choice, scale, outfit.units, id);
  const fault = made.ok ? undefined : made.error;
  const faultAt = (field: string): string | undefined => (fault?.field === field ? fault.say : undefined);

  const rename = (at: number, text: string): void => change({ names: { ...choice.names, [at]: text } });
  const quick = (name: string): void => {
    const at = picked.peek();
    if (at === undefined) return;
    rename(at, name);
    // The next edge round that has no name yet is in hand at once.
    const i = choice.corners.indexOf(at);
    const round = [...choice.corners.slice(i + 1), ...choice.corners.slice(0, i)];
    picked.value = round.find((one) => !choice.names[one]) ?? at;
  };
  const takeOut = (at: number): void => {
    const { [at]: _gone, ...left } = choice.names;
    picked.value = undefined;
    change({ corners: choice.corners.filter((one) => one !== at), names: left });
  };
  const addAt = (at: number): void => {
    if (!choice.corners.includes(at)) change({ corners: [...choice.corners, at].sort((a, b) => a - b) });
  };
  const touchCorner = (event: MouseEvent): void => {
    const found = touched(event);
    if (!found) return;
    const away = (at: number): number => {
      const p = pointAt(line, at);
      return Math.hypot(p.x - found.at.x, p.y - found.at.y) / found.pixel;
    };
    const close = choice.corners.toSorted((a, b) => away(a) - away(b))[0];
    if (close !== undefined && away(close) < 24) takeOut(close);
    else {
      const nearest = nearestPlace(line, found.at, found.pixel * 16);
      if (nearest.away < found.pixel * 40) addAt(nearest.place);
    }
  };
  const grainBy = (id: string): void => {
    const lie = lieOf(drawing.lines.find((one) => one.id === id) ?? line);
    if (lie !== undefined) change({ grain: String(Math.round(lie * 100) / 100), grainLine: id });
  };
  const mark = (id: string): void =>
    change({
      marks: choice.marks.includes(id) ? choice.marks.filter((one) => one !== id) : [...choice.marks, id],
    });
  const touchNear = (id: string): void => (mode.value === 'grain' ? grainBy(id) : mark(id));
  const put = (): void => {
    tried.value = true;
    if (!made.ok) return;
    const after = putPart(outfit, garment.id, 'pieces', made.value);
    if (!after.ok) problem.value = after.error.map(writeProblem).join('. ');
    else
      ask(session, after.value, `${there ? 'traced again' : 'traced'} ${made.value.name}`, () =>
        change({ put: id }),
      );
  };

  const view = viewOf(boxOf(line));
  const usable = near.filter(({ line: one }) => mode.value === 'marks' || !one.closed);
  const kept = garment.pieces.find((one) => one.id === choice.put);
  return (
    <section class="boxed trace-piece" data-part="trace-piece" data-line-of={line.id}>
      <h3>{choice.name || 'No name yet'}</h3>
      <TextBox
        name="name"
        label="Name of the piece"
        text={choice.name}
        fault={faultAt('name')}
        onText={(name) => change({ name })}
      />
      <FieldBox
        name="cut"
        field={{
          kind: 'choice',
          label: 'How it is cut',
          options: [
            { value: 'one', label: 'Once' },
            { value: 'pair', label: 'Twice, one mirrored' },
            { value: 'fold', label: 'Once on the fold: this is half' },
          ],
          start: 'one',
        }}
        text={choice.cut}
        fault={undefined}
        marking={marking}
        onText={(cut) => change({ cut: cut === 'pair' || cut === 'fold' ? cut : 'one' })}
      />
      <fieldset class="one-of">
        <legend>What do you touch on the drawing?</legend>
        <div class="choice">
          {MODES.map(([value, say]) => (
            <button
              key={value}
              type="button"
              class="plain"
              data-mode={value}
              aria-pressed={mode.value === value}
              onClick={() => {
                mode.value = value;
              }}
            >
              {say}
            </button>
          ))}
        </div>
      </fieldset>
      <svg class="trace-drawing" viewBox={view.box} aria-hidden="true" data-part="trace-one">
        <path class="piece-cloth" d={pathOf(line.start, line.segments, true)} />
        {near.map(({ line: one }) => (
          <path
            key={one.id}
            class={`trace-line trace-open${(mode.value === 'grain' ? choice.grainLine === one.id : choice.marks.includes(one.id)) ? ' trace-on' : ''}`}
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
            {...mmOf(halfWay(start, segments))}
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
        {mode.value === 'edges' &&
          edges
            .toSorted(
              (a, b) =>
                edgeLength(b.start, { name: '', segments: b.segments }) -
                edgeLength(a.start, { name: '', segments: a.segments }),
            )
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
          <rect class="trace-catch" x="-1e6" y="-1e6" width="2e6" height="2e6" onClick={touchCorner} />
        )}
        {(mode.value === 'grain' || mode.value === 'marks') &&
          usable.map(({ line: one, box }) => (
            <g key={one.id}>
              {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same */}
              <path
                class="edge-touch"
                data-touch={one.id}
                d={pathOf(one.start, one.segments, one.closed)}
                onClick={() => touchNear(one.id)}
              />
              {one.closed && (
                // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same
                <circle
                  class="trace-catch"
                  cx={mmOf(middleOf(box)).x}
                  cy={mmOf(middleOf(box)).y}
                  r={view.pixel * 20}
                  onClick={() => touchNear(one.id)}
                />
              )}
            </g>
          ))}
      </svg>
      {mode.value === 'edges' && (
        <>
          <p class="quiet">Touch an edge, then its name.</p>
          <ul class="edge-list" aria-label="Edges">
            {edges.map(({ at, start, segments }, i) => (
              <li key={at}>
                <button
                  type="button"
                  class="plain"
                  data-edge={at}
                  aria-pressed={picked.value === at}
                  onClick={() => {
                    picked.value = at;
                  }}
                >
                  <span class="edge-number">{i + 1}</span>
                  <span>
                    {nameOf(at)}
                    <small>{trueLength(edgeLength(start, { name: '', segments }), scale, marking)}</small>
                  </span>
                </button>
              </li>
            ))}
          </ul>
          {picked.value !== undefined && (
            <div class="trace-name" data-part="name-edge">
              <div class="choice">
                {[...(choice.cut === 'fold' ? [FOLD] : []), ...EDGE_NAMES].map((name) => (
                  <button key={name} type="button" class="plain" data-name={name} onClick={() => quick(name)}>
                    {name}
                  </button>
                ))}
              </div>
              <TextBox
                name="edge"
                label={`Name of edge ${choice.corners.indexOf(picked.value) + 1}`}
                text={choice.names[picked.value] ?? ''}
                onText={(text) => picked.value !== undefined && rename(picked.value, text)}
              />
            </div>
          )}
        </>
      )}
      {mode.value === 'corners' && (
        <>
          <p class="quiet">
            Touch the outline to add a corner, touch a corner to take it out. Edges run from corner to corner.
          </p>
          <ul class="edge-list" aria-label="Corners">
            {edges.map(({ at }, i) => (
              <li key={at}>
                <button type="button" class="plain" onClick={() => takeOut(at)}>
                  Take out the corner before {nameOf(at) || i + 1}
                </button>
              </li>
            ))}
            {edges.map(({ at, start, segments }) => (
              <li key={`add ${at}`}>
                <button
                  type="button"
                  class="plain"
                  onClick={() => addAt(nearestPlace(line, halfWay(start, segments), 0).place)}
                >
                  Add one half way along {nameOf(at)}
                </button>
              </li>
            ))}
            <li>
              <button type="button" class="plain" onClick={() => change({ corners: cornersOf(line) })}>
                Find the corners anew
              </button>
            </li>
          </ul>
        </>
      )}
      {(mode.value === 'grain' || mode.value === 'marks') && (
        <>
          <p class="quiet">
            {mode.value === 'grain'
              ? 'Touch a line that lies along the grain, or write its angle. 0 is upright in the drawing, 90 level; more turns clockwise.'
              : 'Touch small circles or lines that are places to mark; the middle of each is marked.'}
          </p>
          <ul
            class="edge-list"
            aria-label={mode.value === 'grain' ? 'Lines on this piece' : 'Places on this piece'}
          >
            {mode.value === 'grain' &&
              (
                [
                  ['0', 'Upright'],
                  ['90', 'Level'],
                  ['45', 'On the bias'],
                ] as const
              ).map(([grain, say]) => (
                <li key={grain}>
                  <button
                    type="button"
                    class="plain"
                    aria-pressed={choice.grain === grain && choice.grainLine === undefined}
                    onClick={() => {
                      const { grainLine: _line, ...plain } = choice;
                      const { pieces } = trace.choices.peek();
                      trace.change({ pieces: { ...pieces, [line.id]: { ...plain, grain } } });
                    }}
                  >
                    {say}
                  </button>
                </li>
              ))}
            {usable.map(({ line: one }) => (
              <li key={one.id}>
                <button
                  type="button"
                  class="plain"
                  data-near={one.id}
                  aria-pressed={
                    mode.value === 'grain' ? choice.grainLine === one.id : choice.marks.includes(one.id)
                  }
                  onClick={() => touchNear(one.id)}
                >
                  {one.name || `line ${one.id.slice(1)}`}
                </button>
              </li>
            ))}
          </ul>
          {mode.value === 'marks' && usable.length === 0 && <p>There are no other lines on this piece.</p>}
        </>
      )}
      {mode.value === 'grain' && (
        <FieldBox
          name="grain"
          field={{ kind: 'number', label: 'Angle of the grain', unit: '°', start: '0' }}
          text={choice.grain}
          fault={faultAt('grain')}
          marking={marking}
          onText={(grain) => change({ grain })}
        />
      )}
      <div class="fields">
        <FieldBox
          name="cloth"
          field={{
            kind: 'choice',
            label: 'Cloth',
            options: outfit.cloths.map((cloth) => ({ value: cloth.id, label: cloth.name })),
            start: '',
          }}
          text={choice.cloth}
          fault={undefined}
          marking={marking}
          onText={(cloth) => change({ cloth })}
        />
        <FieldBox
          name="allowance"
          field={{
            kind: 'length',
            label: 'Seam allowance',
            means: 'Left beyond edges that are in no seam yet.',
            start: { in: '5/8', mm: '15' },
          }}
          text={choice.allowance}
          fault={faultAt('allowance')}
          marking={marking}
          onText={(allowance) => change({ allowance })}
        />
      </div>
      {made.ok ? (
        <p data-part="trace-size">
          {made.value.name}: {sizeWords(made.value.outline, marking)}, {made.value.outline.edges.length}{' '}
          edges.
        </p>
      ) : (
        <p class="fault" role={tried.value ? 'alert' : undefined} data-part="trace-fault">
          <span>{made.error.say}</span>
        </p>
      )}
      <div class="choice">
        <button type="button" class="main" data-part="put" onClick={put}>
          {there
            ? `Put ${choice.name} in again`
            : `Put ${choice.name} into the ${garment.name.toLowerCase()}`}
        </button>
        {kept && (
          <a class="plain" href={hashOf(session, 'garment', garment.id, 'piece', kept.id)}>
            To {kept.name}
          </a>
        )}
      </div>
    </section>
  );
}

function sizeWords(outline: Parameters<typeof boxOfOutline>[0], marking: Marking): string {
  const { left, right, top, bottom } = boxOfOutline(outline);
  return `${trueLength(nm(right - left), 1, marking)} × ${trueLength(nm(bottom - top), 1, marking)}`;
}

const boxOfOutline = ({
  start,
  edges,
}: {
  readonly start: DrawnLine['start'];
  readonly edges: readonly { readonly segments: DrawnLine['segments'] }[];
}) => boxOf({ start, segments: edges.flatMap(({ segments }) => segments) });
