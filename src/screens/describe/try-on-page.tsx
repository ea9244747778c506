import type { Asks } from './asks.ts';
import type { PartProps } from './describe.tsx';
import { NotThere } from './head.tsx';
import { TRY_ON_ASKS } from './part-asks.ts';
import { type PartAt, partAt } from './part-at.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame, toGarment } from './part-frame.tsx';
import { usePart } from './use-part.ts';

/** A try-on placed in the order. */
export function TryOnPage({ session, garment, part }: PartProps) {
  const at = partAt(session, garment, 'gates', part);
  return typeof at === 'string' ? <NotThere session={session} what={at} /> : <TryOnForm {...at} />;
}

function TryOnForm({ session, outfit, garment, part: gate }: PartAt<'gates'>) {
  const asks: Asks = {
    name: { kind: 'words', label: 'Name', start: `${garment.name}, tried on` },
    ...TRY_ON_ASKS,
  };
  const form = usePart({
    session,
    outfit,
    garment,
    list: 'gates',
    kind: 'try-on',
    base: gate,
    asks: () => asks,
    usual: () => ({ after: [], tack: [] }),
  });
  return (
    <PartFrame
      {...{ session, outfit, garment, form }}
      kind="try-on"
      title={gate?.name ?? 'A try-on'}
      part={gate}
      word={gate ? 'Keep the changes' : 'Put it in'}
      onSave={() =>
        form.save(`${gate ? 'changed' : 'put in'} ${form.part?.name ?? 'the try-on'}`, () =>
          toGarment(session, garment),
        )
      }
    >
      <PartFields asks={asks} form={form.form} />
    </PartFrame>
  );
}
