import { practice, published } from '../../cloth/source.ts';
import { lookUp } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Garment, Outfit, Piece } from '../../outfit/outfit.ts';
import { pointer } from '../../outfit/problem.ts';
import type { Constraint, StepId } from '../step.ts';
import { aboutJoin, actionsOfJoin } from './joins.ts';
import { type Action, inTurn, listed, type Made, type MarkMade, type Subject, stepOf, the } from './made.ts';
import { aboutWork, actionsOf } from './works.ts';

const marksFirst = published('Fitting Dresses', '1946', 'US Dept of Agriculture, part 2');

/** Id of the subject that cuts all pieces of one cloth. */
export const cuttingOf = (cloth: string): string => `cut-${cloth}`;
/** Id of the subject that cuts a worked block to its outline. */
export const outlineOf = (piece: string): string => `outline-${piece}`;

/**
 * A garment with all its steps: cutting, works, joins, try-ons. No rule has spoken yet; only what holds inside each
 * subject is known. `place` is the garment's number in the outfit, for pointers into the description.
 */
export function expand(outfit: Outfit, garment: Garment, place: number): Made {
  const looked = lookUp(garment);
  const cloths = new Map(outfit.cloths.map((cloth) => [cloth.id, cloth]));
  const subjects = new Map<string, Subject>();
  const inner: Constraint[] = [];
  const marks: MarkMade[] = [];
  const clothOf = (piece: string): Cloth => {
    const cloth = cloths.get(looked.pieces.get(piece)?.cloth ?? '');
    if (!cloth) throw new Error(`no cloth for ${piece}`);
    return cloth;
  };
  /** Fused samples already planned, by material and cloth. */
  const samples = new Map<string, StepId>();
  const put = (about: Parameters<typeof inTurn>[0], actions: readonly Action[]): Subject => {
    const made = inTurn(about, actions);
    subjects.set(about.id, made.subject);
    inner.push(...made.inner);
    return made.subject;
  };

  for (const cloth of outfit.cloths) {
    const pieces = garment.pieces.filter((piece) => piece.cloth === cloth.id);
    if (pieces.length > 0) cutting(garment, cloth, pieces, put);
  }
  for (const piece of garment.pieces) {
    if (piece.cutAfterWork) {
      put(
        {
          garment: garment.id,
          kind: 'piece',
          id: outlineOf(piece.id),
          name: lower(piece.name),
          pieces: [piece.id],
          edges: [],
          times: piece.cut === 'pair' ? 2 : 1,
        },
        [
          {
            action: 'cut',
            station: 'cut',
            say: `Lay the pattern on the worked cloth and cut ${the(piece)} to its outline`,
            minutes: 10,
          },
        ],
      );
    }
  }
  garment.works.forEach((work, i) => {
    const piece = looked.pieces.get(work.on);
    if (!piece) return;
    const actions = actionsOf(work, piece, clothOf(work.on));
    const fused = work.kind === 'interfacing' && work.fuse ? `${work.material} on ${piece.cloth}` : undefined;
    const tried = fused === undefined ? undefined : samples.get(fused);
    const subject = put(aboutWork(looked, work, piece), tried ? actions.slice(1) : actions);
    if (fused !== undefined && tried === undefined) samples.set(fused, subject.first);
    if (tried !== undefined) {
      inner.push({
        before: tried,
        after: subject.first,
        rule: 'sample first',
        because: 'one sample of this material on this cloth serves for all pieces',
        source: practice,
        waivable: false,
      });
    }
    const marker = 'marker' in work ? outfit.markers.find((m) => m.id === work.marker) : undefined;
    const mark = stepOf(subject, 'mark');
    if (marker && mark) {
      marks.push({
        mark,
        marker,
        users: usersOf(subject),
        pieces: [work.on],
        at: pointer(['garments', place, 'works', i, 'marker']),
      });
    }
  });
  for (const join of garment.joins) {
    const held = [...new Set([...join.this, ...join.to].map((ref) => ref.piece))].map(clothOf);
    put(aboutJoin(looked, join), actionsOfJoin(outfit, looked, join, [...new Set(held)]));
  }
  for (const gate of garment.gates) {
    const tacked = gate.tack.flatMap((id) => looked.joins.get(id) ?? []);
    const held = tacked.flatMap((join) => [...join.this, ...join.to].map((ref) => ref.piece));
    const worn = gate.after.flatMap((id) => subjects.get(id)?.pieces ?? []);
    const pieces = [...new Set([...held, ...worn])];
    const names = pieces.map((piece) => lower(looked.pieces.get(piece)?.name ?? piece));
    const fit: Action = { action: 'fit', station: 'try-on', say: `Try on: ${lower(gate.name)}`, minutes: 20 };
    const seams = listed(tacked.map((join) => `the ${lower(join.name)}`));
    put(
      { garment: garment.id, kind: 'gate', id: gate.id, name: lower(gate.name), pieces, edges: [], times: 1 },
      tacked.length === 0
        ? [fit]
        : [
            ...(gate.trial ? [trialCut(names)] : []),
            {
              action: 'tack',
              station: 'hand',
              thread: 'basting',
              say: `Tack ${seams}${gate.trial ? ' of the trial' : ''} with long stitches, for a try-on only`,
              minutes: Math.max(15, TACK_MINUTES * tacked.length),
            },
            fit,
            {
              action: 'untack',
              station: 'hand',
              say: gate.trial
                ? `Mark on the trial what was changed, and take it apart at ${seams}`
                : `Take the tacking out of ${seams}`,
              minutes: Math.max(5, (TACK_MINUTES / 3) * tacked.length),
            },
          ],
    );
  }
  gatherUsers(garment.works, garment.joins, subjects, marks);
  return { outfit, garment, looked, subjects, inner, marks, cloth: clothOf };
}

/** Common practice, no source: a seam of usual length is tacked in so many minutes; taking it out is a third of that. */
const TACK_MINUTES = 6;

const trialCut = (names: readonly string[]): Action => ({
  action: 'cut-trial',
  station: 'cut',
  say: `Cut ${listed(names)} plain from cheap cloth, with wide seam allowances`,
  minutes: 10 + 4 * names.length,
});

function cutting(
  garment: Garment,
  cloth: Cloth,
  pieces: readonly Piece[],
  put: (about: Parameters<typeof inTurn>[0], actions: readonly Action[]) => Subject,
): void {
  const worked = pieces.filter((piece) => piece.cutAfterWork);
  put(
    {
      garment: garment.id,
      kind: 'piece',
      id: cuttingOf(cloth.id),
      name: lower(cloth.name),
      pieces: pieces.map((piece) => piece.id),
      edges: [],
      times: 1,
    },
    [
      {
        action: 'cut',
        station: 'cut',
        say: `Cut the ${lower(garment.name)} from the ${lower(cloth.name)}${worked.length > 0 ? `; leave ${listed(worked.map((piece) => lower(piece.name)))} as blocks` : ''}`,
        minutes: 10 + 5 * pieces.length,
        final: true,
      },
      {
        action: 'lines',
        station: 'mark',
        say: `Mark seam lines and notches on the ${lower(cloth.name)} pieces of the ${lower(garment.name)}`,
        minutes: 5 + 2 * pieces.length,
        because:
          'seam lines, centre lines and notches are marked before the first basting; without them a seam cannot be put back',
        source: marksFirst,
      },
    ],
  );
}

/** Steps of a work that go by its marks: those that follow, up to the first one that makes marks of its own. */
function usersOf(subject: Subject): StepId[] {
  const goesBy = [
    'pin',
    'pin-1',
    'pin-2',
    'baste',
    'stitch',
    'stitch-1',
    'stitch-2',
    'bead',
    'cluster',
    'rows',
  ];
  return subject.steps.filter((step) => goesBy.includes(step.action)).map((step) => step.id);
}

/** The quarter marks of a gathered edge are still needed when it is drawn up and pinned to its place. */
function gatherUsers(
  works: Garment['works'],
  joins: Garment['joins'],
  subjects: ReadonlyMap<string, Subject>,
  marks: readonly MarkMade[],
): void {
  for (const work of works) {
    if (work.kind !== 'gather') continue;
    const made = marks.find((mark) => subjects.get(work.id)?.steps.some((step) => step.id === mark.mark));
    for (const join of joins) {
      const refs = [...join.this, ...join.to, ...join.catches.map((caught) => caught.trim)];
      if (!refs.some((ref) => ref.piece === work.on && ref.edge === work.edge)) continue;
      const subject = subjects.get(join.id);
      const pinned =
        subject && (subject.steps.find((step) => step.action.startsWith('baste-trim')) ?? subject.steps[0]);
      if (pinned) made?.users.push(pinned.id);
    }
  }
}
