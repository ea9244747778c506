import type { WrittenLength } from '../length/writing.ts';
import './figure.css';

/** A length as one large figure: the fraction stacked over its bar, the unit small beside it. */
export function LengthFigure({ written, id }: { readonly written: WrittenLength; readonly id?: string }) {
  const { sign, whole, numerator, denominator, unit } = written;
  return (
    <span class="figure" data-part="figure" id={id}>
      <span class="unseen">{written.text}</span>
      <span class="figure-drawn" aria-hidden="true">
        {sign !== '' && <span class="figure-whole">{'\u2212'}</span>}
        {whole !== '' && <span class="figure-whole">{whole}</span>}
        {numerator !== '' && (
          <span class="fraction">
            <span class="fraction-top">{numerator}</span>
            <span class="fraction-bottom">{denominator}</span>
          </span>
        )}
        <span class="figure-unit">{unit}</span>
      </span>
    </span>
  );
}
