import { inches, mm } from '../../src/length/length.ts';
import { bad, good } from '../../src/length/result.ts';
import type { Card, DrawnPiece, Readout } from '../../src/order/card-types.ts';
import type { Running, Standing } from '../../src/order/running-types.ts';
import { type Constraint, constraintKey, type Step, undoId } from '../../src/order/step.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import type { Rooms, SessionLedger } from '../../src/screens/session.ts';
import type { Point } from '../../src/shape/outline.ts';
import type { Act, Deed, ReworkWritten } from '../../src/store/deed.ts';
import { addUp } from '../../src/store/progress.ts';

/** A small invented outfit with one card of every kind, for the screens alone. */

const p = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });

const front: DrawnPiece = {
  name: 'left front',
  mirrored: false,
  picked: ['shoulder', 'side'],
  outline: {
    start: p(0, 90),
    edges: [
      {
        name: 'neck',
        segments: [{ kind: 'curve', first: p(50, 90), second: p(80, 50), to: p(85, 0) }],
      },
      { name: 'shoulder', segments: [{ kind: 'line', to: p(215, 45) }] },
      {
        name: 'armhole',
        segments: [{ kind: 'curve', first: p(190, 120), second: p(190, 190), to: p(260, 220) }],
      },
      { name: 'side', segments: [{ kind: 'line', to: p(250, 640) }] },
      { name: 'hem', segments: [{ kind: 'line', to: p(0, 650) }] },
      { name: 'centre front', segments: [{ kind: 'line', to: p(0, 90) }] },
    ],
  },
  lines: [30, 55, 80, 105].map((x) => ({ from: p(x, 110), to: p(x, 380), kind: 'fold' as const })),
};

const back: DrawnPiece = {
  ...front,
  name: 'back',
  mirrored: true,
  picked: ['side'],
  lines: [],
};

const readouts: Record<string, Readout> = {
  'shirt/tucks/mark': {
    kind: 'marks',
    sets: [
      {
        name: 'left front, tuck folds',
        from: 'the neck seam',
        span: inches(18),
        marks: [70, 109, 150, 190, 230, 251, 283].map((n, i) => ({
          item: `fold ${i + 1}`,
          at: inches(n, 16),
          name: `fold ${i + 1}`,
        })),
      },
    ],
  },
  'shirt/sleeve/bead': {
    kind: 'count',
    of: 'beads',
    perTouch: 2,
    lines: [
      { item: 'line 1', name: 'first diagonal, from the cuff', target: 7 },
      { item: 'line 2', name: 'second diagonal', target: 24 },
    ],
  },
  'shirt/collar/press': {
    kind: 'timers',
    timers: [
      { item: 'press', name: 'press', seconds: 12 },
      { item: 'cool', name: 'let it cool', seconds: 600 },
    ],
  },
  'shirt/shoulders/sew': {
    kind: 'ticks',
    items: [
      { item: 'left', name: 'left shoulder' },
      { item: 'right', name: 'right shoulder' },
    ],
  },
  'shirt/hem/sew': { kind: 'none' },
};

const says: Record<string, [string, Step['setUp']['station'], string]> = {
  'shirt/tucks/mark': ['Mark the tuck folds on the left front', 'mark', ''],
  'shirt/shoulders/sew': ['Sew the shoulder seams, fronts to back', 'machine', 'white'],
  'shirt/collar/press': ['Fuse the interfacing to the under-collar', 'iron', ''],
  'shirt/sleeve/bead': ['Sew the bugle beads along the diagonals', 'hand', 'silver'],
  'shirt/hem/sew': ['Sew the hem', 'machine', 'white'],
};

/** Ids of the steps, in their order. */
export const stepIds = Object.keys(says);

const step = (id: string): Step => ({
  id,
  garment: 'shirt',
  of: { kind: 'work', id },
  action: 'sew',
  setUp: { station: says[id]![1], thread: says[id]![2], tool: '' },
  say: says[id]![0],
  pieces: [],
  edges: [],
  times: 1,
  minutes: 10,
  final: false,
  kills: [],
});

/** A rework of the shoulders: two seams come out, then they are sewn again. */
export const rework: ReworkWritten = {
  id: 'r-1',
  say: 'Fronts 5/8 in wider',
  undo: ['sleeve', 'shoulders'].map((id) => ({
    garment: 'shirt',
    of: { kind: 'join', id },
    action: 'unpick',
    say: `Unpick the ${id}`,
    pieces: [],
    edges: [],
    times: 2,
    minutes: 15,
  })),
  again: [{ step: 'shirt/shoulders/sew', minutes: 10 }],
};

/** Ids of the cards that undo, in their order. */
export const undoIds = rework.undo.map((one) => undoId(rework.id, one));

/** The steps of reworks, and what puts them in order; last of all, as the least handy order would have it. */
function reworked(reworks: Standing['reworks'] = []) {
  const steps: Step[] = [];
  const bonds: Constraint[] = [];
  for (const { id, undo, again } of reworks) {
    const ids = undo.map((one) => undoId(id, one));
    const link = (before: string, after: string): Constraint => ({
      before,
      after,
      rule: 'rework',
      because: 'what is undone comes first',
      source: { kind: 'practice' },
      waivable: false,
    });
    undo.forEach((one, i) => {
      const stepId = ids[i]!;
      steps.push({ ...step(stepIds[1]!), id: stepId, of: one.of, say: one.say, minutes: one.minutes });
      bonds.push(...again.map((after) => link(stepId, after.step)));
    });
    bonds.push(...ids.slice(1).map((after, i) => link(ids[i]!, after)));
  }
  return { steps, bonds };
}

/** One chain of constraints through all steps; the last one also waits an hour after pressing. */
export const constraints: Constraint[] = stepIds.slice(1).map((id, i) => ({
  before: stepIds[i]!,
  after: id,
  rule: 'in a row',
  because: `${says[stepIds[i]!]![0]} comes first`,
  source: { kind: 'practice' },
  waivable: true,
  ...(id === 'shirt/hem/sew' ? { wait: 3600 } : {}),
}));

export const outfit = {
  id: 'harbour',
  name: 'The harbour test',
  units: 'in',
  event: { name: 'An evening', date: '2027-03-01' },
  invented: true,
  garments: [{ id: 'shirt', name: 'Shirt' }],
} as unknown as Outfit;

export const rooms: Rooms = {
  readOutfit: (raw) =>
    raw === 'broken' ? bad([{ at: '', wrong: 'it is broken', cure: 'mend it' }]) : good(outfit),
  runningOrder(_outfit, standing: Standing) {
    const done = new Set(standing.done);
    const more = reworked(standing.reworks);
    const all = [...stepIds, ...more.steps.map(({ id }) => id)];
    const force = [...constraints, ...more.bonds].filter((c) => !standing.waived.has(constraintKey(c)));
    const sequence = [...standing.done, ...all.filter((id) => !done.has(id))];
    const running: Running = {
      steps: new Map([...stepIds.map(step), ...more.steps].map((one) => [one.id, one])),
      sequence,
      doneCount: standing.done.length,
      ready: new Set(
        all.filter((id) => !done.has(id) && force.every((c) => c.after !== id || done.has(c.before))),
      ),
      constraints: force,
      waived: constraints.filter((c) => standing.waived.has(constraintKey(c))),
      concerns: [],
      changeovers: 4,
    };
    return good(running);
  },
  cardFor(_outfit, running, id): Card {
    const [say, station] = says[id] ?? [running.steps.get(id)?.say ?? '', 'machine' as const];
    return {
      step: id,
      garment: 'Shirt',
      k: running.sequence.indexOf(id) + 1,
      n: stepIds.length,
      station,
      say,
      settings:
        station === 'machine'
          ? [
              { name: 'stitch', figure: 'straight' },
              { name: 'length', figure: '2.5 mm' },
              { name: 'needle', figure: '70/10' },
              { name: 'seam', figure: '5/8 in' },
            ]
          : station === 'iron'
            ? [{ name: 'iron', figure: '150 °C' }]
            : [],
      drawing: id === 'shirt/sleeve/bead' ? [] : id === 'shirt/shoulders/sew' ? [front, back] : [front],
      readout: readouts[id] ?? { kind: 'none' },
      cautions:
        station === 'iron'
          ? [
              'Hot iron and steam. Keep fingers clear, and believe the label of the cloth and the maker of the iron.',
            ]
          : [],
      advice:
        id === 'shirt/tucks/mark'
          ? [
              {
                say: 'A tuck of 1/8 in is easier to keep even than one of 1/16 in.',
                source: { kind: 'practice' },
              },
            ]
          : [],
      waived: [],
    };
  },
  explain(running, id) {
    const done = new Set(running.sequence.slice(0, running.doneCount));
    const reason = (c: Constraint, other: string) => ({
      step: other,
      say: says[other]![0],
      because: c.because,
      source: c.source,
      waive: c.waivable ? constraintKey(c) : '',
    });
    const before = running.constraints.filter((c) => c.after === id);
    return {
      now: before.filter((c) => done.has(c.before)).map((c) => reason(c, c.before)),
      notYet: before.filter((c) => !done.has(c.before)).map((c) => reason(c, c.before)),
      waits: running.constraints.filter((c) => c.before === id).map((c) => reason(c, c.after)),
    };
  },
};

/** A ledger in memory. `hold` keeps writes from being acknowledged until it is called. */
export function memoryLedger(now: () => number) {
  const deeds: Deed[] = [];
  let gate: Promise<void> | undefined;
  let failWith: Error | undefined;
  const put = (outfitId: string, acts: readonly Act[], device = 'here'): Deed[] => {
    const made = acts.map((act, i) => {
      const seq = deeds.length + i;
      return { id: `${device}-${seq}` as const, device, seq, at: now(), outfit: outfitId, act };
    });
    deeds.push(...made);
    return made;
  };
  const ledger: SessionLedger = {
    async write(outfitId, acts) {
      await gate;
      if (failWith) throw failWith;
      return put(outfitId, acts);
    },
  };
  return {
    ledger,
    deeds,
    put,
    progress: () => addUp(deeds, outfit.id),
    hold(): () => void {
      let open = (): void => {};
      gate = new Promise((done) => {
        open = done;
      });
      return () => {
        gate = undefined;
        open();
      };
    },
    fail(error: Error | undefined): void {
      failWith = error;
    },
  };
}
