import { spell } from './chains.ts';
import type { Cloth, Garment, Join, Outfit, Piece, UnitUse, Wearer } from './outfit.ts';
import { FORMAT, VERSION } from './schema.ts';
import {
  drawingUnit,
  exactLength,
  type Spelling,
  spellOutline,
  spellPoint,
  type Written,
  without,
  writeJson,
} from './spelling.ts';
import { writeWork } from './writing-works.ts';

const cloth = ({ stretch, ...one }: Cloth, say: Spelling): Written =>
  without(
    {
      id: one.id,
      name: one.name,
      width: say(one.width),
      fibre: one.fibre,
      stretch: { across: stretch.across, along: stretch.along },
      iron: one.iron,
      oneWay: one.oneWay,
      thread: one.thread,
      needle: one.needle,
    },
    { stretch: { across: 0, along: 0 }, oneWay: false },
  );

const wearer = (one: Wearer, say: Spelling): Written =>
  without(
    {
      id: one.id,
      name: one.name,
      measures: Object.fromEntries(
        Object.entries(one.measures).map(([name, measure]) => [name, say(measure)]),
      ),
    },
    { measures: {} },
  );

const unitUse = (use: UnitUse): Written =>
  without({ ...use }, { entries: {}, at: {}, cloths: {}, brought: [], own: [] });

const piece = (one: Piece, say: Spelling, unit: Outfit['units']): Written => {
  const drawn = drawingUnit(one, unit);
  return without(
    {
      id: one.id,
      name: one.name,
      cloth: one.cloth,
      cut: one.cut,
      unit: one.unit,
      cutAfterWork: one.cutAfterWork,
      allowance: say(one.allowance),
      grain: one.grain,
      marks: one.marks.map(({ name, at }) => ({ name, unit: drawn, at: spellPoint(at, drawn) })),
      outline: spellOutline(one.outline, drawn),
    },
    { cutAfterWork: false, marks: [] },
  );
};

const join = (one: Join, say: Spelling): Written =>
  without(
    {
      id: one.id,
      name: one.name,
      this: one.this.map(spell),
      to: one.to.map(spell),
      seam: one.seam,
      depth: say(one.depth),
      catches: one.catches.map((caught) =>
        without(
          { trim: spell(caught.trim), basteTo: caught.basteTo, depth: say(caught.depth) },
          { basteTo: 'this' },
        ),
      ),
      cover: one.cover && spell(one.cover),
      ring: one.ring,
      closes: one.closes,
      worked: one.worked,
      tacked: one.tacked,
      stopsAt: one.stopsAt,
      finish: one.finish,
    },
    {
      seam: 'plain',
      catches: [],
      ring: false,
      closes: false,
      worked: 'flat',
      tacked: false,
      finish: 'none',
    },
  );

const garment = (one: Garment, say: Spelling, unit: Outfit['units']): Written =>
  without(
    {
      id: one.id,
      name: one.name,
      wearer: one.wearer,
      units: one.units.map(unitUse),
      pieces: one.pieces.map((each) => piece(each, say, unit)),
      works: one.works.map((each) => writeWork(each, say)),
      joins: one.joins.map((each) => join(each, say)),
      gates: one.gates.map((each) => without({ ...each }, { after: [], tack: [], trial: false })),
    },
    { units: [], works: [], joins: [], gates: [] },
  );

/** A description as its file spells it: read again it gives exactly the same outfit. What is usual is left out. */
export function writeOutfit(outfit: Outfit): Written {
  const say: Spelling = (length) => exactLength(length, outfit.units);
  return {
    format: FORMAT,
    version: VERSION,
    ...without(
      {
        id: outfit.id,
        name: outfit.name,
        about: outfit.about,
        invented: outfit.invented,
        event: { name: outfit.event.name, date: outfit.event.date },
        units: outfit.units,
        cloths: outfit.cloths.map((each) => cloth(each, say)),
        markers: outfit.markers.map((each) => ({ ...each })),
        wearers: outfit.wearers.map((each) => wearer(each, say)),
        garments: outfit.garments.map((each) => garment(each, say, outfit.units)),
      },
      { about: '', invented: false, wearers: [] },
    ),
  };
}

/** The whole file, as text that people can read and change. */
export const writeOutfitFile = (outfit: Outfit): string => `${writeJson(writeOutfit(outfit))}\n`;
