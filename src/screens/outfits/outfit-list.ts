import { signal } from '@preact/signals';
import type { Outfit } from '../../outfit/outfit.ts';
import { writeBackup } from '../../store/backup.ts';
import type { Ledger } from '../../store/ledger.ts';
import type { OutfitEntry } from '../../store/ledger-schema.ts';
import { recall } from '../../ui/safe-storage.ts';
import { rooms } from '../workroom.ts';

/** One line of the list of outfits. */
export interface Listed {
  readonly id: string;
  readonly name: string;
  /** Missing where the description could not be read. */
  readonly outfit: Outfit | undefined;
  readonly done: number;
  /** Steps in all; 0 where the order could not be derived. */
  readonly steps: number;
  readonly deeds: number;
  readonly last: number;
  /** When a copy was last saved, and how many deeds it held. */
  readonly saved: { readonly at: number; readonly deeds: number } | undefined;
  /** The copy, made before it is asked for, because sharing must follow the touch at once. */
  readonly copy: File | undefined;
}

/** The list as far as it has been read; undefined while the ledger opens. */
export const listed = signal<readonly Listed[] | undefined>(undefined);

/** When a copy of an outfit was last saved, as `ms:deeds`. */
export function readSaved(kept: string | undefined): Listed['saved'] {
  const [at, deeds] = (kept ?? '').split(':').map(Number);
  return at !== undefined && deeds !== undefined && at > 0 && Number.isFinite(at + deeds)
    ? { at, deeds }
    : undefined;
}

const fileName = (name: string, at: number): string => {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${plain || 'outfit'}-${new Date(at).toISOString().slice(0, 10)}.slipbaste`;
};

async function listOne(ledger: Ledger, entry: OutfitEntry): Promise<Listed> {
  const progress = await ledger.load(entry.outfit);
  const { readOutfit, runningOrder } = await rooms();
  const read = readOutfit(progress.description);
  const outfit = read.ok ? read.value : undefined;
  const order = outfit && runningOrder(outfit, progress);
  return {
    id: entry.outfit,
    name: outfit?.name ?? entry.outfit,
    outfit,
    done: progress.done.length,
    steps: order?.ok ? order.value.sequence.length : 0,
    deeds: entry.deeds,
    last: entry.last,
    saved: readSaved(recall(`saved.${entry.outfit}`)),
    copy: undefined,
  };
}

/** Reads the list, then makes the copies one by one. */
export async function readList(ledger: Ledger): Promise<void> {
  const entries = await ledger.outfits();
  const lines: Listed[] = [];
  for (const entry of entries) lines.push(await listOne(ledger, entry));
  listed.value = lines;
  for (const line of lines) {
    const blob = await writeBackup(line.id, await ledger.deeds(line.id));
    const copy = new File([blob], fileName(line.name, Date.now()), { type: 'application/gzip' });
    listed.value = (listed.value ?? lines).map((one) => (one.id === line.id ? { ...one, copy } : one));
  }
}

/** Whole days from one time to another. */
export const daysBetween = (from: number, to: number): number => Math.floor((to - from) / 86_400_000);

/** How the last copy stands, in words; `nudge` where one is due: work of more than 50 deeds or 7 days without a copy. */
export function copyWords(
  line: Pick<Listed, 'saved' | 'deeds' | 'last'>,
  now: number,
): { words: string; nudge: boolean } {
  if (!line.saved) {
    return { words: 'No copy has been saved yet.', nudge: line.deeds > 20 };
  }
  const days = daysBetween(line.saved.at, now);
  const since = line.deeds - line.saved.deeds;
  const when = days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`;
  const nudge = since > 50 || (since > 0 && days >= 7);
  return { words: `Last copy saved ${when}${since > 0 ? `, ${since} deeds ago` : ''}.`, nudge };
}

/** How long until the day, in words. `today` and `date` as `yyyy-mm-dd`. */
export function dayWords(date: string, today: string): string {
  const days = Math.round((Date.parse(date) - Date.parse(today)) / 86_400_000);
  if (!Number.isFinite(days)) return date;
  const nice = new Date(`${date}T12:00:00`).toLocaleDateString(undefined, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
  });
  if (days < 0) return nice;
  return days === 0 ? `${nice}, today` : days === 1 ? `${nice}, tomorrow` : `${nice}, in ${days} days`;
}
