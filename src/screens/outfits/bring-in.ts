import { writeProblem } from '../../outfit/problem.ts';
import { readBackup } from '../../store/backup.ts';
import { begin, ledger, rooms } from '../workroom.ts';

/** What came of bringing a file in: the outfit to go to, or why not. */
export type BroughtIn =
  | { readonly ok: true; readonly outfit: string; readonly say: string }
  | { readonly ok: false; readonly say: string };

async function asDescription(file: Blob): Promise<unknown> {
  try {
    return JSON.parse(await file.text());
  } catch {
    return undefined;
  }
}

const isDescription = (raw: unknown): boolean => typeof raw === 'object' && raw !== null && 'garments' in raw;

const OTHER_KIND =
  'This is not a Slipbaste file. Choose a copy that was saved here, or an outfit described by hand (JSON).';

/** True for a file that begins as gzip (RFC 1952) or as a JSON object does: perhaps ours, whole or not. */
async function mayBeOurs(file: Blob): Promise<boolean> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return (first === 0x1f && second === 0x8b) || first === 0x7b;
}

/** Brings in a saved copy with its ledger, or a description that somebody wrote by hand. */
export async function bringIn(file: Blob): Promise<BroughtIn> {
  const raw = await asDescription(file);
  if (isDescription(raw)) return beginFrom(raw);
  if (file.size === 0) return { ok: false, say: 'The file is empty. Choose another copy of it.' };
  if (raw === undefined && !(await mayBeOurs(file))) return { ok: false, say: OTHER_KIND };
  const backup = await readBackup(file);
  if (!backup.ok) return { ok: false, say: backup.error };
  const merged = await (await ledger()).merge(backup.value.deeds);
  const say =
    merged.conflicts.length > 0
      ? `${merged.conflicts.length} deeds differ from those already here; the ones here were kept.`
      : `${merged.added} deeds brought in, ${merged.already} were here already.`;
  return { ok: true, outfit: backup.value.outfit, say };
}

/** Begins an outfit from its description; refused with every problem in it. */
export async function beginFrom(raw: unknown): Promise<BroughtIn> {
  const read = (await rooms()).readOutfit(raw);
  if (!read.ok) return { ok: false, say: read.error.map(writeProblem).join('\n') };
  await begin(read.value.id, raw);
  return { ok: true, outfit: read.value.id, say: '' };
}
