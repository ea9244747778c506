import type { Wearer } from '../../outfit/outfit.ts';
import { FieldBox } from '../reckoner/field.tsx';

/** Whom a garment is for; nothing is shown while the outfit knows nobody. */
export function WearerBox(props: {
  readonly wearers: readonly Wearer[];
  readonly wearer: string;
  readonly onWearer: (id: string) => void;
}) {
  const { wearers, wearer, onWearer } = props;
  if (wearers.length === 0) return null;
  return (
    <FieldBox
      name="wearer"
      field={{
        kind: 'choice',
        label: 'Who wears it',
        options: [
          ...wearers.map(({ id, name }) => ({ value: id, label: name })),
          { value: '', label: 'nobody in particular' },
        ],
        start: '',
      }}
      text={wearer}
      fault={undefined}
      marking={{ unit: 'mm', step: 1 }}
      onText={onWearer}
    />
  );
}
