import type { Session } from '../session.ts';

/**
 * Figures that stand on other cards than the open one: on which, and a way to take them off. Where a change of the
 * description has taken the card out of the order, it says so, for there they would never be seen again.
 */
export function PutElsewhere({ session }: { readonly session: Session }) {
  const here = session.step.value;
  const others = session.progress.value.reckoned.filter(({ step }) => step !== here);
  const running = session.running.value;
  if (others.length === 0 || !running) return null;
  return (
    <section data-part="put-elsewhere">
      <h3>Figures on other cards</h3>
      <ul class="reasons">
        {others.map(({ deed, title, step, figures }) => (
          <li key={deed}>
            <b>{title}</b>
            <p>{running.steps.get(step)?.say ?? 'Its card is no longer in the order.'}</p>
            <p class="quiet">{figures.map(({ name, figure }) => `${name} ${figure}`).join('; ')}</p>
            <button type="button" class="plain" onClick={() => session.act({ kind: 'undone', deed })}>
              Take off<span class="unseen"> {title}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
