import { writeProblem } from '../../outfit/problem.ts';
import type { Wrong } from '../../outfit/reading-file.ts';
import { readBackup } from '../../store/backup.ts';
import { inMegabytes } from '../../store/gzip.ts';
import { begin, ledger, rooms } from '../workroom.ts';

/** What came of bringing a file in: the outfit to go to, or why not. */
export type BroughtIn =
  | {
      readonly ok: true;
      readonly outfit: string;
      readonly say: string;
      /** The outfit is here already and the file describes it otherwise: takes what the file says. */
      readonly take?: () => Promise<BroughtIn>;
      /** Why the outfit could not be sewn in any order as it is described. */
      readonly ring?: string;
      /** What is asked about it now stands in its description. */
      readonly asked?: boolean;
    }
  | { readonly ok: false; readonly say: string; readonly wrong?: readonly Wrong[] };

/** Largest description that is read, bytes. Those shipped with the app have under 40 000. */
const MOST_BYTES = 2_000_000;

/** Said of a file that is something else. */
export const OTHER_KIND =
  'This is not a Slipbaste file. Choose a copy that was saved here, or an outfit described by hand (JSON).';

/** Why a file was not brought in. */
export const refused = (say: string): BroughtIn => ({ ok: false, say });

/** True for a file that begins as gzip does (RFC 1952): only a saved copy does. */
async function isPacked(file: Blob): Promise<boolean> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return first === 0x1f && second === 0x8b;
}

/** How a saved copy begins that was unpacked by hand. */
const UNPACKED = /^\s*\{\s*"format"\s*:\s*"slipbaste-ledger"/;
/** How a description begins: with a bracket, or with a comment. */
const BEGINS = /^\s*[{/]/;

async function mergeCopy(file: Blob): Promise<BroughtIn> {
  const backup = await readBackup(file);
  if (!backup.ok) return refused(backup.error);
  const { outfit, deeds } = backup.value;
  const open = await ledger();
  const merged = await open.merge(deeds);
  const say =
    merged.conflicts.length > 0
      ? `${merged.conflicts.length} deeds differ from those already here; the ones here were kept.`
      : `${merged.added} deeds brought in, ${merged.already} were here already.`;
  const { unfit } = await open.load(outfit);
  return { ok: true, outfit, say: merged.added > 0 ? `${say}${leftOut(unfit.map((one) => one.say))}` : say };
}

/** Names the changes that two devices made to the same thing, of which only the earlier one could be made. */
const leftOut = (says: readonly string[]): string =>
  says.length === 0
    ? ''
    : ` On both devices the same thing was changed. The earlier change counts; left out: ${says.slice(0, 5).join(', ')}${says.length > 5 ? ` and ${says.length - 5} more` : ''}. Make it again where it is still wanted.`;

/** Brings in a saved copy with its ledger, or a description that somebody wrote by hand. */
export async function bringIn(file: Blob): Promise<BroughtIn> {
  if (file.size === 0) return refused('The file is empty. Choose another copy of it.');
  if (await isPacked(file)) return mergeCopy(file);
  const head = await file.slice(0, 10_000).text();
  if (UNPACKED.test(head)) return mergeCopy(file);
  if (!BEGINS.test(head)) return refused(OTHER_KIND);
  if (file.size > MOST_BYTES) {
    const [found, most] = [inMegabytes(file.size), inMegabytes(MOST_BYTES)];
    return refused(`The file is too large for a description: ${found}, and ${most} would be the most.`);
  }
  const { describedBy } = await import('./described.ts');
  return describedBy(await file.text());
}

/** Begins an outfit from its description; refused with every problem in it. */
export async function beginFrom(raw: unknown): Promise<BroughtIn> {
  const read = (await rooms()).readOutfit(raw);
  if (!read.ok) return { ok: false, say: read.error.map(writeProblem).join('\n') };
  await begin(read.value.id, raw);
  return { ok: true, outfit: read.value.id, say: '' };
}
