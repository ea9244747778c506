import { inches, type Length } from '../length/length.ts';
import { spell } from './chains.ts';
import type { LatticeFamily, TuckFamily, Work } from './outfit.ts';
import { type Spelling, type Written, without } from './spelling.ts';

const tuckFamily = (one: TuckFamily, say: Spelling): Written =>
  without(
    { ...one, depths: one.depths.map(say), spacing: say(one.spacing), first: say(one.first) },
    { angle: 0, pressed: 'away' },
  );
const latticeFamily = (one: LatticeFamily, say: Spelling): Written => ({
  angle: one.angle,
  spacing: say(one.spacing),
});
const beads = (
  one: { readonly name: string; readonly length: Length; readonly atATime: 1 | 2 },
  say: Spelling,
) => without({ name: one.name, length: say(one.length), atATime: one.atATime }, { atATime: 1 });

function figures(one: Work, say: Spelling): Written {
  switch (one.kind) {
    case 'tucks':
      return { ...one, family: tuckFamily(one.family, say) };
    case 'crossed-tucks':
      return { ...one, families: one.families.map((family) => tuckFamily(family, say)) };
    case 'folded-band':
      return without(
        {
          ...one,
          firstTurn: one.firstTurn === inches(1, 2) ? undefined : say(one.firstTurn),
          secondTurn: one.secondTurn === inches(1) ? undefined : say(one.secondTurn),
        },
        {},
      );
    case 'interfacing':
    case 'stay-stitch':
      return { ...one };
    case 'applied-tape':
      return { ...one, inset: say(one.inset) };
    case 'gather':
      return without({ ...one }, { fullness: 2.5, divide: 4 });
    case 'bind-edge':
      return { ...one, strip: say(one.strip) };
    case 'press-edge':
      return { ...one, turn: say(one.turn) };
    case 'buttonholes':
      return without(
        {
          ...one,
          first: say(one.first),
          last: say(one.last),
          held: one.held === undefined ? undefined : say(one.held),
          button: { diameter: say(one.button.diameter), thickness: say(one.button.thickness) },
        },
        { through: [] },
      );
    case 'lattice-beads':
      return without(
        {
          ...one,
          families: one.families.map((family) => latticeFamily(family, say)),
          line: beads(one.line, say),
          cluster: one.cluster && { of: one.cluster.of, bead: beads(one.cluster.bead, say) },
        },
        {},
      );
    case 'hem':
      return without({ ...one, along: one.along.map(spell), turn: say(one.turn) }, { ring: false, hang: 0 });
    case 'casing':
      return without(
        {
          ...one,
          along: one.along.map(spell),
          turn: say(one.turn),
          elastic: say(one.elastic),
          cut: one.cut && say(one.cut),
        },
        { ring: false },
      );
    case 'ribbon':
      return { ...one, ribbon: say(one.ribbon) };
    case 'own':
      return without(
        {
          ...one,
          finishes: one.finishes?.map(spell),
          steps: one.steps.map((step) => without({ ...step }, { rest: 0, final: false, wets: false })),
        },
        { with: [] },
      );
  }
}

/** A work as a file spells it: what it is and what it is done to first, then its figures. */
export const writeWork = (one: Work, say: Spelling): Written => ({
  kind: one.kind,
  id: one.id,
  name: one.name,
  on: one.on,
  ...figures(one, say),
});
