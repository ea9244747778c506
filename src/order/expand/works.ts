import type { Looked } from '../../outfit/chains.ts';
import { edgeName, timesOf } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Piece, Work } from '../../outfit/outfit.ts';
import { holeActions } from './buttonholing.ts';
import { type About, type Action, the } from './made.ts';
import { atMachine, basting, byHand, stretches, stretchTool } from './stations.ts';
import { crossedActions, tuckActions } from './tucking.ts';

/** The steps of a work, in turn. Minutes are a stated guess (common practice, no source) until the maker's own are known. */
export function actionsOf(work: Work, piece: Piece, cloth: Cloth): readonly Action[] {
  const it = the(piece);
  const machine = atMachine(cloth);
  const hand = byHand(cloth);
  switch (work.kind) {
    case 'tucks':
      return tuckActions(work, piece, cloth);
    case 'crossed-tucks':
      return crossedActions(work, piece, cloth);
    case 'folded-band':
      return [
        { action: 'turn-1', station: 'iron', say: `Press the first turn of the band on ${it}`, minutes: 4 },
        {
          action: 'turn-2',
          station: 'iron',
          say: `Press the second turn of the band on ${it}`,
          minutes: 4,
          because: 'the narrow turn is pressed before the wide one encloses it',
        },
        { action: 'stitch', ...machine, say: `Stitch the band of ${it}`, minutes: 6 },
        { action: 'press', station: 'iron', say: `Press the band of ${it}`, minutes: 2 },
      ];
    case 'interfacing':
      return work.fuse
        ? [
            {
              action: 'sample',
              once: true,
              station: 'iron',
              say: `Fuse a sample of ${lower(work.material)} on a scrap of ${lower(cloth.name)}`,
              minutes: 8,
            },
            {
              action: 'fuse',
              station: 'iron',
              say: `Fuse the ${lower(work.material)} to ${it}`,
              minutes: 6,
              rule: 'sample first',
              because: 'a sample shows whether heat and cloth agree before the piece is risked',
            },
          ]
        : [{ action: 'baste', ...basting, say: `Baste the ${lower(work.material)} to ${it}`, minutes: 10 }];
    case 'applied-tape':
      return [
        {
          action: 'mark',
          station: 'mark',
          say: `Mark the line of the ${lower(work.tape)} on ${it}`,
          minutes: 4,
        },
        {
          action: 'baste',
          ...basting,
          say: `Baste the ${lower(work.tape)} along the mark on ${it}`,
          minutes: 10,
        },
        {
          action: 'stitch',
          ...machine,
          say: `Stitch the ${lower(work.tape)} down both sides on ${it}`,
          minutes: 8,
          because: 'the tape is basted first, so that it cannot creep under the foot',
        },
        {
          action: 'unbaste',
          ...hand,
          say: `Take the basting out of the ${lower(work.tape)} on ${it}`,
          minutes: 3,
        },
      ];
    case 'gather':
      return [
        {
          action: 'mark',
          station: 'mark',
          say: `Mark ${work.divide === 4 ? 'quarters' : 'eighths'} on the ${work.edge} edge of ${it}`,
          minutes: 4,
        },
        {
          action: 'rows',
          ...machine,
          tool: `${machine.tool}, longest stitch`,
          say: `Sew two gathering rows along the ${work.edge} edge of ${it}`,
          minutes: 5,
        },
      ];
    case 'bind-edge':
      return [
        {
          action: 'stitch',
          ...machine,
          say: `Stitch the binding to the ${work.edge} edge of ${it}`,
          minutes: 8,
        },
        {
          action: 'press',
          station: 'iron',
          say: `Press the binding over the ${work.edge} edge of ${it}`,
          minutes: 6,
        },
        { action: 'fasten', ...machine, say: `Stitch the binding down on ${it}`, minutes: 8 },
      ];
    case 'press-edge':
      return [
        { action: 'press', station: 'iron', say: `Press in the ${work.edge} edge of ${it}`, minutes: 3 },
      ];
    case 'stay-stitch':
      return [
        { action: 'stitch', ...machine, say: `Stay-stitch the ${work.edge} edge of ${it}`, minutes: 3 },
      ];
    case 'buttonholes':
      return holeActions(work, piece, cloth);
    case 'lattice-beads':
      return [
        { action: 'mark', station: 'mark', say: `Mark the lattice on ${it}`, minutes: 30 },
        {
          action: 'bead',
          ...hand,
          tool: 'beading needle',
          say: `Sew ${lower(work.line.name)} along the lattice of ${it}`,
          minutes: 240,
        },
        ...(work.cluster
          ? [
              {
                action: 'cluster',
                ...hand,
                tool: 'beading needle',
                say: `Sew a cluster of ${work.cluster.of} ${lower(work.cluster.bead.name)} at each crossing of ${it}`,
                minutes: 120,
                because: 'the lines are sewn first, so that the clusters sit on their crossings',
              } as const,
            ]
          : []),
      ];
    case 'hem':
      return [
        { action: 'level', station: 'pin', say: `Level and turn up the ${lower(work.name)}`, minutes: 12 },
        { action: 'press', station: 'iron', say: `Press the ${lower(work.name)}`, minutes: 5 },
        work.by === 'hand'
          ? { action: 'sew', ...hand, say: `Sew the ${lower(work.name)} by hand`, minutes: 40 }
          : { action: 'stitch', ...machine, say: `Stitch the ${lower(work.name)}`, minutes: 10 },
      ];
    case 'casing':
      return [
        { action: 'turn', station: 'pin', say: `Turn and pin the ${lower(work.name)}`, minutes: 6 },
        {
          action: 'stitch',
          ...machine,
          tool: stretches(cloth) ? stretchTool(cloth) : machine.tool,
          say: `Stitch the ${lower(work.name)}, leaving an opening`,
          minutes: 8,
        },
        {
          action: 'elastic',
          station: 'hand',
          say: `Thread the elastic through the ${lower(work.name)} and close the opening`,
          minutes: 10,
          thread: cloth.thread,
        },
      ];
    case 'ribbon':
      return [
        {
          action: 'thread',
          ...hand,
          say: `Thread the ribbon through ${work.where} on ${it}`,
          minutes: 8,
        },
      ];
    case 'own':
      return work.steps.map((own, i): Action => {
        const rest = work.steps[i - 1]?.rest ?? 0;
        return {
          action: `own-${i + 1}`,
          station: own.station,
          say: own.say,
          minutes: own.minutes,
          final: own.final,
          kills: [
            ...(own.station === 'iron' ? (['heat'] as const) : []),
            ...(own.wets ? (['water'] as const) : []),
          ],
          ...(own.station === 'machine' || own.station === 'hand' ? { thread: cloth.thread } : {}),
          ...(own.station === 'machine' ? { tool: machine.tool } : {}),
          ...(rest > 0
            ? {
                wait: rest * 60,
                rule: 'let it rest',
                because: `${lower(work.steps[i - 1]?.say ?? '')} has to rest first`,
              }
            : {}),
        };
      });
  }
}

/** What a work is about: its pieces, its edges, and how often it is done. */
export function aboutWork(looked: Looked, work: Work, piece: Piece): About {
  const along = work.kind === 'hem' || work.kind === 'casing' ? work.along : [];
  const edges = [
    ...along.map(edgeName),
    ...('edge' in work ? [`${work.on}.${work.edge}`] : []),
    ...('from' in work && (work.kind === 'tucks' || work.kind === 'crossed-tucks')
      ? [`${work.on}.${work.from}`]
      : []),
    ...(work.kind === 'buttonholes' ? [`${work.on}.${work.along}`] : []),
  ];
  const oneSided = work.kind === 'buttonholes' && work.top !== 'each';
  return {
    garment: looked.garment.id,
    kind: 'work',
    id: work.id,
    name: lower(work.name),
    pieces: [
      ...new Set([
        work.on,
        ...(work.kind === 'buttonholes' ? work.through : []),
        ...(work.kind === 'own' ? work.with : []),
        ...along.map((ref) => ref.piece),
      ]),
    ],
    edges,
    times: along.length > 0 ? timesOf(looked, along) : oneSided || piece.cut !== 'pair' ? 1 : 2,
  };
}
