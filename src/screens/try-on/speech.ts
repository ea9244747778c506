/** The part of the browser's own listening that is used here. */
interface Listener {
  lang: string;
  maxAlternatives: number;
  processLocally: boolean;
  onresult:
    | ((event: { readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>> }) => void)
    | null;
  onend: (() => void) | null;
  start(): void;
  abort(): void;
}

interface Recogniser {
  new (): Listener;
  readonly prototype: object;
  /** Whether it can hear these languages, without sending anything where `processLocally` is asked for. */
  available?(how: { readonly langs: readonly string[]; readonly processLocally: true }): Promise<string>;
}

const recogniser = (): Recogniser | undefined => {
  const { SpeechRecognition, webkitSpeechRecognition } = globalThis as unknown as Record<
    string,
    Recogniser | undefined
  >;
  return SpeechRecognition ?? webkitSpeechRecognition;
};

/**
 * The language in which the browser listens on the device itself, of British English and the page's own; undefined where
 * it does not, or would send elsewhere what it hears.
 */
export async function languageHeard(): Promise<string | undefined> {
  const Ears = recogniser();
  if (!Ears?.available || !('processLocally' in Ears.prototype)) return undefined;
  for (const lang of new Set(['en-GB', document.documentElement.lang || 'en'])) {
    try {
      if ((await Ears.available({ langs: [lang], processLocally: true })) === 'available') return lang;
    } catch {
      // It cannot be asked: then it is not there.
    }
  }
  return undefined;
}

/**
 * Listens for one utterance, on this device only: `onSaid` gets all readings of it, the likeliest first, and `onEnd` is
 * called in the end, heard or not. Gives back what stops it.
 */
export function listen(
  lang: string,
  onSaid: (readings: readonly string[]) => void,
  onEnd: () => void,
): () => void {
  const Ears = recogniser();
  if (!Ears) {
    onEnd();
    return () => {};
  }
  const ears = new Ears();
  ears.lang = lang;
  ears.maxAlternatives = 5;
  ears.processLocally = true;
  ears.onresult = ({ results }) => {
    const first = results[0];
    if (first) onSaid(Array.from(first, ({ transcript }) => transcript.trim()));
  };
  ears.onend = onEnd;
  try {
    ears.start();
  } catch {
    // Not allowed, or at it already: the field is there.
    onEnd();
  }
  return () => ears.abort();
}
