import { bad, good, type Result } from '../length/result.ts';
import type { Deed } from './deed.ts';
import { inOrder } from './deed-order.ts';
import { deflate, inflate, inMegabytes } from './gzip.ts';
import { found, isRecord, readDeed } from './read-deed.ts';

const FORMAT = 'slipbaste-ledger';
const VERSION = 1;

/**
 * Largest file that is read, bytes. An outfit of 40 000 taps was measured to take 0.43 MB, and 7.1 MB as text; each
 * picture of a try-on adds what its JPEG takes, so that there is room for hundreds.
 */
const MOST_BYTES = 80_000_000;

/** Largest text that may come out of a file, bytes. */
const MOST_TEXT = 100_000_000;

/** One outfit with its whole ledger, as a file holds it. */
export interface Backup {
  readonly outfit: string;
  readonly deeds: readonly Deed[];
  /** Whether the checksum was compared. Browsers only do that on a page served securely, or on this very machine. */
  readonly checked: boolean;
}

/** SHA-256 in hexadecimal; none where the browser does not lend it, on a page that is not served securely. */
const checksum = async (text: string): Promise<string | undefined> => {
  const subtle: SubtleCrypto | undefined = globalThis.crypto?.subtle;
  if (subtle === undefined) return undefined;
  const bytes = new Uint8Array(await subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
};

/**
 * Writes one outfit with all its deeds as a file: JSON with a format marker, a version and a checksum over the deeds'
 * text, compressed with gzip where the browser can. Deeds of other outfits are left out.
 */
export const writeBackup = async (outfit: string, deeds: readonly Deed[]): Promise<Blob> => {
  const own = inOrder(deeds.filter((deed) => deed.outfit === outfit));
  const text = JSON.stringify(own);
  const head = {
    format: FORMAT,
    version: VERSION,
    outfit,
    count: own.length,
    checksum: await checksum(text),
  };
  return deflate(`${JSON.stringify(head).slice(0, -1)},"deeds":${text}}`);
};

/**
 * Reads a file that {@link writeBackup} wrote, also one that was unpacked by hand. Refused, in words, with what was
 * found and what was expected: a file that is too large, damaged, of another kind or of a newer version, or a deed in
 * it that is none.
 */
export const readBackup = async (file: Blob): Promise<Result<Backup, string>> => {
  if (file.size > MOST_BYTES) {
    return bad(
      `The file is too large: found ${inMegabytes(file.size)}, expected ${inMegabytes(MOST_BYTES)} at most.`,
    );
  }
  const text = await inflate(file, MOST_TEXT);
  if (!text.ok) return text;
  let raw: unknown;
  try {
    raw = JSON.parse(text.value);
  } catch {
    return bad('The file is not a Slipbaste ledger: found something else than JSON.');
  }
  if (!isRecord(raw) || raw.format !== FORMAT) {
    const format = isRecord(raw) ? raw.format : raw;
    return bad(`The file is not a Slipbaste ledger: found ${found(format)}, expected "${FORMAT}".`);
  }
  if (raw.version !== VERSION) {
    const newer = typeof raw.version === 'number' && raw.version > VERSION;
    const cure = newer ? ' Update Slipbaste, then import it again.' : '';
    return bad(
      `The file has a version that cannot be read: found ${found(raw.version)}, expected ${VERSION}.${cure}`,
    );
  }
  const { outfit } = raw;
  if (typeof outfit !== 'string' || outfit === '') {
    return bad(`The file names no outfit: found ${found(outfit)}, expected a name.`);
  }
  if (!Array.isArray(raw.deeds))
    return bad(`The file has no deeds: found ${found(raw.deeds)}, expected a list.`);
  if (raw.deeds.length !== raw.count) {
    return bad(`Deeds are missing from the file: found ${raw.deeds.length}, expected ${found(raw.count)}.`);
  }
  const sum = raw.checksum === undefined ? undefined : await checksum(JSON.stringify(raw.deeds));
  if (sum !== undefined && sum !== raw.checksum) {
    return bad('The file was changed or damaged: the checksum of its deeds is not the one it names.');
  }
  const deeds: Deed[] = [];
  for (const [i, one] of raw.deeds.entries()) {
    const deed = readDeed(one, outfit);
    if (!deed.ok) return bad(`Deed ${i + 1} cannot be read: ${deed.error}`);
    deeds.push(deed.value);
  }
  return good({ outfit, deeds, checked: sum !== undefined });
};
