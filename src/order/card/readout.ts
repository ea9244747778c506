import type { Advice } from '../../cloth/advice.ts';
import { advise } from '../../cloth/advice.ts';
import { SPARE_BEADS } from '../../cloth/beads.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { memory, practice } from '../../cloth/source.ts';
import { good, type Result } from '../../length/result.ts';
import { lower } from '../../outfit/lower.ts';
import type { CountLine, Readout } from '../card-types.ts';
import { isUndo } from '../rules/reworked.ts';
import { gatherMarks } from './gather-marks.ts';
import { holeMarks } from './hole-marks.ts';
import { beadsOf, latticeMarks } from './lattice-marks.ts';
import type { MarksFound } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';
import { tuckMarksOf } from './tuck-marks.ts';

/** The readout of a step, and advice that came up in working it out. */
export interface ReadoutFound {
  readonly readout: Readout;
  readonly advice: readonly Advice[];
}

const plain = (readout: Readout, advice: readonly Advice[] = []): Result<ReadoutFound, Refusal> =>
  good({ readout, advice });
const none: Readout = { kind: 'none' };

/** What the middle of a card shows: marks to set, beads to count, timers to run, ticks for a pair. */
export function readoutOf(on: CardSubject): Result<ReadoutFound, Refusal> {
  const { step, work, garment } = on;
  if (step.of.kind === 'gate' && step.action === 'fit') {
    const gate = garment.gates.find((g) => g.id === step.of.id);
    return plain(ticks(gate?.checks.map((check, i) => ({ item: `check-${i + 1}`, name: check })) ?? []));
  }
  if (step.of.kind === 'piece' && step.action === 'cut' && step.pieces.length > 1) return plain(cutList(on));
  if (isUndo(step))
    return plain(step.pieces.length > 1 && step.of.kind === 'piece' ? cutList(on) : pairTicks(on));
  if (work) {
    const found = workReadout(on);
    if (found) return found;
  }
  return plain(pairTicks(on));
}

const ticks = (items: readonly { item: string; name: string }[]): Readout =>
  items.length === 0 ? none : { kind: 'ticks', items };

const pairTicks = (on: CardSubject): Readout =>
  on.step.times === 2 ? ticks(sidesOf(on.step).map((side) => ({ item: side, name: side }))) : none;

const cutList = (on: CardSubject): Readout =>
  ticks(
    on.step.pieces.flatMap((id) => {
      const piece = on.looked.pieces.get(id);
      if (!piece) return [];
      if (isUndo(on.step)) return { item: id, name: piece.name };
      const how = { one: '1', pair: '2, a left and a right', fold: '1, on the fold' }[piece.cut];
      return { item: id, name: `${piece.name}: cut ${how}${piece.cutAfterWork ? ', as a block' : ''}` };
    }),
  );

function workReadout(on: CardSubject): Result<ReadoutFound, Refusal> | undefined {
  const { step, work, piece } = on;
  if (!work || !piece) return undefined;
  const isMark = step.action === 'mark' || step.action === 'mark-again';
  switch (work.kind) {
    case 'tucks':
    case 'crossed-tucks': {
      if (isMark) return marked(tuckMarksOf(on, work));
      if (!step.action.startsWith('stitch')) return undefined;
      const families = work.kind === 'tucks' ? [work.family] : work.families;
      const family = families[step.action === 'stitch-2' ? 1 : 0] ?? families[0];
      return plain(numbered(on, 'tuck', family?.depths.length ?? 0));
    }
    case 'gather':
      return isMark
        ? plain({ kind: 'marks', sets: gatherMarks(on, work).sets }, gatherMarks(on, work).advice)
        : undefined;
    case 'buttonholes':
      if (isMark) return marked(holeMarks(on, work));
      if (step.action === 'stitch' || step.action === 'slit') return plain(numbered(on, 'hole', work.count));
      if (step.action === 'mark-buttons' || step.action === 'buttons')
        return plain(numbered(on, 'button', work.count));
      return undefined;
    case 'lattice-beads':
      if (isMark) return marked(latticeMarks(on, work));
      return step.action === 'bead'
        ? beadCount(on)
        : step.action === 'cluster'
          ? clusterCount(on)
          : undefined;
    case 'interfacing':
      return step.action === 'fuse' && work.fuse ? plain(fuseTimers(on, work.fuse)) : undefined;
    case 'own': {
      const rest = work.steps[Number(step.action.replace('own-', '')) - 1]?.rest ?? 0;
      return rest > 0
        ? plain({ kind: 'timers', timers: [{ item: 'rest', name: 'let it rest', seconds: rest * 60 }] })
        : undefined;
    }
    default:
      return undefined;
  }
}

const marked = (found: Result<MarksFound, Refusal>): Result<ReadoutFound, Refusal> =>
  found.ok ? plain({ kind: 'marks', sets: found.value.sets }, found.value.advice) : found;

/** One tick for each of a number of like things, on each side. */
const numbered = (on: CardSubject, what: string, count: number): Readout =>
  count < 2
    ? pairTicks(on)
    : ticks(
        sidesOf(on.step).flatMap((side) =>
          Array.from({ length: count }, (_, i) => ({
            item: item(side, i + 1),
            name: side === '' ? `${what} ${i + 1}` : `${side}, ${what} ${i + 1}`,
          })),
        ),
      );

function fuseTimers(on: CardSubject, fuse: { seconds: number; coolMinutes: number }): Readout {
  const timers = sidesOf(on.step).flatMap((side) => [
    { item: item(side, 'press'), name: side === '' ? 'press' : `press, ${side}`, seconds: fuse.seconds },
  ]);
  return {
    kind: 'timers',
    timers:
      fuse.coolMinutes > 0
        ? [...timers, { item: 'cool', name: 'cool flat', seconds: fuse.coolMinutes * 60 }]
        : timers,
  };
}

function beadCount(on: CardSubject): Result<ReadoutFound, Refusal> | undefined {
  const { work, piece } = on;
  if (work?.kind !== 'lattice-beads' || !piece) return undefined;
  const found = beadsOf(piece, work);
  if (!found.ok) return found;
  const { beads } = found.value;
  const sewn = beads.lines.filter((line) => line.count > 0);
  const lines = sidesOf(on.step).flatMap((side) =>
    sewn.map(
      (line, i): CountLine => ({
        item: item(side, `line-${line.line + 1}`),
        name: onSide(side, piece, `line ${i + 1} of ${sewn.length}`),
        target: line.count,
      }),
    ),
  );
  const advice = [
    advise(
      `${beads.alongLines * sidesOf(on.step).length} ${lower(work.line.name)} in all; have ${Math.ceil((beads.alongLines * sidesOf(on.step).length * (100 + SPARE_BEADS.value)) / 100)} with spare ones`,
      memory,
    ),
    ...(work.line.atATime === 2
      ? [
          advise(
            'Sew two at a time and bring the needle back through the cloth between them: on a curve they lie flatter',
            practice,
          ),
        ]
      : []),
  ];
  return plain({ kind: 'count', of: lower(work.line.name), perTouch: work.line.atATime, lines }, advice);
}

function clusterCount(on: CardSubject): Result<ReadoutFound, Refusal> | undefined {
  const { work, piece } = on;
  if (work?.kind !== 'lattice-beads' || !work.cluster || !piece) return undefined;
  const found = beadsOf(piece, work);
  if (!found.ok) return found;
  const { of, bead } = work.cluster;
  const perLine = found.value.lattice.lines
    .map((line, i) => ({ i, n: line.family === 0 ? line.crossings.length : 0 }))
    .filter(({ n }) => n > 0);
  const lines = sidesOf(on.step).flatMap((side) =>
    perLine.map(
      ({ i, n }, nth): CountLine => ({
        item: item(side, `line-${i + 1}`),
        name: onSide(
          side,
          piece,
          `line ${nth + 1} of ${perLine.length}, ${n} ${n === 1 ? 'cluster' : 'clusters'}`,
        ),
        target: n * of,
      }),
    ),
  );
  const advice = [
    advise(`A cluster of ${of}: sew each one singly, then take a thread through all ${of}`, practice),
  ];
  return plain({ kind: 'count', of: lower(bead.name), perTouch: 1, lines }, advice);
}
