import { mm } from '../../length/length.ts';

/** How a cloth stretches, as it would be gauged, from what is written of it in percent. */
export const gaugeOf = ({ across, along }: { readonly across: number; readonly along: number }) => ({
  round: { rest: mm(100), stretched: mm(100 + across) },
  along: { rest: mm(100), stretched: mm(100 + along) },
});
