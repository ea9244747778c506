import type { Advice } from '../../cloth/advice.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import type { Source } from '../../cloth/source.ts';
import type { Entries, Fault, Fields, Proposed, Values } from '../../fields/fields.ts';
import { readFields } from '../../fields/fields.ts';
import type { Length } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import type {
  Caught,
  Chain,
  Cloth,
  Garment,
  Gate,
  Join,
  Outfit,
  Piece,
  UnitUse,
  Wearer,
  Work,
} from '../outfit.ts';
import { findPlace } from './place.ts';
import { tooLong } from './sizes-fit.ts';
import type { Sketch } from './sketch.ts';

/** Under which heading a unit is looked for. */
export type UnitGroup =
  | 'Body'
  | 'Front and fastening'
  | 'Frills'
  | 'Neck and collar'
  | 'Sleeves and cuffs'
  | 'Decoration'
  | 'Legs'
  | 'Skirts and waist'
  | 'Finishing';

/** Where a unit is put: on a run of edges, on whole pieces, or into seams that are there already. */
export interface PlaceAsked {
  readonly kind: 'edges' | 'piece' | 'pieces' | 'seam';
  /** What is asked, as the maker would: `the neck edge`. */
  readonly label: string;
  /** One short sentence more, where the label does not say it. */
  readonly means?: string;
  /**
   * Names by which the place is usually known, the likeliest first: of edges (`armhole`), of pieces or joins. A free
   * edge, or a run of free edges that seams make one, whose name is or ends in one of these is proposed.
   */
  readonly like: readonly string[];
  /** The unit can do without. */
  readonly optional?: true;
  /** True where one edge alone will do: several are not proposed. */
  readonly one?: true;
  /** True where the run closes into a ring: an armhole, the waist of a skirt. */
  readonly ring?: true;
  /** True where the run goes over both sides of the body, from one front edge round the back to the other. */
  readonly round?: true;
}

/** A run of edges that a unit was put on. */
export interface EdgesPlaced {
  readonly kind: 'edges';
  readonly chain: Chain;
  /** Along the finished seam line, all edges of the chain together. */
  readonly length: Length;
  readonly pieces: readonly Piece[];
}
/** A piece that a unit was put on. */
export interface PiecePlaced {
  readonly kind: 'piece';
  readonly piece: Piece;
}
/** Several pieces. */
export interface PiecesPlaced {
  readonly kind: 'pieces';
  readonly pieces: readonly Piece[];
}
/** A seam that a unit was put into, with the length of its `this` side. */
export interface SeamPlaced {
  readonly kind: 'seam';
  readonly join: Join;
  readonly length: Length;
}
/** Any of them. */
export type Placed = EdgesPlaced | PiecePlaced | PiecesPlaced | SeamPlaced;

type PlacedOf<P extends PlaceAsked> =
  | Extract<Placed, { readonly kind: P['kind'] }>
  | (P extends { readonly optional: true } ? undefined : never);

/** The places of a unit as they were found. */
export type PlacedAt<P extends Readonly<Record<string, PlaceAsked>>> = {
  readonly [K in keyof P]: PlacedOf<P[K]>;
};

/** A cloth that a unit is cut from. */
export interface ClothAsked {
  readonly label: string;
  /** Only a cloth that stretches will do. */
  readonly stretch?: true;
}

/** A figure that stands in a field before the maker writes one, and why. */
export interface Proposal {
  readonly value: Length | number | string;
  /** One short sentence: `Half the chest and 2 in of ease`. */
  readonly because: string;
  readonly source: Source;
}

/** What a unit adds to a garment. */
export interface Parts {
  readonly pieces: readonly Piece[];
  readonly works: readonly Work[];
  readonly joins: readonly Join[];
  readonly gates: readonly Gate[];
  /** Trims of this unit that are sewn into seams that are there already, by the id of the join. */
  readonly catches: readonly { readonly join: string; readonly caught: Caught }[];
}

/** A unit put on: its parts, what was proposed, what to know, what was taken for granted. */
export interface Built extends Parts {
  readonly proposed: Readonly<Record<string, Proposal>>;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/** What a unit's arithmetic is handed. */
export interface Making<F extends Fields, P extends Readonly<Record<string, PlaceAsked>>, C extends string> {
  readonly values: Values<F>;
  readonly at: PlacedAt<P>;
  readonly cloth: Readonly<Record<C, Cloth>>;
  /** Id of what to mark with. */
  readonly marker: string;
  /** The garment as it is without this unit. */
  readonly garment: Garment;
  /** Id of a part: of the unit's main piece with no name of its own, `sleeve`; else `sleeve-head`. */
  readonly id: (part?: string) => string;
  /** The name that the maker gave the unit: `Sleeve`. */
  readonly name: string;
  /** A length as the maker reads it, to the nearest 1/16 in or 1 mm, for the wording of steps. */
  readonly written: (length: Length) => string;
}

/** What figures may be proposed from. */
export interface Knowing<P extends Readonly<Record<string, PlaceAsked>>> {
  readonly measures: Wearer['measures'];
  /** Places found so far; one that is not chosen yet is missing. */
  readonly at: Partial<PlacedAt<P>>;
  readonly garment: Garment;
}

/** A part of a garment, ready made: its figures, the places it is put on, and what it adds. */
export interface Unit {
  /** Lower case with hyphens; stands in files, so never changed once published. */
  readonly id: string;
  /** As a maker would ask for it: `Puffed sleeve`. */
  readonly name: string;
  /** What it is, one short line. */
  readonly tells: string;
  readonly group: UnitGroup;
  readonly fields: Fields;
  readonly places: Readonly<Record<string, PlaceAsked>>;
  readonly cloths: Readonly<Record<string, ClothAsked>>;
  /** How it looks when it is finished, small, to choose by. */
  readonly sketch: Sketch;
  /** Figures proposed from what is known, by field, each with its reason. */
  readonly propose: (known: Known, use: Putting) => Readonly<Record<string, Proposal>>;
  /** Puts it on. Every fault that can be found is given: a field, or `at.<place>`, or `cloth.<name>`. */
  readonly build: (known: Known, use: Putting) => Result<Built, readonly Fault[]>;
}

/** What is known where a unit is put on: the outfit, and the garment without the unit's own parts. */
export interface Known {
  readonly outfit: Outfit;
  readonly garment: Garment;
}

/** A unit as it is being put on. */
export type Putting = Pick<UnitUse, 'id' | 'name' | 'entries' | 'at' | 'cloths'>;

const SIXTEENTHS: Marking = { unit: 'in', per: 16 };
const MILLIMETRES: Marking = { unit: 'mm', step: 1 };

const NOTHING: Parts = { pieces: [], works: [], joins: [], gates: [], catches: [] };

const measuresOf = ({ outfit, garment }: Known): Wearer['measures'] =>
  outfit.wearers.find((wearer) => wearer.id === garment.wearer)?.measures ?? {};

const wearable = (cloth: Cloth, asked: ClothAsked): boolean =>
  asked.stretch !== true || cloth.stretch.across > 0 || cloth.stretch.along > 0;

/** The cloth that a unit takes where the maker chose none: the first that will do. */
export const usualCloth = (outfit: Outfit, asked: ClothAsked): Cloth | undefined =>
  outfit.cloths.find((cloth) => wearable(cloth, asked));

/**
 * Makes a unit from its description. `blame` says which field is meant where the arithmetic names an input otherwise; a
 * refusal about neither stands at the first field.
 */
export function unit<
  const F extends Fields,
  const P extends Readonly<Record<string, PlaceAsked>> = Record<never, never>,
  const C extends string = 'main',
>(told: {
  readonly id: string;
  readonly name: string;
  readonly tells: string;
  readonly group: UnitGroup;
  readonly fields: F;
  readonly places?: P;
  readonly cloths?: Readonly<Record<C, ClothAsked>>;
  readonly sketch: Sketch;
  readonly blame?: Readonly<Record<string, keyof F & string>>;
  readonly propose?: (known: Knowing<P>) => Readonly<Partial<Record<keyof F & string, Proposal>>>;
  readonly build: (
    making: Making<F, P, C>,
  ) => Result<Partial<Parts> & Partial<Pick<Built, 'advice' | 'assumed'>>, Refusal>;
}): Unit {
  const { fields, blame = {} } = told;
  const places = (told.places ?? {}) as Readonly<Record<string, PlaceAsked>>;
  const cloths = (told.cloths ?? { main: { label: 'Cloth' } }) as Readonly<Record<string, ClothAsked>>;
  const names = Object.keys(fields);

  const placesOf = (known: Known, use: Putting) => {
    const faults: Fault[] = [];
    const at: Record<string, Placed | undefined> = {};
    for (const [name, asked] of Object.entries(places)) {
      const written = use.at[name] ?? [];
      if (written.length === 0) {
        if (!asked.optional) faults.push({ field: `at.${name}`, say: `Choose ${asked.label}.` });
        continue;
      }
      const found = findPlace(known.garment, asked, written);
      if (found.ok) at[name] = found.value;
      else faults.push({ field: `at.${name}`, say: found.error });
    }
    // Each place was found by its own kind just above.
    return { faults, at: at as PlacedAt<P> };
  };
  const propose = (known: Known, at: Partial<PlacedAt<P>>): Readonly<Record<string, Proposal>> => {
    const found: Record<string, Proposal> = {};
    const proposed = told.propose?.({ measures: measuresOf(known), at, garment: known.garment }) ?? {};
    for (const [name, one] of Object.entries<Proposal | undefined>(proposed)) if (one) found[name] = one;
    return found;
  };

  return {
    id: told.id,
    name: told.name,
    tells: told.tells,
    group: told.group,
    fields,
    places,
    cloths,
    sketch: told.sketch,
    propose: (known, use) => propose(known, placesOf(known, use).at),
    build(known, use) {
      const { faults, at } = placesOf(known, use);
      const proposed = propose(known, at);
      const inFields: Proposed = Object.fromEntries(
        Object.entries(proposed).map(([name, one]) => [name, one.value]),
      );
      const entries: Entries = use.entries;
      const values = readFields(fields, entries, known.outfit.units, inFields);
      const cloth: Record<string, Cloth> = {};
      for (const [name, asked] of Object.entries(cloths)) {
        const chosen = use.cloths[name];
        const found =
          chosen === undefined
            ? usualCloth(known.outfit, asked)
            : known.outfit.cloths.find((one) => one.id === chosen);
        if (found && wearable(found, asked)) cloth[name] = found;
        else
          faults.push({
            field: `cloth.${name}`,
            say: asked.stretch
              ? `${found ? `${found.name} does not stretch.` : 'No cloth of this outfit stretches.'} Add a cloth that does, with its stretch.`
              : 'This cloth is not among the cloths of the outfit. Choose one that is.',
          });
      }
      faults.push(...(values.ok ? tooLong(fields, values.value) : values.error));
      if (!values.ok || faults.length > 0) return bad(faults);
      const [marker] = known.outfit.markers;
      const made = told.build({
        values: values.value,
        at,
        // One was found for each name just above.
        cloth: cloth as Readonly<Record<C, Cloth>>,
        marker: marker?.id ?? '',
        garment: known.garment,
        id: (part) => (part === undefined ? use.id : `${use.id}-${part}`),
        name: use.name,
        written: (length) => writeLength(length, known.outfit.units === 'in' ? SIXTEENTHS : MILLIMETRES).text,
      });
      if (made.ok) return good({ ...NOTHING, proposed, advice: [], assumed: [], ...made.value });
      const { field, wrong, cure } = made.error;
      const stands = names.includes(field) || field.startsWith('at.') || field.startsWith('cloth.');
      return bad([{ field: stands ? field : (blame[field] ?? names[0] ?? field), say: `${wrong} ${cure}` }]);
    },
  };
}
