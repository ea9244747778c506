import type { Unit } from '../../outfit/units/unit.ts';
import { SketchPicture } from './sketch-picture.tsx';
import { begun } from './words.ts';

/** A ready-made part to choose, by its drawing and its name; what it lacks is said, and its page is open all the same. */
export function UnitLink(props: {
  readonly unit: Unit;
  readonly href: string;
  readonly missing?: readonly string[];
}) {
  const { unit, href, missing = [] } = props;
  return (
    <a class="unit-link" data-unit={unit.id} data-fits={missing.length === 0 ? 'yes' : undefined} href={href}>
      <SketchPicture sketch={unit.sketch} />
      <span class="unit-words">
        <b>{unit.name}</b>
        <span class="tells">{unit.tells}</span>
        {missing.length > 0 && <span class="needs">{begun(`needs ${missing.join(' and ')}`)}</span>}
      </span>
    </a>
  );
}
