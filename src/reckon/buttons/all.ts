import type { Reckoning } from '../reckoning.ts';
import { buttonhole } from './buttonhole.ts';
import { buttonsFront } from './buttons-front.ts';
import { coveredButton } from './covered-button.ts';
import { ribbonHoles } from './ribbon-holes.ts';

/** The reckonings under Buttons and holes, in the order in which they stand. */
export const BUTTONS: readonly Reckoning[] = [buttonsFront, buttonhole, coveredButton, ribbonHoles];
