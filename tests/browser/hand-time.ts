/**
 * How long a person would take for what a browser test did, by a stated model: each thing done is counted and has its
 * time. The times of keys, of pointing and of making up one's mind are those of the keystroke-level model (S. Card,
 * T. Moran, A. Newell, The keystroke-level model for user performance time with interactive systems, Communications of
 * the ACM 23(7), 1980), which was measured at desks: a finger on glass points no slower than a mouse, and the slow hand
 * below allows for more. All figures here are from memory unless they say otherwise.
 */

/** What a hand, an eye or a mind does, counted. */
export interface Doings {
  /** A finger is brought to a control and touches it. */
  readonly touches: number;
  /** A swipe that brings what lies below or above into view. */
  readonly swipes: number;
  /** A letter of words, or the key that goes on to the next field. */
  readonly letters: number;
  /** A figure, a stroke or a point, and the key for the page of figures. */
  readonly figures: number;
  /** Times that the mind is made up: before each touch that chooses something, before words are typed. */
  readonly thoughts: number;
  /** Words of running text that came into view for the first time: every one is read. */
  readonly words: number;
  /** Headings, and names on fields, choices, buttons and links, that came into view for the first time: a glance each. */
  readonly names: number;
  /** Pages that opened. To look one over is part of the thought before what is done there, or of the reading. */
  readonly pages: number;
  /** Lengths measured on paper with a rule, the telephone laid down and taken up again. */
  readonly measured: number;
}

/** Seconds that each takes. */
export type Times = Readonly<Record<keyof Doings, number>> & { readonly who: string };

/** Which of them the page has no hand in. */
export const AT_THE_PAPER: readonly (keyof Doings)[] = ['measured'];

/** How each is said in the table. */
export const DOINGS: Readonly<Record<keyof Doings, string>> = {
  touches: 'touches',
  swipes: 'swipes',
  letters: 'letters',
  figures: 'figures',
  thoughts: 'thoughts',
  words: 'words read',
  names: 'names passed',
  pages: 'pages',
  measured: 'measured',
};

/** A maker who is at home on her telephone. */
export const USUAL: Times = {
  who: 'usual',
  /** P: on glass, to arrive is to press. */
  touches: 1.1,
  /** Half of P, for nothing has to be hit, and then the eye finds its place: common practice. */
  swipes: 1.2,
  /** 36 words of five letters a minute: K. Palin and others, How do people type on mobile devices?, MobileHCI 2019. */
  letters: 1 / 3,
  /** Slower than words, for each is looked for: common practice. The key for the page of figures counts by itself. */
  figures: 0.4,
  /** M. */
  thoughts: 1.35,
  /** 238 words a minute, read in silence: M. Brysbaert, How many words do we read per minute?, Journal of Memory and Language 109, 2019. */
  words: 60 / 238,
  /** A glance of the eye for each, as in searching a list: common practice. */
  names: 0.3,
  pages: 0,
  /** Common practice: telephone down, rule laid on and read, telephone up. Two homings of the hand, H, 0.4 s each, are in it. */
  measured: 10,
};

/** The same maker with her second blouse: nothing has to be read or looked for that she has read before. */
export const AGAIN: Times = { ...USUAL, who: 'again', words: 0, names: 0 };

/** One who is tired, in poor light, and types with one finger. */
export const SLOW: Times = {
  who: 'slow',
  /** The upper end of P, 1.5 s, and one touch in ten missed and done again. */
  touches: 1.7,
  swipes: 2,
  /** K of complex codes, 0.75 s, and of one who does not know the keyboard, 1.2 s. */
  letters: 0.75,
  figures: 1.2,
  thoughts: 2,
  /** 175 words a minute: the lower end of what grown readers do. */
  words: 60 / 175,
  names: 0.5,
  pages: 1.35,
  measured: 14,
};

/** Nothing done yet. */
export const NOTHING: Doings = {
  touches: 0,
  swipes: 0,
  letters: 0,
  figures: 0,
  thoughts: 0,
  words: 0,
  names: 0,
  pages: 0,
  measured: 0,
};

const NAMES = Object.keys(NOTHING) as readonly (keyof Doings)[];

/** Both together. */
export const sumOf = (one: Doings, other: Doings): Doings => {
  const sum = { ...NOTHING } as Record<keyof Doings, number>;
  for (const name of NAMES) sum[name] = one[name] + other[name];
  return sum;
};

/** Seconds for what was done, of all kinds or only of these. */
export const secondsOf = (doings: Doings, times: Times, of: readonly (keyof Doings)[] = NAMES): number =>
  of.reduce((sum, name) => sum + doings[name] * times[name], 0);

/** Seconds at the telephone, without what is done at the paper. */
export const secondsAtScreen = (doings: Doings, times: Times): number =>
  secondsOf(
    doings,
    times,
    NAMES.filter((name) => !AT_THE_PAPER.includes(name)),
  );

/** Minutes and seconds: `5:07`. */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** What was done part by part, and all together, as a table for the eye. */
export function tableOf(parts: readonly (readonly [string, Doings])[], hands: readonly Times[]): string {
  const all = parts.reduce((sum, [, doings]) => sumOf(sum, doings), NOTHING);
  const head = ['', ...NAMES.map((name) => DOINGS[name]), ...hands.map(({ who }) => who)];
  const row = ([name, doings]: readonly [string, Doings]): string[] => [
    name,
    ...NAMES.map((each) => String(doings[each])),
    ...hands.map((times) => clock(secondsOf(doings, times))),
  ];
  const atScreen = [
    'at the screen',
    ...NAMES.map(() => ''),
    ...hands.map((t) => clock(secondsAtScreen(all, t))),
  ];
  const lines = [head, ...parts.map(row), row(['all together', all]), atScreen];
  const wide = head.map((_, i) => Math.max(...lines.map((line) => line[i]?.length ?? 0)));
  return lines
    .map((line) =>
      line.map((cell, i) => (i === 0 ? cell.padEnd(wide[i] ?? 0) : cell.padStart(wide[i] ?? 0))).join('  '),
    )
    .join('\n');
}
