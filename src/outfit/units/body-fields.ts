import { asked, perhaps, usually } from './length-field.ts';

/** What is asked of half a front or back. */
export const HALF_BODY = {
  chest: asked(
    'Half width at the chest',
    '10',
    '255',
    'On the pattern, from the centre to the side seam, level with the bottom of the armhole.',
  ),
  neckWide: asked(
    'Half width of the neck',
    '2 7/8',
    '73',
    'On the pattern, from the centre to the shoulder.',
  ),
  shoulder: asked('Shoulder', '5', '127', 'Along its seam, from the neck to the armhole.'),
  armhole: asked(
    'Depth of the armhole',
    '9 1/2',
    '240',
    'From the neck end of the shoulder straight down to the chest line.',
  ),
  side: asked('Side seam', '16', '405', 'Along the seam, from the armhole to the hem.'),
} as const;

/** What has a usual answer. */
export const HALF_BODY_USUAL = {
  slope: usually('Drop of the shoulder', '1 3/4', '45', 'How much lower its outer end lies.'),
  across: perhaps('Half width at the armhole', 'From the centre to the narrowest place of the armhole.'),
  waist: perhaps('Half width at the waist', 'Left empty, the side runs straight.'),
  hem: perhaps('Half width at the hem', 'Left empty, as at the chest.'),
  below: usually('Length below the waist', '7', '180', 'How much of the side seam lies below the waist.'),
} as const;

/** The allowance of seams. */
export const ALLOWANCE = { allowance: usually('Seam allowance', '1/2', '15') } as const;

/** How the front is. */
export const FRONT_CENTRE = {
  opens: {
    kind: 'choice',
    label: 'Centre front',
    options: [
      { value: 'opening', label: 'opens all the way' },
      { value: 'fold', label: 'closed, cut on the fold' },
    ],
    start: 'opening',
  },
} as const;

/** How far an open front goes beyond its middle. */
export const LAP = {
  lap: usually('Lap', '1/2', '13', 'How far an open front goes past the centre line, to lap over.'),
} as const;
