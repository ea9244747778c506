import type { Work, WorkKind } from '../../outfit/outfit.ts';
import { KindOptions } from './asked-group.tsx';
import type { Asks } from './asks.ts';
import type { PartProps } from './describe.tsx';
import type { Written } from './drafts.ts';
import { focusOn } from './focus-on.ts';
import { NotThere } from './head.tsx';
import { type PartAt, partAt } from './part-at.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame, toGarment } from './part-frame.tsx';
import { usePart } from './use-part.ts';
import { WORK_KINDS } from './work-kinds.ts';

/** What a maker says in her own words does for anything, so it stands first. */
const kinds = (Object.keys(WORK_KINDS) as WorkKind[]).sort(
  (one, other) => Number(other === 'own') - Number(one === 'own'),
);
const OPTIONS = kinds.map((value) => ({
  value,
  label: WORK_KINDS[value].word,
  tells: WORK_KINDS[value].tells,
}));

/** The kind of a work in hand; undefined until the maker has chosen one. */
const kindOf = (work: Work | undefined, written: Written): WorkKind | undefined =>
  work?.kind ?? kinds.find((kind) => kind === written.kind);

/** A work on a piece: new, or as it is, whoever brought it. */
export function WorkPage({ session, garment, part }: PartProps) {
  const at = partAt(session, garment, 'works', part);
  return typeof at === 'string' ? <NotThere session={session} what={at} /> : <WorkForm {...at} />;
}

function WorkForm({ session, outfit, garment, part: work }: PartAt<'works'>) {
  const asksOf = (written: Written): Asks => {
    const kind = kindOf(work, written);
    if (!kind) return {};
    return {
      name: { kind: 'words', label: 'Name', start: kind === 'own' ? 'Own work' : WORK_KINDS[kind].word },
      ...WORK_KINDS[kind].asks,
    };
  };
  const form = usePart({
    session,
    outfit,
    garment,
    list: 'works',
    kind: 'work',
    base: work,
    asks: asksOf,
    usual: (written) => ({ kind: kindOf(work, written) }),
  });
  const { written } = form.form;
  const kind = kindOf(work, written);
  const named = form.part?.name ?? 'the work';
  return (
    <PartFrame
      {...{ session, outfit, garment, form }}
      kind="work"
      title={work?.name ?? 'A work on a piece'}
      part={work}
      word={work ? 'Keep the changes' : kind && 'Put it on'}
      onSave={() => form.save(`${work ? 'changed' : 'put on'} ${named}`, () => toGarment(session, garment))}
      above={
        kind && (
          <p data-part="kind-of-work">
            <b>{WORK_KINDS[kind].word}.</b> {WORK_KINDS[kind].tells}
          </p>
        )
      }
    >
      {!work && (
        <details key={kind ?? ''} class="field-wide kind-choice" open={kind === undefined}>
          <summary>{kind ? 'Another kind of work' : 'What is done?'}</summary>
          <div class="field-box">
            <KindOptions
              name="kind"
              options={OPTIONS}
              chosen={kind ?? ''}
              onChoose={(value) => {
                form.form.write('kind', value);
                focusOn('.kind-choice summary');
              }}
            />
          </div>
        </details>
      )}
      {kind && <PartFields asks={asksOf(written)} form={form.form} />}
    </PartFrame>
  );
}
