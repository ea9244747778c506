import { writeSource } from '../../cloth/source.ts';
import type { Cause, Entry } from '../../fitting/entry.ts';
import { Sign } from '../../ui/signs.tsx';
import { begun } from '../describe/words.ts';

/** What tests have shown of the causes behind something seen. */
export interface Tested {
  /** Id of the one that it is; empty where none was shown. */
  readonly sure: string;
  readonly out: readonly string[];
}

/** The causes that may be behind it, likeliest first, each with the test that tells it from the others. */
export function Causes(props: {
  readonly entry: Entry;
  readonly tested: Tested;
  readonly onTested: (tested: Tested) => void;
}) {
  const { entry, tested, onTested } = props;
  return (
    <section data-part="causes">
      <h2>
        {entry.causes.length === 1 ? 'What may be behind it' : 'What may be behind it, likeliest first'}
      </h2>
      <p class="quiet">Tests can wait. What is not tested is weighed when the cure is looked for.</p>
      <ol class="causes">
        {entry.causes.map((cause) => (
          <OneCause key={cause.id} cause={cause} tested={tested} onTested={onTested} />
        ))}
      </ol>
    </section>
  );
}

function OneCause(props: {
  readonly cause: Cause;
  readonly tested: Tested;
  readonly onTested: (tested: Tested) => void;
}) {
  const { cause, tested, onTested } = props;
  const { id } = cause;
  const isIt = tested.sure === id;
  const isOut = tested.out.includes(id);
  const without = tested.out.filter((one) => one !== id);
  return (
    <li class="cause" data-cause={id} data-tested={isIt ? 'sure' : isOut ? 'out' : 'not'}>
      <h3>{begun(cause.is)}</h3>
      <p>{cause.test}</p>
      <div class="choice">
        <button
          type="button"
          class="plain"
          aria-pressed={isIt}
          onClick={() => onTested(isIt ? { ...tested, sure: '' } : { sure: id, out: without })}
        >
          {isIt && <Sign name="done" />}
          It is this<span class="unseen">: {cause.is}</span>
        </button>
        <button
          type="button"
          class="plain"
          aria-pressed={isOut}
          onClick={() =>
            onTested({ sure: isIt ? '' : tested.sure, out: isOut ? without : [...tested.out, id] })
          }
        >
          {isOut && <Sign name="done" />}
          Not this<span class="unseen">: {cause.is}</span>
        </button>
      </div>
      <details>
        <summary>
          What would be changed<span class="unseen"> if {cause.is}</span>
        </summary>
        <p>{cause.change}</p>
        <p>{cause.measured}</p>
        {cause.limits !== undefined && <p>{cause.limits}</p>}
        <cite>{writeSource(cause.source)}</cite>
      </details>
    </li>
  );
}
