import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';

/** Leads to the body drawing of the garment in hand, where what does not fit is noted. */
export function DoesNotFit({ session }: { readonly session: Session }) {
  const garment = session.running.value?.steps.get(session.step.value ?? '')?.garment;
  return (
    <a
      class="plain does-not-fit"
      data-part="does-not-fit"
      href={writeHash({ screen: 'try', outfit: session.id, at: garment === undefined ? [] : [garment] })}
    >
      Something does not fit
    </a>
  );
}
