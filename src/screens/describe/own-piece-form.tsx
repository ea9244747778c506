import { type Field, startOf } from '../../fields/fields.ts';
import { good } from '../../length/result.ts';
import { FOLD } from '../../outfit/chains.ts';
import { OWN_SHAPES, type OwnShape, ownOutline } from '../../outfit/changing/own-piece.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { go } from '../route.ts';
import { Group, KindOptions } from './asked-group.tsx';
import type { Asks } from './asks.ts';
import type { Written } from './drafts.ts';
import { PIECE_ASKS } from './part-asks.ts';
import type { PartAt } from './part-at.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame } from './part-frame.tsx';
import { PiecePicture } from './piece-picture.tsx';
import { usePart } from './use-part.ts';

const shapes = Object.keys(OWN_SHAPES) as readonly OwnShape[];
const OPTIONS = shapes.map((value) => ({
  value,
  label: OWN_SHAPES[value].name,
  tells: OWN_SHAPES[value].tells,
}));
const shapeOf = (written: Written): OwnShape =>
  shapes.find((shape) => shape === written.shape) ?? 'rectangle';

const FIGURES = new Set(shapes.flatMap((shape) => Object.keys(OWN_SHAPES[shape].fields)));
const isFigure = (field: string): boolean => FIGURES.has(field);

const { cloth, cut, allowance, ...MORE } = PIECE_ASKS;

/** With the usual allowance, which is named where it is folded away. */
const ALLOWANCE: Asks = allowance?.kind === 'length' ? { allowance: { ...allowance, usual: true } } : {};

/** What is asked of a new piece besides the figures of its shape; on the fold it is cut where its shape has one. */
const asksOf = (written: Written, cloths: number): Asks => ({
  name: { kind: 'words', label: 'Name', start: 'Own piece' },
  // Of one cloth there is nothing to choose.
  ...(cloth?.kind === 'which' ? { cloth: cloths > 1 ? cloth : { ...cloth, usual: true } } : {}),
  ...(cut?.kind === 'choice' && shapeOf(written) !== 'half'
    ? { cut: { ...cut, options: cut.options.filter(({ value }) => value !== 'fold') } }
    : {}),
  ...ALLOWANCE,
  ...MORE,
});

/** A piece of the maker's own, drawn from a plain shape or from corners that she types. */
export function OwnPieceForm({ session, outfit, garment }: Omit<PartAt<'pieces'>, 'part'>) {
  const asks = (written: Written): Asks => asksOf(written, outfit.cloths.length);
  const form = usePart({
    session,
    outfit,
    garment,
    list: 'pieces',
    kind: 'piece',
    base: undefined,
    asks,
    stands: isFigure,
    usual: () => ({ marks: [] }),
    finish: (written) => {
      const drawn = ownOutline(shapeOf(written), written, outfit.units);
      if (!drawn.ok) return drawn;
      const folded = drawn.value.edges.some(({ name }) => name === FOLD);
      return good({ ...(folded ? { cut: 'fold' } : {}), outline: drawn.value });
    },
  });
  const { written, here } = form.form;
  const shape = shapeOf(written);
  return (
    <PartFrame
      {...{ session, outfit, garment, form }}
      kind="piece"
      title="A piece of your own"
      part={undefined}
      word="Put it in"
      onSave={() =>
        form.save(`put in ${form.part?.name ?? 'the piece'}`, (id) =>
          go({ screen: 'outfit', outfit: session.id, at: ['garment', garment.id, 'piece', id] }),
        )
      }
    >
      <Group
        name="shape"
        ask={{
          kind: 'kind',
          label: 'What shape?',
          means: 'Drawn along its seam line, as it is when it is sewn.',
          options: [],
          start: '',
        }}
        fault={undefined}
      >
        <KindOptions
          name="shape"
          options={OPTIONS}
          chosen={shape}
          onChoose={(value) => form.form.write('shape', value)}
        />
      </Group>
      {Object.entries<Field>(OWN_SHAPES[shape].fields).map(([name, field]) => (
        <FieldBox
          key={`${shape} ${name}`}
          name={name}
          field={field}
          text={written[name] ?? startOf(field, outfit.units)}
          fault={form.form.faults.get(name)}
          marking={here.marking}
          onText={(text) => form.form.write(name, text)}
        />
      ))}
      <PartFields asks={asks(written)} form={form.form} />
      {form.part && (
        <div class="field-wide">
          <PiecePicture piece={form.part} garment={form.garment} outfit={outfit} marking={here.marking} />
        </div>
      )}
    </PartFrame>
  );
}
