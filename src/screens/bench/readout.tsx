import type { Card } from '../../order/card-types.ts';
import { now } from '../../ui/clock.ts';
import type { markingFor } from '../choices.ts';
import type { Session } from '../session.ts';
import { Count } from './count.tsx';
import { Marks } from './marks.tsx';
import { Ticks } from './ticks.tsx';
import { Timers } from './timers.tsx';

/** What the open step needs in the middle of its card: marks, a count, ticks or timers. */
export function ReadoutOf(props: {
  readonly card: Card;
  readonly session: Session;
  readonly marking: ReturnType<typeof markingFor>;
}) {
  const { card, session, marking } = props;
  const { step, readout } = card;
  const { items, timers } = session.stepProgress.value;
  const shared = { step, act: session.act };
  switch (readout.kind) {
    case 'none':
      return null;
    case 'ticks':
      return <Ticks {...shared} readout={readout} items={items} />;
    case 'marks':
      return <Marks readout={readout} items={items} marking={marking} />;
    case 'count':
      return (
        <Count
          {...shared}
          readout={readout}
          progress={session.stepProgress.value}
          inFlight={session.inFlight.value > 0}
        />
      );
    case 'timers':
      return <Timers {...shared} readout={readout} timers={timers} now={now.value} />;
  }
}
