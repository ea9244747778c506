import type { Source } from '../../cloth/source.ts';
import { practice } from '../../cloth/source.ts';
import type { Looked } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Garment, Marker, Outfit, Piece } from '../../outfit/outfit.ts';
import type { Constraint, MarkKiller, SetUp, Station, Step, StepId } from '../step.ts';

/** A work, a join, a gate or a cutting-out, with its steps in turn. */
export interface Subject {
  readonly id: string;
  readonly kind: Step['of']['kind'];
  /** As the maker calls it, for sentences: `the panel seam`. */
  readonly name: string;
  readonly pieces: readonly string[];
  readonly steps: readonly Step[];
  readonly first: StepId;
  readonly last: StepId;
}

/** A mark on the cloth: the step that makes it and the steps that go by it. */
export interface MarkMade {
  readonly mark: StepId;
  readonly marker: Marker;
  readonly users: StepId[];
  readonly pieces: readonly string[];
  /** Where the description names the marker (JSON Pointer). */
  readonly at: string;
}

/** A garment with all its steps, before any rule has spoken. */
export interface Made {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly looked: Looked;
  readonly subjects: ReadonlyMap<string, Subject>;
  /** What holds inside each subject: its steps in turn. */
  readonly inner: readonly Constraint[];
  readonly marks: readonly MarkMade[];
  cloth(piece: string): Cloth;
}

/** One action on the way through a subject; the next one in the list follows it. */
export interface Action {
  readonly action: string;
  readonly station: Station;
  readonly say: string;
  readonly minutes: number;
  /** Thread in the needle, where sewing is done. */
  readonly thread?: string;
  /** Needle or foot. */
  readonly tool?: string;
  readonly final?: boolean;
  readonly kills?: readonly MarkKiller[];
  /** True for a sample: done once, though the work itself is done left and right. */
  readonly once?: boolean;
  /** Why it comes after the one before it. */
  readonly because?: string;
  readonly rule?: string;
  readonly source?: Source;
  /** Seconds of rest since the one before it. */
  readonly wait?: number;
  readonly edges?: readonly string[];
  readonly pieces?: readonly string[];
}

/** What a subject is, before its actions are known. */
export interface About {
  readonly garment: string;
  readonly kind: Step['of']['kind'];
  readonly id: string;
  readonly name: string;
  readonly pieces: readonly string[];
  readonly edges: readonly string[];
  readonly times: 1 | 2;
}

/** The subject made of these actions in turn, and the constraints that keep them so. */
export function inTurn(
  about: About,
  actions: readonly Action[],
): { subject: Subject; inner: readonly Constraint[] } {
  const steps = actions.map((a): Step => {
    const setUp: SetUp = { station: a.station, thread: a.thread ?? '', tool: a.tool ?? '' };
    return {
      id: `${about.garment}/${about.id}/${a.action}`,
      garment: about.garment,
      of: { kind: about.kind, id: about.id },
      action: a.action,
      setUp,
      say: a.say,
      pieces: a.pieces ?? about.pieces,
      edges: a.edges ?? about.edges,
      times: a.once ? 1 : about.times,
      minutes: a.minutes * (a.once ? 1 : about.times),
      final: a.final ?? false,
      kills: a.kills ?? (a.station === 'iron' ? ['heat'] : []),
    };
  });
  const inner: Constraint[] = [];
  actions.forEach((a, i) => {
    const before = steps[i - 1];
    const after = steps[i];
    if (!before || !after) return;
    inner.push({
      before: before.id,
      after: after.id,
      rule: a.rule ?? 'in turn',
      because: a.because ?? `it follows “${before.say}”`,
      source: a.source ?? practice,
      waivable: false,
      ...(a.wait === undefined ? {} : { wait: a.wait }),
    });
  });
  const first = steps[0];
  const last = steps.at(-1);
  if (!first || !last) throw new Error(`${about.name} has no steps`);
  return { subject: { ...about, steps, first: first.id, last: last.id }, inner };
}

/** Step of a subject by its action, if it has one. */
export const stepOf = (subject: Subject, ...actions: readonly string[]): StepId | undefined =>
  subject.steps.find((step) => actions.includes(step.action))?.id;

/** `each centre front` for a pair, `the back` for one. */
export const the = (piece: Piece): string =>
  piece.cut === 'pair' ? `each ${lower(piece.name)}` : `the ${lower(piece.name)}`;

/** `a, b and c`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
