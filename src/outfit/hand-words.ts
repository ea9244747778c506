/** A place in a text, both counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Something that cannot be read, and its offset in the text. */
export class Slip extends Error {
  readonly at: number;
  constructor(at: number, say: string) {
    super(say);
    this.at = at;
  }
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /[\p{L}\p{N}_$.+-]+/uy;
const WORDS: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ['true', true],
  ['false', false],
  ['null', null],
]);
const GAP = /[ \t\r\n\uFEFF\u00A0]+/y;

const startsAt = (pattern: RegExp, text: string, at: number): string => {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
};

/** Where the lines of a text begin; a line ends with a line feed, a carriage return, or both. */
const linesOf = (text: string): readonly number[] => [
  0,
  ...Array.from(text.matchAll(/\r\n|\r|\n/g), (end) => end.index + end[0].length),
];

function placeAt(text: string, lines: readonly number[], offset: number): Place {
  const line = lines.findLastIndex((from) => from <= offset);
  return { line: line + 1, column: [...text.slice(lines[line], offset)].length + 1 };
}

/** What stands at an offset, for a sentence. */
export function standing(text: string, at: number): string {
  const letter = text.codePointAt(at);
  if (letter === undefined) return 'the file ends';
  return `\`${startsAt(WORD, text, at).slice(0, 30) || String.fromCodePoint(letter)}\` stands`;
}

/** The words of a text, one after the other: blanks, comments, and values that have no parts. */
export class Words {
  readonly text: string;
  at = 0;
  private readonly lines: readonly number[];
  constructor(text: string) {
    this.text = text;
    this.lines = linesOf(text);
  }

  /** Line and column of an offset. */
  place(offset: number): Place {
    return placeAt(this.text, this.lines, offset);
  }

  /** Goes past blanks and comments: from two strokes to the end of the line, or from a stroke and a star to the same turned round. */
  skip(): void {
    for (;;) {
      this.at += startsAt(GAP, this.text, this.at).length;
      const two = this.text.slice(this.at, this.at + 2);
      if (two === '//') {
        const rest = this.text.slice(this.at).search(/[\r\n]/);
        this.at = rest < 0 ? this.text.length : this.at + rest;
      } else if (two === '/*') {
        const end = this.text.indexOf('*/', this.at + 2);
        if (end < 0) throw new Slip(this.at, 'This comment has no end; close it with */.');
        this.at = end + 2;
      } else return;
    }
  }

  /** A text in straight double quotes, which begins here. */
  string(): string {
    const from = this.at;
    for (let i = from + 1; i < this.text.length; i += 1) {
      const letter = this.text[i];
      if (letter === '\n' || letter === '\r') break;
      if (letter === '\\') i += 1;
      else if (letter === '"') {
        this.at = i + 1;
        try {
          return JSON.parse(this.text.slice(from, this.at));
        } catch {
          throw new Slip(
            from,
            'This text has a backslash or a sign in it that JSON does not know; write \\\\ for a backslash.',
          );
        }
      }
    }
    throw new Slip(from, 'This text has no end on its line; close it with a straight double quote.');
  }

  /** A value that has no parts: text, a number, true, false or null. */
  plain(): unknown {
    const from = this.at;
    if (this.text[from] === '"') return this.string();
    const word = startsAt(WORD, this.text, from);
    const number = startsAt(NUMBER, this.text, from);
    if (word !== '' && (WORDS.has(word) || number === word)) {
      this.at += word.length;
      return WORDS.has(word) ? WORDS.get(word) : Number(number);
    }
    if (/^[‘’“”„'«»]/.test(this.text.slice(from)))
      throw new Slip(from, 'Put text in straight double quotes: "so".');
    if (/^[-+.\d]/.test(word))
      throw new Slip(
        from,
        `\`${word.slice(0, 30)}\` is not a number as JSON has it; write 12 or 0.5, and a length in quotes, "12 mm".`,
      );
    if (word !== '')
      throw new Slip(
        from,
        `\`${word.slice(0, 30)}\` stands without quotes; put text in straight double quotes.`,
      );
    throw new Slip(from, `Here ${standing(this.text, from)} where a value should.`);
  }
}
