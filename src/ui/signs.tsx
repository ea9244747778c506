/** The few signs of the app, drawn as strokes. Each always stands beside a word and is hidden from readers. */
const strokes = {
  undo: 'M9 5 4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3',
  caution: 'M12 3 22 21H2ZM12 10v5M12 18v.1',
  timer: 'M12 8v5l3 2M12 4v-2M9 2h6M20 13a8 8 0 1 1-16 0 8 8 0 0 1 16 0Z',
  done: 'M4 13l5 6L20 5',
  ready: 'M8 4l9 8-9 8',
  waits: 'M6 3h12M6 21h12M8 3c0 6 8 6 8 12v6M16 3c0 6-8 6-8 12v6',
  home: 'M3 11 12 4l9 7M6 9v11h12V9',
  order: 'M4 6h.1M9 6h11M4 12h.1M9 12h11M4 18h.1M9 18h11',
  why: 'M9 9a3 3 0 1 1 4 3c-1 .5-1 1-1 2.500M12 18v.1',
  aloud: 'M4 9v6h4l5 4V5L8 9ZM17 8a6 6 0 0 1 0 8',
  more: 'M5 12h.1M12 12h.1M19 12h.1',
} as const;

/** Name of a sign. */
export type SignName = keyof typeof strokes;

/** One sign, as tall as the text beside it. */
export function Sign({ name }: { readonly name: SignName }) {
  return (
    <svg class="sign" viewBox="0 0 24 24" aria-hidden="true">
      <path d={strokes[name]} />
    </svg>
  );
}
