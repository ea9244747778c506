import type { Length } from '../length/length.ts';
import type { Outline, Point } from '../shape/outline.ts';
import type { MeasureId } from './measures.ts';

/**
 * The description of an outfit: what is to be made, never in which order. The order of making is derived from it.
 * All ids are unique: cloths, markers, wearers and garments within the outfit; pieces, works, joins and gates together within a garment.
 */
export interface Outfit {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** True for demonstrations: the wearer, the event and the garment are made up. */
  readonly invented: boolean;
  readonly event: { readonly name: string /** `yyyy-mm-dd` */; readonly date: string };
  /** How lengths are shown unless the maker chooses otherwise. */
  readonly units: 'in' | 'mm';
  readonly cloths: readonly Cloth[];
  readonly markers: readonly Marker[];
  readonly wearers: readonly Wearer[];
  /** May be empty: then nothing is to be made yet. */
  readonly garments: readonly Garment[];
}

/** Somebody that garments are made for. */
export interface Wearer {
  readonly id: string;
  readonly name: string;
  /** On the body, without ease; only what was taken. */
  readonly measures: Readonly<Partial<Record<MeasureId, Length>>>;
}

/** A cloth and what it stands. */
export interface Cloth {
  readonly id: string;
  readonly name: string;
  readonly width: Length;
  readonly fibre: string;
  /** Stretch in percent of the resting length across and along; 0 for a cloth that does not give. */
  readonly stretch: { readonly across: number; readonly along: number };
  /** Highest iron temperature in °C that its care label allows (ISO 3758 dots: 110, 150, 200); 0: do not iron. */
  readonly iron: 0 | 110 | 150 | 200;
  /** True where it must lie all one way (nap, or a design with an up). */
  readonly oneWay: boolean;
  /** Colour of thread that sews it. */
  readonly thread: string;
  /** Needle for it, as its packet says: `70/10`. */
  readonly needle: string;
}

/** What the maker marks with. How a mark goes away decides when it can be relied on. */
export interface Marker {
  readonly id: string;
  readonly name: string;
  readonly kind: 'chalk' | 'thread' | 'heat-fading' | 'air-fading' | 'water-fading';
}

/** Something to wear that is made as one: its pieces, what is done to them and how they are sewn together. */
export interface Garment {
  readonly id: string;
  readonly name: string;
  /** Id of the wearer whose measures its figures are proposed from. */
  readonly wearer?: string;
  /** The ready-made units it was put together from, in the order in which they were put on. */
  readonly units: readonly UnitUse[];
  readonly pieces: readonly Piece[];
  readonly works: readonly Work[];
  readonly joins: readonly Join[];
  readonly gates: readonly Gate[];
}

/**
 * A ready-made unit as this garment has it. Its parts stand among the garment's own; this says what they were made
 * from, so that a figure can be changed later and the parts made anew.
 */
export interface UnitUse {
  /** Begins the ids of all its parts. */
  readonly id: string;
  readonly name: string;
  /** Which ready-made unit. One that this version does not know keeps its parts and cannot be changed. */
  readonly unit: string;
  /** What the maker wrote in its fields, by their names; what is not here is proposed from measures and places. */
  readonly entries: Readonly<Record<string, string>>;
  /** Where it was put, by the names of its places: edges as `piece.edge`, or the id of a piece or of a join. */
  readonly at: Readonly<Record<string, readonly string[]>>;
  /** Ids of cloths, by the names that the unit has for them. */
  readonly cloths: Readonly<Record<string, string>>;
  /** Ids of the pieces, works, joins and try-ons that it brought. */
  readonly brought: readonly string[];
  /** Those of them that the maker has changed or taken out by hand: they are left alone when the unit is made anew. */
  readonly own: readonly string[];
}

/** A piece of cloth, by its seam line. */
export interface Piece {
  readonly id: string;
  readonly name: string;
  /** Id of its cloth. */
  readonly cloth: string;
  /**
   * `one`: a single piece. `pair`: a left and a right, mirrored. `fold`: one piece, symmetric about an edge named
   * `fold` that lies on x = 0; the outline gives half of it.
   */
  readonly cut: 'one' | 'pair' | 'fold';
  /** Pieces of one unit (a cuff, a collar) are made up by themselves before the unit meets the rest. */
  readonly unit?: string;
  /** Seam allowance all round. */
  readonly allowance: Length;
  /** True where a block is cut first, worked, and only then cut to the outline. */
  readonly cutAfterWork: boolean;
  /** Where the grain lies, in degrees clockwise from the upright of the drawing; upright where it is not said. */
  readonly grain?: number;
  /** Places marked on the piece besides its edges: a dart's point, where a pocket sits. */
  readonly marks: readonly PieceMark[];
  readonly outline: Outline;
}

/** A place marked on a piece. */
export interface PieceMark {
  readonly name: string;
  readonly at: Point;
}

/** A named edge of a piece; `other` means the edge of the mirrored mate, or of the other half of a folded piece. */
export interface EdgeRef {
  readonly piece: string;
  readonly edge: string;
  readonly other: boolean;
}

/** Edges that lie end to end as one run once other seams are sewn. */
export type Chain = readonly EdgeRef[];

interface WorkOn {
  readonly id: string;
  readonly name: string;
  /** The piece it is done to. */
  readonly on: string;
}

/** One family of parallel tucks. */
export interface TuckFamily {
  /** Depths from the datum outwards, one a tuck; on a piece cut on the fold, those of one half. */
  readonly depths: readonly Length[];
  /** Finished distance from stitching line to stitching line. */
  readonly spacing: Length;
  /** Finished distance from the datum to the first stitching line. */
  readonly first: Length;
  /** Angle of the tucks to the upright of the drawing, in degrees, clockwise. */
  readonly angle: number;
  /** Which way the folds lie. */
  readonly pressed: 'away' | 'toward';
}

/** A family of lattice lines. */
export interface LatticeFamily {
  readonly angle: number;
  readonly spacing: Length;
}

/** Beads of one kind, as they lie on a line of a lattice. */
export interface Beads {
  readonly name: string;
  /** Length of one bead along the thread. */
  readonly length: Length;
  /** 2 where a bead pair is sewn with one stitch. */
  readonly atATime: 1 | 2;
}

/** Something done to a piece before or after it is joined. */
export type Work =
  | (WorkOn & {
      readonly kind: 'tucks';
      readonly from: string;
      readonly marker: string;
      readonly family: TuckFamily;
    })
  | (WorkOn & {
      readonly kind: 'crossed-tucks';
      readonly from: string;
      readonly marker: string;
      readonly families: readonly [TuckFamily, TuckFamily];
    })
  | (WorkOn & {
      readonly kind: 'folded-band';
      readonly edge: string;
      readonly firstTurn: Length;
      readonly secondTurn: Length;
    })
  | (WorkOn & {
      readonly kind: 'interfacing';
      readonly material: string;
      /** How a fusible is fused, from its maker's leaflet; none where it is sewn in. */
      readonly fuse?: { readonly degrees: number; readonly seconds: number; readonly coolMinutes: number };
    })
  | (WorkOn & {
      readonly kind: 'applied-tape';
      readonly edge: string;
      readonly inset: Length;
      readonly tape: string;
      readonly marker: string;
    })
  | (WorkOn & {
      readonly kind: 'gather';
      readonly edge: string;
      /** Ungathered length as a multiple of the place it is gathered to. */
      readonly fullness: number;
      readonly divide: 4 | 8;
      readonly marker: string;
    })
  | (WorkOn & { readonly kind: 'bind-edge'; readonly edge: string; readonly strip: Length })
  | (WorkOn & { readonly kind: 'press-edge'; readonly edge: string; readonly turn: Length })
  | (WorkOn & { readonly kind: 'stay-stitch'; readonly edge: string })
  | (WorkOn & {
      readonly kind: 'buttonholes';
      /** Other pieces that the holes go through, besides `on`. */
      readonly through: readonly string[];
      /** The edge along which they stand. */
      readonly along: string;
      readonly count: number;
      readonly first: Length;
      readonly last: Length;
      /** One button held at this distance from the datum (the chest, the waist). */
      readonly held?: Length;
      readonly from: string;
      readonly button: { readonly diameter: Length; readonly thickness: Length };
      readonly direction: 'along' | 'across';
      /** Which side lies on top, and so has the holes; `each` for a left and a right cuff. */
      readonly top: 'left' | 'right' | 'each';
      readonly marker: string;
    })
  | (WorkOn & {
      readonly kind: 'lattice-beads';
      readonly families: readonly [LatticeFamily, LatticeFamily];
      readonly line: Beads;
      /** What stands at the crossings. */
      readonly cluster?: { readonly of: number; readonly bead: Beads };
      readonly marker: string;
    })
  | (WorkOn & {
      readonly kind: 'hem';
      readonly along: Chain;
      readonly ring: boolean;
      readonly turn: Length;
      readonly by: 'hand' | 'machine';
      /** Hours that it hangs before it is levelled. */
      readonly hang: number;
    })
  | (WorkOn & {
      readonly kind: 'casing';
      readonly along: Chain;
      readonly ring: boolean;
      readonly turn: Length;
      /** Width of the elastic. */
      readonly elastic: Length;
      /** How long each elastic is cut, the lap of its ends with it. */
      readonly cut?: Length;
    })
  | (WorkOn & {
      readonly kind: 'ribbon';
      /** Length of the ribbon to cut for one piece. */
      readonly ribbon: Length;
      readonly where: string;
    })
  | (WorkOn & {
      readonly kind: 'own';
      /** Other pieces that it takes in hand, besides `on`. */
      readonly with: readonly string[];
      readonly when: 'flat' | 'free' | 'late';
      /** Edges that these steps finish, so that they are not raw when all is done. */
      readonly finishes?: readonly EdgeRef[];
      readonly steps: readonly OwnStep[];
    });

/** A step of the maker's own wording. */
export interface OwnStep {
  readonly say: string;
  readonly station: 'cut' | 'mark' | 'pin' | 'machine' | 'overlocker' | 'iron' | 'hand' | 'try-on';
  readonly minutes: number;
  /** Minutes to let it rest before the next step (drying, cooling). */
  readonly rest: number;
  readonly final: boolean;
  /** Takes water-fading marks out. */
  readonly wets: boolean;
}

/** What kind of thing is done to a piece. */
export type WorkKind = Work['kind'];

/** A seam between two chains. */
export interface Join {
  readonly id: string;
  readonly name: string;
  readonly this: Chain;
  readonly to: Chain;
  /**
   * `plain`: pinned, stitched, pressed. `stretch`: with a stitch that gives. `turned`: right sides together, stitched,
   * clipped, turned and pressed (layers of a collar). `ends`: short ends of two layers, stitched and turned.
   * `covered`: stitched with a layer held away, which is then sewn over it by hand. `bound`: finished with a bias
   * strip that is flipped and sewn down inside by hand. `laid-on`: laid flat on the right side and stitched through.
   */
  readonly seam: 'plain' | 'stretch' | 'turned' | 'ends' | 'covered' | 'bound' | 'laid-on';
  /** Depth of the seam from the cut edge. */
  readonly depth: Length;
  /** Trims sewn into it. */
  readonly catches: readonly Caught[];
  /** The edge that is sewn over a covered seam. */
  readonly cover?: EdgeRef;
  /** True where both chains close into a ring (a sleeve set in the round). */
  readonly ring: boolean;
  /** True where the maker wants this seam to be the one that closes the tube. */
  readonly closes: boolean;
  /** `flat`: while the garment is open; `round`: after the tube is closed; a matter of taste for collars. */
  readonly worked: 'flat' | 'round';
  /** Basted first, so that a try-on can come before the stitching. */
  readonly tacked: boolean;
  /** Where the stitching ends short of the edge: `the cuff`. */
  readonly stopsAt?: string;
  /** How the raw edges are kept from fraying, if a step of its own. */
  readonly finish: 'none' | 'overlock' | 'pinked';
}

/** A trim sewn into a join: basted to one side first, less deep than the seam. */
export interface Caught {
  readonly trim: EdgeRef;
  readonly basteTo: 'this' | 'to';
  readonly depth: Length;
}

/** A try-on placed in the order. */
export interface Gate {
  readonly id: string;
  readonly name: string;
  /** Joins that must be sewn for it (or basted, where they are tacked), and works that must be done. */
  readonly after: readonly string[];
  /** Joins that are tacked by hand for this try-on alone and taken out again after it. */
  readonly tack: readonly string[];
  /** True for a trial in cheap cloth: the pieces of its tacked joins are cut plain from it before the good cloth is cut. */
  readonly trial?: boolean;
  /** What to look at, most basic first. */
  readonly checks: readonly string[];
}
