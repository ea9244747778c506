import { FOLD } from '../../outfit/chains.ts';
import { edgeLength } from '../../shape/measure.ts';
import { cornersOf, nearestPlace } from '../../traced/corners.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { TextBox } from './text-box.tsx';
import type { Hand, Mode } from './trace-hand.ts';
import { trueLength } from './trace-scale.tsx';
import { halfWay } from './trace-view.ts';

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
] as const satisfies readonly (readonly [Mode, string])[];

interface PanelProps {
  readonly hand: Hand;
}

/** What a touch on the drawing is about. */
export function TouchModes({ hand: { mode } }: PanelProps) {
  return (
    <fieldset class="one-of field-box">
      <legend>What do you touch on the drawing?</legend>
      <div class="trace-modes">
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
  );
}

/** Below the drawing: everything that can be touched on it, as buttons and fields. */
export function TracePanel({ hand, grainFault }: PanelProps & { readonly grainFault: string | undefined }) {
  switch (hand.mode.value) {
    case 'edges':
      return <EdgePanel hand={hand} />;
    case 'corners':
      return <CornerPanel hand={hand} />;
    case 'marks':
      return <MarkPanel hand={hand} />;
    default:
      return <GrainPanel hand={hand} fault={grainFault} />;
  }
}

function EdgePanel({ hand: { edges, picked, choice, scale, marking, nameOf, quick, rename } }: PanelProps) {
  return (
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
  );
}

function CornerPanel({ hand: { edges, line, nameOf, takeOut, addAt, change } }: PanelProps) {
  return (
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
  );
}

/** The other lines on the piece that can be taken for the mode in hand. */
function NearList({ hand: { near, mode, isTaken, touchNear } }: PanelProps) {
  return (
    <>
      {near
        .filter(({ line }) => mode.value === 'marks' || !line.closed)
        .map(({ line: { id, name } }) => (
          <li key={id}>
            <button
              type="button"
              class="plain"
              data-near={id}
              aria-pressed={isTaken(id)}
              onClick={() => touchNear(id)}
            >
              {name || `line ${id.slice(1)}`}
            </button>
          </li>
        ))}
    </>
  );
}

const LIES = [
  ['0', 'Upright'],
  ['90', 'Level'],
  ['45', 'On the bias'],
] as const;

function GrainPanel({ hand, fault }: PanelProps & { readonly fault: string | undefined }) {
  const { choice, marking, change } = hand;
  return (
    <>
      <p class="quiet">
        Touch a line that lies along the grain, or write its angle: 0 is upright in the drawing, 90 level;
        more turns clockwise.
      </p>
      <ul class="edge-list" aria-label="Ways the grain can lie">
        {LIES.map(([grain, say]) => (
          <li key={grain}>
            <button
              type="button"
              class="plain"
              aria-pressed={choice.grain === grain && choice.grainLine === undefined}
              onClick={() => change({ grain, grainLine: undefined })}
            >
              {say}
            </button>
          </li>
        ))}
        <NearList hand={hand} />
      </ul>
      <FieldBox
        name="grain"
        field={{ kind: 'number', label: 'Angle of the grain', unit: '°', start: '0' }}
        text={choice.grain}
        fault={fault}
        marking={marking}
        onText={(grain) => change({ grain, grainLine: undefined })}
      />
    </>
  );
}

function MarkPanel({ hand }: PanelProps) {
  return (
    <>
      <p class="quiet">
        {hand.near.length === 0
          ? 'There are no other lines on this piece.'
          : 'Touch small circles or lines that are places to mark; the middle of each is marked.'}
      </p>
      <ul class="edge-list" aria-label="Lines on this piece">
        <NearList hand={hand} />
      </ul>
    </>
  );
}
