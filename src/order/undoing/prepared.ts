import type { Looked } from '../../outfit/chains.ts';
import type { EdgeRef, Garment, Gate, Join, Outfit, Work } from '../../outfit/outfit.ts';
import type { Running } from '../running-types.ts';
import type { Step, StepId } from '../step.ts';
import type { Sides } from './sides.ts';

/** An edge as it lies along a seam or a hem, as a part of its length. */
export interface Spot {
  readonly ref: EdgeRef;
  readonly key: string;
  readonly sides: Sides;
  readonly chain: 'this' | 'to';
  readonly span: readonly [from: number, to: number];
}

/** A seam or hem on one side of the body, or all of it where it is sewn once. */
export interface Line {
  readonly sides: Sides;
  readonly spots: readonly Spot[];
  /** Trims caught in it, as the join lists them. */
  readonly trims: readonly { readonly spot: Spot; readonly own: 'this' | 'to' }[];
  readonly cover: Spot | undefined;
}

/** A cutting, work, join or try-on with all that undoing it asks of it. */
export interface Sub {
  readonly room: Room;
  readonly id: string;
  readonly steps: readonly Step[];
  readonly times: 1 | 2;
  readonly pieces: readonly string[];
  readonly join: Join | undefined;
  readonly work: Work | undefined;
  readonly gate: Gate | undefined;
  /** Of what runs along edges: how long it is on one side, and its sides. */
  readonly length: number;
  readonly lines: readonly Line[];
  readonly ring: boolean;
  /** Where its last step stands in the order: what was sewn last comes out first. */
  readonly place: number;
}

/** A place where something sewn later runs over a seam. */
export interface Over {
  readonly sub: Sub;
  readonly line: number;
  readonly at: number;
  /** The two edges that meet there. */
  readonly ends: readonly { readonly ref: EdgeRef; readonly sides: Sides }[];
}

/** A garment, looked up for undoing. */
export interface Room {
  readonly garment: Garment;
  readonly looked: Looked;
  readonly subs: ReadonlyMap<string, Sub>;
  /** What has a piece in hand, by piece. */
  readonly holding: ReadonlyMap<string, readonly Sub[]>;
  /** What runs over a join, by join. */
  readonly over: ReadonlyMap<string, readonly Over[]>;
  /** What is laid on over the edges that a join sews, by join. */
  readonly laidOver: ReadonlyMap<string, readonly Sub[]>;
  /** The step that cuts a piece, by piece. */
  readonly cut: ReadonlyMap<string, Step>;
  length(ref: Pick<EdgeRef, 'piece' | 'edge'>): number;
}

/** An outfit and its order, looked up once, so that many alterations can be asked about. */
export interface Prepared {
  readonly outfit: Outfit;
  readonly running: Running;
  readonly rooms: ReadonlyMap<string, Room>;
  readonly places: ReadonlyMap<StepId, number>;
  /** Steps of earlier reworks that unpick, by which the maker's own pace is known. */
  readonly unpicked: readonly Step[];
}
