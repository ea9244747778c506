import { type Signal, signal } from '@preact/signals';
import { openDB } from 'idb';
import { useEffect, useMemo } from 'preact/hooks';
import { type Drawing, readDrawing, textOf } from '../../traced/drawing.ts';
import { MOST, TOO_LARGE } from '../../traced/markup.ts';
import { recallDraft, useDraft } from './drafts.ts';

/** What the maker has said of one line that is to be a piece. */
export interface PieceChoice {
  readonly name: string;
  readonly corners: readonly number[];
  /** Names of edges as she wrote them, by the corner they begin at. */
  readonly names: Readonly<Record<string, string>>;
  readonly cut: 'one' | 'pair' | 'fold';
  /** Degrees clockwise from the upright of the drawing, as she wrote them. */
  readonly grain: string;
  /** The line of the drawing that the grain was taken from. */
  readonly grainLine?: string | undefined;
  /** Lines whose middles are marks. */
  readonly marks: readonly string[];
  readonly cloth: string;
  readonly allowance: string;
  /** The piece that it was made into. */
  readonly put?: string;
}

/** What she has said of the drawing so far. */
export interface Choices {
  /** Lines that are pieces, in the order in which they were touched. */
  readonly chosen: readonly string[];
  /** The one in hand. */
  readonly open?: string;
  readonly how?: 'found' | 'known';
  /** What is known: see `measurables`. */
  readonly known: string;
  /** Two places touched on the drawing, in nanometres as found. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Its true length as written. */
  readonly long: string;
  readonly pieces: Readonly<Record<string, PieceChoice>>;
}

const NOTHING: Choices = { chosen: [], known: 'points', points: [], long: '', pieces: {} };

/** A drawing in work. */
export interface TraceDraft {
  readonly file: Signal<string | undefined>;
  readonly drawing: Signal<Drawing | undefined>;
  /** What is wrong with the file, or could not be kept. */
  readonly fault: Signal<string>;
  readonly busy: Signal<boolean>;
  readonly choices: Signal<Choices>;
  readonly change: (to: Partial<Choices>) => void;
  readonly take: (file: File) => Promise<void>;
}

const STORE = 'files';
const drawings = () =>
  openDB('slipbaste-drawings', 1, {
    upgrade(db) {
      db.createObjectStore(STORE);
    },
  });

interface KeptFile {
  readonly name: string;
  readonly text: string;
}

async function keepFile(key: string, file: KeptFile): Promise<void> {
  const db = await drawings();
  try {
    await db.put(STORE, file, key);
  } finally {
    db.close();
  }
}

async function recallFile(key: string): Promise<KeptFile | undefined> {
  const db = await drawings();
  try {
    const found: unknown = await db.get(STORE, key);
    return typeof found === 'object' && found !== null && 'name' in found && 'text' in found
      ? { name: String(found.name), text: String(found.text) }
      : undefined;
  } finally {
    db.close();
  }
}

/** Choices as they were kept; those of another build that cannot be read are begun anew. */
function choicesIn(text: string | undefined): Choices {
  try {
    const found = JSON.parse(text ?? '') as Partial<Choices>;
    return Array.isArray(found.chosen) && Array.isArray(found.points) && typeof found.pieces === 'object'
      ? { ...NOTHING, ...found }
      : NOTHING;
  } catch {
    return NOTHING;
  }
}

/** A drawing in work under a key of its own: its file and all that was said of it come back as they were left. */
export function useTrace(key: string): TraceDraft {
  const draft = useDraft(key);
  const trace = useMemo(() => {
    const [file, drawing, fault, busy] = [
      signal<string | undefined>(undefined),
      signal<Drawing | undefined>(undefined),
      signal(''),
      signal(true),
    ];
    const choices = signal(choicesIn(recallDraft(key).choices));
    const change = (to: Partial<Choices>): void => {
      choices.value = { ...choices.peek(), ...to };
      draft.write('choices', JSON.stringify(choices.peek()));
    };
    const take = async (found: File): Promise<void> => {
      if (found.size > MOST.letters) {
        fault.value = TOO_LARGE;
        return;
      }
      busy.value = true;
      try {
        const text = textOf(new Uint8Array(await found.arrayBuffer()));
        // What stood there before stays in hand where the new file is refused.
        if (!show(trace, { name: found.name, text })) return;
        const known = drawing.peek()?.lines.filter((line) => line.known) ?? [];
        change({ ...NOTHING, chosen: known.map(({ id }) => id) });
        await keepFile(key, { name: found.name, text }).catch(() => {
          fault.value =
            'The drawing could not be kept on this device. It can be used now; choose the file again after closing.';
        });
      } catch {
        fault.value = 'The file could not be read. Choose it again.';
      } finally {
        busy.value = false;
      }
    };
    const trace: TraceDraft = { file, drawing, fault, busy, choices, change, take };
    return trace;
  }, [key]);
  useEffect(() => {
    recallFile(key)
      .then((kept) => {
        if (kept && trace.drawing.peek() === undefined) show(trace, kept);
      })
      .catch(() => {})
      .finally(() => {
        trace.busy.value = false;
      });
  }, [trace]);
  return trace;
}

/** Reads a file and puts it in hand; says what is wrong where it cannot be read, and leaves what was in hand. */
function show({ file, drawing, fault }: TraceDraft, { name, text }: KeptFile): boolean {
  const read = readDrawing(text);
  fault.value = read.ok ? '' : read.error;
  if (!read.ok) return false;
  file.value = name;
  drawing.value = read.value;
  return true;
}
