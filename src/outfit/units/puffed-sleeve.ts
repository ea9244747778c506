import { cuff } from '../../cloth/cuffs.ts';
import { onArm, sleeveWide } from '../../cloth/sleeve-room.ts';
import { practice } from '../../cloth/source.ts';
import { add, nm, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { asked, usually } from './length-field.ts';
import { pieceOf } from './parts.ts';
import { fullnessFits, sizesFit } from './sizes-fit.ts';
import { wave } from './sketch.ts';
import { curve, line } from './sketch-lines.ts';
import { sleeveBand } from './sleeve-band.ts';
import { ARMHOLE, HELD_BY, SETTING, SLEEVE_USUAL, timesField } from './sleeve-fields.ts';
import { gatherOf, sleeveParts } from './sleeve-made.ts';
import { capFor, setInto, shoulderMark, sleeveOutline, underArm } from './sleeve-shape.ts';
import { unit } from './unit.ts';

/** A puffed sleeve: gathered into its armhole and into its lower edge, or worn by itself. */
export const puffedSleeve = unit({
  id: 'puffed-sleeve',
  name: 'Puffed sleeve',
  tells: 'Gathered above and below, set in or worn detached.',
  group: 'Sleeves and cuffs',
  places: { armhole: ARMHOLE },
  cloths: { main: { label: 'Cloth' } },
  fields: {
    held: HELD_BY,
    length: asked('Length', '11', '280', 'From its top down the outside of the arm, band or cuff included.'),
    arm: asked('Arm where it ends', '11 1/2', '290', 'Round it, on the body.'),
    fullness: timesField(
      'Fullness of the top',
      '1.5',
      'How many times as long its top is as the armhole, or the arm.',
    ),
    ends: {
      kind: 'choice',
      label: 'Lower edge',
      options: [
        { value: 'cuff', label: 'left open, for a cuff or a band' },
        { value: 'band', label: 'a band, closed in a ring' },
        { value: 'elastic', label: 'elastic in a casing' },
      ],
      start: 'cuff',
    },
    wide: usually('Upper arm, before fullness', '14', '360', 'Round a plain sleeve there.'),
    lowerFullness: {
      ...timesField('Fullness of the lower edge', '1.5', 'How many times as long it is as the band or cuff.'),
      usual: true,
    },
    puff: usually('Extra length for the puff', '2', '50', 'It falls over the band or cuff.'),
    bandDepth: usually('Depth of the band', '1', '25', 'Finished; it is cut twice as deep and folded.'),
    bandEase: usually('Ease of the band', '1', '25'),
    hand: usually('Hand', '8 1/2', '215', 'Round it; a closed band has to pass it.'),
    setting: SETTING,
    ...SLEEVE_USUAL,
  },
  sketch: [
    curve('faint', 4, 40, 14, 28, 22, 20, 30, 14),
    curve('shape', 30, 14, 44, -4, 96, 8, 92, 54),
    curve('shape', 92, 54, 91, 64, 86, 68, 80, 70),
    curve('shape', 40, 50, 34, 66, 42, 72, 50, 74),
    line('shape', 50, 74, 80, 70, 81, 80, 51, 84, 50, 74),
    curve('stitch', 30, 14, 26, 28, 30, 42, 40, 50),
    curve('fullness', 33, 20, 44, 18, 50, 22, 56, 28),
    curve('fullness', 32, 28, 42, 28, 48, 32, 54, 38),
    curve('fullness', 34, 36, 42, 38, 46, 42, 50, 48),
    curve('fullness', 56, 73, 54, 66, 56, 60, 56, 54),
    curve('fullness', 66, 72, 66, 64, 68, 58, 70, 52),
    curve('fullness', 75, 71, 78, 64, 82, 58, 84, 50),
    { pen: 'faint', points: wave([40, 52], [39, 96], 1, 1) },
  ],
  propose: ({ measures, at }) => {
    const arm = measures['upper-arm'];
    const wide = sleeveWide(arm, at.armhole?.length);
    return {
      ...(at.armhole && { held: { value: 'armhole', because: 'An armhole is chosen', source: practice } }),
      ...(arm && { arm: { value: arm, because: 'It ends at the upper arm', source: practice } }),
      ...(measures.hand && { hand: { value: measures.hand, because: 'As measured', source: practice } }),
      ...(wide && {
        wide: {
          value: wide,
          because: 'The upper arm and 2 in, as far as the armhole takes it',
          source: practice,
        },
      }),
    };
  },
  blame: { wrist: 'arm', ease: 'bandEase', depth: 'bandDepth', sleeve: 'lowerFullness', closes: 'ends' },
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const wrong =
      sizesFit(
        values,
        ['length', 'arm', 'wide', 'bandDepth', 'hand', 'elastic', 'cuffDepth', 'allowance'],
        ['puff', 'bandEase', 'opening'],
      ) ??
      fullnessFits(values.fullness) ??
      fullnessFits(values.lowerFullness, 'lowerFullness');
    if (wrong) return bad(wrong);
    const {
      held,
      length,
      arm,
      fullness,
      ends,
      wide,
      lowerFullness,
      puff,
      bandDepth,
      bandEase,
      hand,
      allowance,
    } = values;
    const put = setInto(held, at.armhole);
    if (!put.ok) return put;
    const armhole = put.value;
    const round = add(arm, bandEase);
    const top = times(wide, fullness);
    const cap = armhole && capFor(garment, armhole, { wide: top, ease: zero, fullness });
    if (cap && !cap.ok) return cap;
    const lower = times(round, lowerFullness);
    const below = ends === 'band' ? bandDepth : ends === 'cuff' ? values.cuffDepth : zero;
    const under = underArm(nm(length + puff - below), cap?.value);
    if (!under.ok) return under;
    const parts = sleeveParts({
      ...values,
      id,
      name,
      garment,
      pieces: ends === 'band' ? [id(), id('band')] : [id()],
      top: armhole ? 'cap' : 'upper',
      armhole,
      hem: zero,
      body: { above: onArm(wide), below: arm },
      gathered: true,
    });
    const sleeve = pieceOf({
      id: id(),
      name,
      cloth: cloth.main.id,
      cut: 'pair',
      allowance,
      marks: shoulderMark(cap?.value),
      outline: sleeveOutline(top, lower, under.value, cap?.value),
    });
    const gathers = armhole && fullness > 1 ? [gatherOf({ id, name, marker }, 'cap', fullness)] : [];
    if (ends !== 'band') return good({ ...parts, pieces: [sleeve], works: [...gathers, ...parts.works] });
    const ring = cuff({
      wrist: arm,
      ease: bandEase,
      depth: bandDepth,
      allowance,
      closes: { by: 'ring', hand },
      pieces: 1,
      sleeve: lower,
    });
    if (!ring.ok) return ring;
    const banded = sleeveBand({
      id,
      name,
      round: ring.value.round,
      deep: bandDepth,
      cloth: cloth.main.id,
      allowance,
    });
    return good({
      ...parts,
      pieces: [sleeve, banded.piece],
      works: [
        ...gathers,
        gatherOf({ id, name, marker }, 'lower', lowerFullness),
        ...parts.works,
        ...banded.works,
      ],
      joins: [banded.join, ...parts.joins],
      assumed: ['The band lies double: it is folded in half and sewn down inside.'],
    });
  },
});
