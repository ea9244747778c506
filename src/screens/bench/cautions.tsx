import { writeSource } from '../../cloth/source.ts';
import type { Card } from '../../order/card-types.ts';
import { Sign } from '../../ui/signs.tsx';

/** Where the first clause ends: that much is read from arm's length, the rest follows smaller. */
function headAndRest(caution: string): [string, string] {
  const end = caution.search(/[,.:;]\s/);
  return end < 0 ? [caution, ''] : [caution.slice(0, end + 1), caution.slice(end + 1).trim()];
}

/** What can hurt here, with a plain sign and words. */
export function Cautions({ cautions }: { readonly cautions: readonly string[] }) {
  return (
    <>
      {cautions.map((caution) => {
        const [head, rest] = headAndRest(caution);
        return (
          <div key={caution} class="caution" data-part="caution">
            <Sign name="caution" />
            <p>
              <span class="unseen">Take care. </span>
              <b>{head}</b> {rest !== '' && <span class="caution-rest">{rest}</span>}
            </p>
          </div>
        );
      })}
    </>
  );
}

/** Advice with where it comes from, and what the maker has waived. */
export function Advice(props: { readonly advice: Card['advice']; readonly waived: readonly string[] }) {
  if (props.advice.length + props.waived.length === 0) return null;
  return (
    <ul class="advice" data-part="advice">
      {props.advice.map(({ say, source }) => (
        <li key={say}>
          {say} <cite>{writeSource(source)}</cite>
        </li>
      ))}
      {props.waived.map((waived) => (
        <li key={waived}>
          <b>You waived:</b> {waived}
        </li>
      ))}
    </ul>
  );
}
