import { memory, published } from '../../cloth/source.ts';
import { writeLength } from '../../length/writing.ts';
import { edgeName, type Looked, piecesOf, timesOf } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Join, Outfit } from '../../outfit/outfit.ts';
import { type About, type Action, listed } from './made.ts';
import { atMachine, basting, byHand, stretches, stretchTool } from './stations.ts';

const interlining = published('The New Dressmaker', '1921', 'Butterick Publishing Co., p. 45');
const bastings = published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Finishing seams');
const tryFirst = published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Plan for a shirt waist');

/** The steps of a join, in turn: trims basted, then the seam itself, then what its kind asks for. */
export function actionsOfJoin(
  outfit: Outfit,
  looked: Looked,
  join: Join,
  cloths: readonly Cloth[],
): readonly Action[] {
  const stretchy = join.seam === 'stretch' || cloths.some(stretches);
  const own = cloths.find(stretches) ?? cloths[0];
  if (!own) throw new Error(`${join.name} has no cloth`);
  const machine = stretchy ? { ...atMachine(own), tool: stretchTool(own) } : atMachine(own);
  const hand = byHand(own);
  const it = `the ${lower(join.name)}`;
  const reach = join.stopsAt === undefined ? '' : `, stopping at ${join.stopsAt}`;
  const gathered = looked.garment.works.some(
    (work) =>
      work.kind === 'gather' &&
      [...join.this, ...join.to].some((ref) => ref.piece === work.on && ref.edge === work.edge),
  );
  const written = (depth: Join['depth']) =>
    writeLength(depth, outfit.units === 'in' ? { unit: 'in', per: 16 } : { unit: 'mm', step: 1 }).text;

  const actions: Action[] = join.catches.map((caught, i): Action => {
    const chain = caught.basteTo === 'this' ? join.this : join.to;
    const trim = lower(looked.pieces.get(caught.trim.piece)?.name ?? caught.trim.piece);
    return {
      action: join.catches.length === 1 ? 'baste-trim' : `baste-trim-${i + 1}`,
      ...basting,
      say: `Baste the ${trim} along ${edgesIn(looked, chain)}, ${written(caught.depth)} deep`,
      minutes: 20,
      pieces: [...new Set([caught.trim.piece, ...chain.map((ref) => ref.piece)])],
      edges: [edgeName(caught.trim), ...chain.map(edgeName)],
    };
  });
  const afterBasting: Partial<Action> =
    join.catches.length > 0
      ? {
          rule: 'baste, then sew deeper',
          because: `the trim is basted first, and the seam is sewn further in (${written(join.depth)}), so that the basting never shows`,
        }
      : {};

  switch (join.seam) {
    case 'plain':
    case 'stretch': {
      actions.push({
        action: 'pin',
        station: 'pin',
        say: gathered ? `Draw up the gathers to fit and pin ${it}` : `Pin ${it}`,
        minutes: gathered ? 10 : 4,
        ...afterBasting,
      });
      if (join.tacked) {
        actions.push({ action: 'baste', ...basting, say: `Baste ${it} for the try-on`, minutes: 8 });
      }
      actions.push({
        action: 'stitch',
        ...machine,
        say: `Stitch ${it}${join.catches.length > 0 ? ` ${written(join.depth)} deep, past the basting` : ''}${reach}`,
        minutes: 5,
        ...(join.tacked
          ? { because: 'a basted seam can still be changed after the try-on', source: tryFirst }
          : {}),
      });
      if (join.tacked) {
        actions.push({
          action: 'unbaste',
          ...hand,
          say: `Take the basting out of ${it}`,
          minutes: 3,
        });
      }
      if (join.finish === 'overlock') {
        actions.push({
          action: 'overlock',
          station: 'overlocker',
          thread: own.thread,
          say: `Overlock the edges of ${it}`,
          minutes: 4,
        });
      }
      if (join.finish === 'pinked') {
        actions.push({ action: 'pink', station: 'cut', say: `Pink the edges of ${it}`, minutes: 3 });
      }
      actions.push({
        action: 'press',
        station: 'iron',
        say: stretchy ? `Press ${it} lightly, without pulling` : `Press ${it}`,
        minutes: 3,
        ...(join.tacked
          ? {
              because: 'bastings are cut and taken out before the seam is pressed, or they leave marks',
              source: bastings,
            }
          : {}),
      });
      break;
    }
    case 'turned': {
      // All along an edge, as a facing is sewn, nothing is left open and there is no corner.
      const along = join.worked === 'round';
      actions.push(
        {
          action: 'pin',
          station: 'pin',
          say: `Pin ${edgesIn(looked, [...join.this, ...join.to])} right sides together`,
          minutes: 5,
          ...afterBasting,
        },
        {
          action: 'stitch',
          ...machine,
          say: `Stitch ${it}${along ? '' : ', leaving the rest open'}`,
          minutes: 6,
        },
        { action: 'clip', station: 'cut', say: `Grade and clip ${it}`, minutes: 5, final: true },
        {
          action: 'turn',
          ...hand,
          say: `Turn ${it} right side out${along ? '' : ' and work the corners out'}`,
          minutes: 5,
          rule: 'turn after clipping',
          because: 'a seam is clipped before it is turned, or the edge stays blunt',
          source: memory,
        },
        { action: 'press', station: 'iron', say: `Press ${it}, the seam just inside the edge`, minutes: 4 },
      );
      break;
    }
    case 'ends':
      actions.push(
        { action: 'pin', station: 'pin', say: `Pin ${it} right sides together`, minutes: 3 },
        { action: 'stitch', ...machine, say: `Stitch ${it}`, minutes: 4 },
        { action: 'press', station: 'iron', say: `Press ${it}`, minutes: 3 },
      );
      break;
    case 'covered': {
      const over = lower(looked.pieces.get(join.cover?.piece ?? '')?.name ?? 'inner layer');
      actions.push(
        {
          action: 'pin',
          station: 'pin',
          say: `${gathered ? 'Draw up the gathers to fit and pin' : 'Pin'} ${it}, the ${over} held away`,
          minutes: gathered ? 10 : 5,
          ...afterBasting,
        },
        { action: 'stitch', ...machine, say: `Stitch ${it}, the ${over} still held away`, minutes: 5 },
        { action: 'press', station: 'iron', say: `Press ${it} toward the ${over}`, minutes: 3 },
        {
          action: 'cover',
          ...hand,
          say: `Lay the ${over} over ${it} and sew it down by hand`,
          minutes: 20,
          rule: 'outside by machine, inside by hand after',
          because:
            'the inner layer is turned in over the seam that the machine has sewn, so that the raw edges are covered',
          source: interlining,
          edges: join.cover ? [edgeName(join.cover)] : [],
        },
      );
      break;
    }
    case 'bound':
      actions.push(
        { action: 'baste', ...basting, say: `Baste ${it}`, minutes: 12, ...afterBasting },
        {
          action: 'bind',
          ...machine,
          say: `Stitch the bias strip along ${it}, close to its crease`,
          minutes: 8,
        },
        { action: 'clip', station: 'cut', say: `Grade and clip ${it}`, minutes: 4, final: true },
        {
          action: 'flip',
          station: 'iron',
          say: `Flip the bias inside and press ${it}`,
          minutes: 5,
          rule: 'turn after clipping',
          because: 'the curve is clipped before the bias is flipped, or it drags',
          source: memory,
        },
        {
          action: 'fell',
          ...hand,
          say: `Sew the bias down inside ${it} by hand`,
          minutes: 25,
          rule: 'outside by machine, inside by hand after',
          because: 'the bias is stitched outside first and sewn down inside by hand after',
        },
      );
      break;
    case 'laid-on':
      actions.push(
        {
          action: 'pin',
          station: 'pin',
          say: gathered
            ? `Draw up the gathers to fit and pin ${it}, flat on the right side`
            : `Pin ${it} flat on the right side`,
          minutes: gathered ? 10 : 6,
          ...afterBasting,
        },
        { action: 'stitch', ...machine, say: `Stitch ${it} through`, minutes: 6 },
      );
      break;
  }
  return actions;
}

/** `the centre front and back`: the pieces along a chain, each once. */
const edgesIn = (looked: Looked, chain: Join['this']): string =>
  `the ${listed([...new Set(chain.map((ref) => lower(looked.pieces.get(ref.piece)?.name ?? ref.piece)))])}`;

/** What a join is about: its pieces, its edges, and how often it is done. */
export const aboutJoin = (looked: Looked, join: Join): About => ({
  garment: looked.garment.id,
  kind: 'join',
  id: join.id,
  name: `the ${lower(join.name)}`,
  pieces: piecesOf(join),
  edges: [...new Set([...join.this, ...join.to].map(edgeName))],
  times: timesOf(looked, join.this, join.to),
});
