import type { Marking } from '../../length/writing.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { type Unit, usualCloth } from '../../outfit/units/unit.ts';
import { FieldBox } from '../reckoner/field.tsx';

/** Which cloth a unit is cut from, where there is a choice or the one there is will not do. */
export function ClothBoxes(props: {
  readonly outfit: Outfit;
  readonly unit: Unit;
  readonly chosen: Readonly<Record<string, string>>;
  readonly faults: ReadonlyMap<string, string>;
  readonly marking: Marking;
  readonly onCloth: (name: string, cloth: string) => void;
}) {
  const { outfit, unit, chosen, faults, marking, onCloth } = props;
  return (
    <>
      {Object.entries(unit.cloths).map(([name, asked]) => {
        const fault = faults.get(`cloth.${name}`);
        if (outfit.cloths.length < 2 && fault === undefined) return null;
        const usual = usualCloth(outfit, asked)?.id ?? '';
        return (
          <FieldBox
            key={name}
            name={`cloth.${name}`}
            field={{
              kind: 'choice',
              label: asked.label,
              options: outfit.cloths.map((cloth) => ({ value: cloth.id, label: cloth.name })),
              start: usual,
            }}
            text={chosen[name] ?? usual}
            fault={fault}
            marking={marking}
            onText={(cloth) => onCloth(name, cloth)}
          />
        );
      })}
    </>
  );
}
