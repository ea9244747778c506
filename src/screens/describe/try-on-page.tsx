import type { Gate } from '../../outfit/outfit.ts';
import type { Asks } from './asks.ts';
import type { PartProps } from './describe.tsx';
import { NotThere } from './head.tsx';
import { TRY_ON_ASKS } from './part-asks.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame, toGarment } from './part-frame.tsx';
import { usePart } from './use-part.ts';

/** A try-on placed in the order. */
export function TryOnPage({ session, garment: id, part }: PartProps) {
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  const gate = garment?.gates.find((one) => one.id === part);
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  if (part !== undefined && !gate)
    return <NotThere session={session} what="This try-on is not there any more" />;
  return <TryOnForm {...{ session, outfit, garment, gate }} />;
}

function TryOnForm({
  session,
  outfit,
  garment,
  gate,
}: Pick<Parameters<typeof PartFrame>[0], 'session' | 'outfit' | 'garment'> & {
  readonly gate: Gate | undefined;
}) {
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
