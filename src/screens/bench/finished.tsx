import { writeProblem } from '../../outfit/problem.ts';
import type { StepProgress } from '../../store/progress-types.ts';
import { writeDuration } from '../../ui/duration.ts';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';

/** A card that lay open longer than this was left, not worked at. */
const LONGEST_S = 2 * 60 * 60;

/** Seconds at the bench: each card from opened to done, two hours at the most, and what was done before it was done again. */
export function secondsAtBench(steps: Iterable<StepProgress>): number {
  let sum = 0;
  for (const { openedAt, doneAt, tookMs = 0 } of steps) {
    sum += tookMs / 1000;
    if (openedAt !== undefined && doneAt !== undefined) {
      sum += Math.min(LONGEST_S, Math.max(0, doneAt - openedAt) / 1000);
    }
  }
  return sum;
}

/** All done: a quiet card. */
export function Finished({ session }: { readonly session: Session }) {
  const progress = session.progress.value;
  return (
    <section class="finished">
      <hr class="seam" />
      <h1>{session.outfit.value?.name} is finished</h1>
      <p>
        {progress.done.length} steps, {writeDuration(secondsAtBench(progress.steps.values()))} at the bench.
      </p>
      <p class="quiet">A card that lay open counts as two hours at the most.</p>
      <a class="main" href="#/">
        Save a copy of it from the outfits page
      </a>
      <hr class="seam" />
    </section>
  );
}

/** No card can be shown: the description is wrong somewhere, or the order runs in a ring. */
export function Stuck({ session }: { readonly session: Session }) {
  const problems = session.problems.value;
  const loop = session.loop.value;
  if (loop) {
    return (
      <section>
        <h1>The order runs in a ring</h1>
        <p class="ring">{loop.say}</p>
        <a class="main" href={`#/order/${encodeURIComponent(session.id)}`}>
          Open the running order to waive a reason
        </a>
      </section>
    );
  }
  if (problems.length > 0) {
    return (
      <section>
        <h1>The description does not hold together</h1>
        <ul>
          {problems.map((problem) => (
            <li key={problem.at + problem.wrong}>{writeProblem(problem)}</li>
          ))}
        </ul>
      </section>
    );
  }
  if (session.running.value?.sequence.length === 0) {
    return (
      <section class="finished" data-part="nothing-yet">
        <h1>Nothing to sew yet</h1>
        <p>
          Say which pieces the outfit has, and what is done to them; the order of making follows from that.
        </p>
        <a class="main" href={writeHash({ screen: 'outfit', outfit: session.id, at: [] })}>
          Go on describing it
        </a>
      </section>
    );
  }
  return <h1>No step is left to do</h1>;
}
