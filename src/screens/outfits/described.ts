import { effect } from '@preact/signals';
import { runningOrder } from '../../order/running.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { type NotRead, readOutfitFile } from '../../outfit/reading-file.ts';
import { changesBetween } from '../../store/changes-between.ts';
import { askWritten, noOrder } from '../describe/change.ts';
import type { Session } from '../session.ts';
import { begin, ledger, rooms, session, takeUp, writeDown } from '../workroom.ts';
import { type BroughtIn, OTHER_KIND, refused } from './bring-in.ts';

/** What undo says of it. */
const TOOK = 'took the description of the file';

/** Brings in an outfit that somebody described by hand; one that is here already is changed only when the maker says so. */
export async function describedBy(text: string): Promise<BroughtIn> {
  const read = readOutfitFile(text);
  if (!read.ok) return notRead(read.error);
  const { outfit, raw } = read.value;
  const open = await ledger();
  if ((await open.outfits()).some((entry) => entry.outfit === outfit.id)) return hereAlready(outfit, raw);
  await begin(outfit.id, raw);
  const order = runningOrder(outfit);
  // It can be mended here as well as in the file, so it is not turned away.
  return {
    ok: true,
    outfit: outfit.id,
    say: `${outfit.name} is on this device now.`,
    ...(!order.ok && { ring: noOrder(order.error, outfit) }),
  };
}

function notRead({ kind, wrong, more }: NotRead): BroughtIn {
  if (kind === 'other') return refused(OTHER_KIND);
  const all = wrong.length + more;
  const things = all === 1 ? 'one thing is' : `${all} things are`;
  const first = more > 0 ? `the first ${wrong.length} of them, which stand below,` : 'what stands below';
  const say =
    kind === 'words'
      ? 'The file cannot be read. Mend this place and bring it in again; nothing was changed here.'
      : `In this file ${things} not right yet. Mend ${first} and bring it in again; nothing was changed here.`;
  return { ok: false, say, wrong };
}

async function hereAlready(outfit: Outfit, raw: unknown): Promise<BroughtIn> {
  const { id, name } = outfit;
  const { description, done, added, waived, reworks } = await (await ledger()).load(id);
  const changes = changesBetween(description, raw);
  if (changes.length === 0)
    return { ok: true, outfit: id, say: `${name} is here already, as the file describes it.` };
  const order = runningOrder(outfit, { done, added, waived, reworks });
  if (!order.ok) {
    const read = (await rooms()).readOutfit(description);
    const sewable = read.ok && runningOrder(read.value, { done, added, waived, reworks }).ok;
    // Nobody gives an outfit that can be sewn for one that cannot.
    if (sewable)
      return refused(
        `${name} is here already and stays as it is: the file describes it so that it cannot be sewn. ${noOrder(order.error, outfit)}`,
      );
  }
  const stays = done.length === 0 ? '' : ` What was sewn, ${done.length} steps, stays done.`;
  return {
    ok: true,
    outfit: id,
    say: `${name} is here already, and the file describes it otherwise. Nothing was changed yet.${stays}`,
    take: async () => {
      if (done.length > 0) return askFirst(outfit, raw);
      // It may have been changed in another window while the question stood.
      const { description: now } = await (await ledger()).load(id);
      await writeDown(id, [{ kind: 'redescribed', say: TOOK, changes: changesBetween(now, raw) }]);
      return {
        ok: true,
        outfit: id,
        say: `${name} is now as the file describes it.`,
        ...(!order.ok && { ring: noOrder(order.error, outfit) }),
      };
    },
  };
}

/** Once sewing has begun, what the file touches is shown where every change of the description is. */
async function askFirst({ id, name }: Outfit, raw: unknown): Promise<BroughtIn> {
  await takeUp(id);
  const there = session.peek();
  if (there?.id !== id) return refused(`${name} could not be opened. Open its description and try again.`);
  await worked(there);
  askWritten(there, raw, TOOK);
  return { ok: true, outfit: id, say: '', asked: true };
}

/** Settles when the order of an outfit in work is known, or that there is none. */
const worked = (there: Session): Promise<void> =>
  new Promise((resolve) => {
    const stop = effect(() => {
      const known = there.running.value ?? there.loop.value ?? there.unkept.value;
      if (known === undefined && there.problems.value.length === 0) return;
      resolve();
      queueMicrotask(() => stop());
    });
  });
