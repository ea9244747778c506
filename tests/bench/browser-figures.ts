import { cardFor } from '../../src/order/card.ts';
import { runningOrder } from '../../src/order/running.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { writeBackup } from '../../src/store/backup.ts';
import type { Act, Deed } from '../../src/store/deed.ts';

/** How the middle of some measurements, and the worst but one in twenty, are found: the nearest rank. */
export function ranks(values: readonly number[]): {
  readonly p50: number;
  readonly p95: number;
  readonly most: number;
} {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (part: number): number => sorted[Math.max(0, Math.ceil(sorted.length * part) - 1)] ?? Number.NaN;
  return { p50: at(0.5), p95: at(0.95), most: at(1) };
}

/** A table of figures with what each was to reach, printed as plain lines. */
export function table(rows: readonly (readonly [name: string, figure: string, target: string])[]): void {
  const widths = [0, 1, 2].map((i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  for (const row of rows)
    console.log(
      `  ${row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd()}`,
    );
}

/** A saved copy of a demonstration in which much has been counted, and the step at which it was left. */
export interface Heavy {
  readonly file: { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };
  readonly step: string;
  readonly instruction: string;
}

const DEVICE = 'aaaa0000bbbb1111';

/**
 * The demonstration worked up to its first counted card, with so many touches in the ledger. They are those of its
 * next counted card, so that the first one is as new and its own lines can be counted.
 */
export async function heavyCopy(description: unknown, touches: number): Promise<Heavy> {
  const outfit = readOutfit(description);
  if (!outfit.ok) throw new Error('The demonstration cannot be read.');
  const running = runningOrder(outfit.value);
  if (!running.ok) throw new Error(running.error.say);
  const { sequence } = running.value;
  const counted = sequence.flatMap((id, index) => {
    const card = cardFor(outfit.value, running.value, id);
    return card?.readout.kind === 'count' ? [{ id, index, say: card.say, lines: card.readout.lines }] : [];
  });
  const [here, other] = counted;
  if (!here || !other) throw new Error('Two cards must count something.');
  const acts: Act[] = [{ kind: 'outfit-begun', description }];
  for (const done of sequence.slice(0, here.index)) acts.push({ kind: 'step-done', step: done });
  for (let i = 0; i < touches; i += 1) {
    const line = other.lines[Math.floor((i * other.lines.length) / touches)];
    if (line) acts.push({ kind: 'tap', step: other.id, item: line.item, add: 1 });
  }
  acts.push({ kind: 'step-opened', step: here.id });
  const begun = Date.UTC(2026, 0, 10, 8);
  const deeds = acts.map(
    (act, seq): Deed => ({
      id: `${DEVICE}-${seq}`,
      device: DEVICE,
      seq,
      at: begun + seq * 700,
      outfit: outfit.value.id,
      act,
    }),
  );
  const blob = await writeBackup(outfit.value.id, deeds);
  return {
    file: {
      name: 'copy.slipbaste',
      mimeType: 'application/gzip',
      buffer: Buffer.from(await blob.arrayBuffer()),
    },
    step: here.id,
    instruction: here.say,
  };
}
