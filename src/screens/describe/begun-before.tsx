import { readEdge } from '../../outfit/chains.ts';
import type { Garment } from '../../outfit/outfit.ts';
import { saidEdge } from '../../outfit/units/place.ts';
import { type FormDraft, keepDraft, recallDraft, useDraft, type Written } from './drafts.ts';
import { readRows } from './stands.ts';
import { begun } from './words.ts';

/** What a touched edge or piece writes by itself: no loss where nothing else was written. */
const TOUCHED = ['this', 'edge', 'along', 'from', 'on'];

const asideOf = (key: string): string => `${key}/before`;

/** Has the maker put anything of her own into it? */
const isHers = (written: Written): boolean =>
  Object.entries(written).some(
    ([name, text]) => text.trim() !== '' && (!TOUCHED.includes(name) || text.includes(' ')),
  );

/** Begins a new part from what was touched. One that was half written is put aside, and its page offers it again. */
export function beginAnew(key: string, entries: Written): void {
  const old = recallDraft(key);
  // The same edge touched again: she goes on with what she had.
  if (Object.entries(entries).every(([name, text]) => old[name] === text)) return;
  if (isHers(old)) {
    const aside = readRows(recallDraft(asideOf(key)).drafts ?? '');
    keepDraft(asideOf(key), { drafts: JSON.stringify([...aside, old]) });
  }
  keepDraft(key, entries);
}

/** A part that was begun before this one. */
export interface BegunBefore {
  readonly written: Written;
  /** Goes on with it; what stands in the form now is put aside in its stead. */
  readonly take: () => void;
}

/** The part that was put aside last under a form's address; undefined where there is none. */
export function useBegunBefore(key: string, draft: FormDraft): BegunBefore | undefined {
  const aside = useDraft(asideOf(key));
  const all = readRows(aside.written.value.drafts ?? '');
  const written = all.at(-1);
  return (
    written && {
      written,
      take() {
        const now = draft.written.peek();
        aside.write('drafts', JSON.stringify([...(isHers(now) ? [now] : []), ...all.slice(0, -1)]));
        draft.become(written);
      },
    }
  );
}

/** Which one it is, in a few words: its name or kind, and the edge it begins at. */
function words({ name, kind, this: run, edge, along }: Written, garment: Garment): string {
  const [ref] = (run ?? edge ?? along ?? '').split(' ');
  const said = [name ?? (kind && begun(kind.replaceAll('-', ' '))), ref && saidEdge(garment, readEdge(ref))];
  return said.filter(Boolean).join(': ');
}

/** Offers a part that was left half written when another was begun. */
export function OfferBefore(props: {
  readonly before: BegunBefore;
  readonly garment: Garment;
  readonly onTaken: () => void;
}) {
  const { before, garment, onTaken } = props;
  const which = words(before.written, garment);
  return (
    <div class="notice" data-part="begun-before">
      <span>Another one was begun here before and is kept{which && `. ${which}`}.</span>
      <button
        type="button"
        class="plain"
        onClick={() => {
          before.take();
          onTaken();
        }}
      >
        Go on with that one
      </button>
    </div>
  );
}
