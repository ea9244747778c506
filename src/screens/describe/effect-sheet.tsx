import type { ComponentChild } from 'preact';
import type { Effect, StepChanged } from '../../order/effect.ts';
import type { Step } from '../../order/step.ts';
import { writeDuration } from '../../ui/duration.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { Sign } from '../../ui/signs.tsx';
import { accept, asked, leave } from './change.ts';
import type { PageProps } from './describe.tsx';
import { so } from './words.ts';

/** More lines than this are folded to their number. */
const MOST = 6;

/** What a change would touch, shown before it is accepted. */
export function EffectSheet({ session }: PageProps) {
  const found = asked.value;
  if (!found || found.session !== session) return null;
  const { effect } = found;
  const again = effect.doneChanged.length;
  return (
    <Sheet title="Sewing has begun" onClose={leave}>
      <div class="asks" data-part="effect">
        <p>What you have done stays done; {minutesWords(effect)}</p>
        {effect.touchesDone && (
          <p class="fault" data-part="touches-done">
            <Sign name="caution" />
            <span>
              {again > 0 && `${so(again, 'step')} that you have done would be worked otherwise now. `}
              {effect.doneGone.length > 0 &&
                `${so(effect.doneGone.length, 'step')} that you have done would no longer be wanted. `}
              {again + effect.doneGone.length === 1 ? 'Its card does' : 'Their cards do'} not come back: look
              whether the cloth in your hands still serves, or has to be unpicked or cut anew.
            </span>
          </p>
        )}
        <Changed title="Done, now worked otherwise" steps={effect.doneChanged} />
        <Steps title="Done, and no longer wanted" steps={effect.doneGone} />
        <Steps title="Done before, and wanted again" steps={effect.doneBack} />
        <Steps title="New" steps={effect.added} />
        <Changed title="Not the same as before" steps={effect.changed} />
        <Steps title="No longer to be done" steps={effect.gone} />
        <div class="choice">
          <button type="button" class="main" onClick={accept}>
            Change it so
          </button>
          <button type="button" class="plain" onClick={leave}>
            Leave it as it was
          </button>
        </div>
      </div>
    </Sheet>
  );
}

function minutesWords({ minutes: { before, after } }: Effect): string {
  const more = after - before;
  if (Math.abs(more) < 1) return 'there is as much left to sew as before.';
  return `there is about ${writeDuration(Math.abs(more) * 60)} ${more > 0 ? 'more' : 'less'} left to sew.`;
}

function Folded<T>(props: {
  readonly title: string;
  readonly of: readonly T[];
  readonly line: (one: T) => ComponentChild;
}) {
  const { title, of, line } = props;
  if (of.length === 0) return null;
  const list = <ul class="listed">{of.map(line)}</ul>;
  return (
    <section>
      <h3>
        {title}: {so(of.length, 'step')}
      </h3>
      {of.length <= MOST ? (
        list
      ) : (
        <details>
          <summary>Show all {of.length}</summary>
          {list}
        </details>
      )}
    </section>
  );
}

const Steps = ({ title, steps }: { readonly title: string; readonly steps: readonly Step[] }) => (
  <Folded title={title} of={steps} line={(step) => <li key={step.id}>{step.say}</li>} />
);

const Changed = ({ title, steps }: { readonly title: string; readonly steps: readonly StepChanged[] }) => (
  <Folded
    title={title}
    of={steps}
    line={({ step, how }) => (
      <li key={step.id}>
        {step.say} <span class="quiet">{how}</span>
      </li>
    )}
  />
);
