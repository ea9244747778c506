/** The part of the browser's own listening that is used here. */
interface Listener {
  lang: string;
  maxAlternatives: number;
  onresult:
    | ((event: { readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>> }) => void)
    | null;
  onend: (() => void) | null;
  start(): void;
  abort(): void;
}

const maker = (): (new () => Listener) | undefined => {
  const { SpeechRecognition, webkitSpeechRecognition } = globalThis as unknown as Record<
    string,
    (new () => Listener) | undefined
  >;
  return SpeechRecognition ?? webkitSpeechRecognition;
};

/** Can the browser listen at all? */
export const canListen = (): boolean => maker() !== undefined;

/**
 * Listens for one utterance: `onSaid` gets all readings of it, the likeliest first, and `onEnd` is called in the end,
 * heard or not. Gives back what stops it.
 */
export function listen(onSaid: (readings: readonly string[]) => void, onEnd: () => void): () => void {
  const Recogniser = maker();
  if (!Recogniser) {
    onEnd();
    return () => {};
  }
  const ears = new Recogniser();
  ears.lang = 'en-GB';
  ears.maxAlternatives = 5;
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
