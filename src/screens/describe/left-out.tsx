import type { Session } from '../session.ts';

/** Changes made on two devices, or in two windows, of which only the earlier could be made: named until they are seen. */
export function LeftOut({ session }: { readonly session: Session }) {
  const { unfit } = session.progress.value;
  if (unfit.length === 0) return null;
  return (
    <p class="notice" role="status" data-part="left-out">
      <span>
        The same thing was changed in two places. The earlier change counts; left out:{' '}
        <b>{unfit.map(({ say }) => say).join(', ')}</b>. Make it again where it is still wanted.
      </span>
      <button
        type="button"
        class="plain"
        onClick={() => session.act(...unfit.map(({ deed }) => ({ kind: 'undone' as const, deed })))}
      >
        I have seen this
      </button>
    </p>
  );
}
