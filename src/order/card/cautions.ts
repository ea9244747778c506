import { RIPPER } from '../rules/reworked.ts';
import type { Station } from '../step.ts';
import type { CardSubject } from './subject.ts';

/** The usual care at each station; the makers of the machine and the material have the last word. */
const USUAL: Readonly<Partial<Record<Station, string>>> = {
  iron: 'Iron and steam burn: keep fingers and face clear, stand it on its heel, unplug it after. The leaflet of the iron and the care label come first.',
  machine:
    'Keep fingers clear of the needle, and take pins out before they reach it. The book of your machine comes first.',
  overlocker: 'The knives cut: keep fingers and pins away from them. The book of your machine comes first.',
  cut: 'Blades: cut away from yourself, never over pins, and close or cover the blade when you put it down.',
  pin: 'Never hold pins in the mouth.',
};

/** What can hurt in this step, with the usual care. */
export function cautionsOf(on: CardSubject): readonly string[] {
  const { step, work, cloth } = on;
  const found: string[] = [];
  if (step.action === 'slit') {
    found.push(
      'Put a pin across each end of the hole and cut from both ends to the middle. Cut away from the hand that holds the cloth.',
    );
  } else if (step.setUp.tool === RIPPER) {
    found.push(
      'A seam ripper is sharp: cut stitches one by one, point away from your hand and face, never pull at the cloth, and cover the point when you put it down.',
    );
  } else {
    const usual = USUAL[step.setUp.station];
    if (usual) found.push(usual);
  }
  if (work?.kind === 'interfacing' && work.fuse && cloth && work.fuse.degrees > cloth.iron) {
    found.push(
      cloth.iron === 0
        ? `The label of the ${cloth.name.toLowerCase()} allows no iron, so this material cannot be fused to it. Choose one that is sewn in.`
        : `The fusible wants ${work.fuse.degrees} °C, but the ${cloth.name.toLowerCase()} bears ${cloth.iron} °C. Choose another, or one that is sewn in.`,
    );
  }
  if (step.setUp.station === 'iron' && cloth?.iron === 0 && work?.kind !== 'interfacing') {
    found.push('The label allows no iron: finger-press instead.');
  }
  if (step.setUp.station === 'machine' && beaded(on)) {
    found.push(
      'Beads lie near this seam: a needle that hits one can break and fly. Take beads out of the seam line, sew slowly, and mind your eyes.',
    );
  }
  return found;
}

/** True where a piece in hand has been beaded. */
const beaded = (on: CardSubject): boolean =>
  on.garment.works.some(
    (work) => work.kind === 'lattice-beads' && on.step.pieces.includes(work.on) && work.id !== on.step.of.id,
  );
