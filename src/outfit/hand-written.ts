import { bad, good, type Result } from '../length/result.ts';

/** A place in a text, both counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Why a text cannot be read, and where reading ended. */
export interface Misread extends Place {
  /** What is wrong there and what would be right. */
  readonly say: string;
}

/** What a text holds, and where each part of it stands. */
export interface HandWritten {
  readonly value: unknown;
  /** Where the part at a JSON Pointer stands; of one that is missing, where the nearest part round it does. */
  readonly placeOf: (at: string) => Place;
}

/** Lists and objects inside each other go no deeper than this; an outfit needs a dozen. */
const DEEPEST = 60;

/** Where a value begins, and its parts: each by its name, a member of an object where its name begins. */
interface Node {
  readonly from: number;
  readonly parts: Map<string, { readonly from: number; readonly node: Node }>;
}

class Slip extends Error {
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
function standing(text: string, at: number): string {
  const letter = text.codePointAt(at);
  if (letter === undefined) return 'the file ends';
  return `\`${startsAt(WORD, text, at).slice(0, 30) || String.fromCodePoint(letter)}\` stands`;
}

class Reader {
  readonly text: string;
  at = 0;
  private readonly lines: readonly number[];
  constructor(text: string) {
    this.text = text;
    this.lines = linesOf(text);
  }

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

  value(depth: number): [value: unknown, node: Node] {
    const from = this.at;
    const node: Node = { from, parts: new Map() };
    const first = this.text[from];
    if (depth > DEEPEST)
      throw new Slip(from, `Nothing in an outfit lies more than ${DEEPEST} brackets deep.`);
    if (first === '{' || first === '[')
      return [first === '{' ? this.object(node, depth) : this.list(node, depth), node];
    if (first === '"') return [this.string(), node];
    const word = startsAt(WORD, this.text, from);
    const number = startsAt(NUMBER, this.text, from);
    if (word !== '' && (WORDS.has(word) || number === word)) {
      this.at += word.length;
      return [WORDS.has(word) ? WORDS.get(word) : Number(number), node];
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

  /** Goes on behind a part: true where another follows, false at the end. A comma before the end is let pass. */
  more(end: string, opened: number): boolean {
    this.skip();
    const comma = this.text[this.at] === ',';
    if (comma) {
      this.at += 1;
      this.skip();
    }
    if (this.text[this.at] === end) {
      this.at += 1;
      return false;
    }
    if (this.at >= this.text.length) {
      const { line } = this.place(opened);
      throw new Slip(
        this.at,
        `The file ends, but what was opened on line ${line} is not closed; add ${end}.`,
      );
    }
    if (comma) return true;
    throw new Slip(this.at, `Here ${standing(this.text, this.at)} where a comma or ${end} should.`);
  }

  list(node: Node, depth: number): unknown[] {
    const found: unknown[] = [];
    this.at += 1;
    this.skip();
    if (this.text[this.at] === ']') {
      this.at += 1;
      return found;
    }
    do {
      const [value, part] = this.value(depth + 1);
      node.parts.set(String(found.length), { from: part.from, node: part });
      found.push(value);
    } while (this.more(']', node.from));
    return found;
  }

  object(node: Node, depth: number): unknown {
    const found: [string, unknown][] = [];
    this.at += 1;
    this.skip();
    if (this.text[this.at] === '}') {
      this.at += 1;
      return {};
    }
    do {
      const from = this.at;
      if (this.text[from] !== '"')
        throw new Slip(
          from,
          `Here ${standing(this.text, from)} where a name should, in straight double quotes.`,
        );
      const name = this.string();
      if (node.parts.has(name)) {
        const { line } = this.place(node.parts.get(name)?.from ?? 0);
        throw new Slip(from, `"${name.slice(0, 40)}" stands on line ${line} already; keep one of the two.`);
      }
      this.skip();
      if (this.text[this.at] !== ':')
        throw new Slip(this.at, `Here ${standing(this.text, this.at)} where a colon should.`);
      this.at += 1;
      this.skip();
      const [value, part] = this.value(depth + 1);
      node.parts.set(name, { from, node: part });
      found.push([name, value]);
    } while (this.more('}', node.from));
    // Every name becomes the object's own, also one that means something to the language.
    return Object.fromEntries(found);
  }
}

/**
 * Reads JSON (RFC 8259) as people write it: with comments, and with a comma after the last entry. A name that stands
 * twice in one object is refused, since one of the two would be lost. Gives the first thing that cannot be read.
 */
export function readHandWritten(text: string): Result<HandWritten, Misread> {
  const reader = new Reader(text);
  try {
    reader.skip();
    if (reader.at >= text.length) throw new Slip(0, 'There is nothing in the file.');
    const [value, root] = reader.value(0);
    reader.skip();
    if (reader.at < text.length)
      throw new Slip(reader.at, `Here ${standing(text, reader.at)} behind the end.`);
    const placeOf = (at: string): Place => {
      let [node, from] = [root, root.from];
      for (const key of at.split('/').slice(1)) {
        const next = node.parts.get(key.replaceAll('~1', '/').replaceAll('~0', '~'));
        if (!next) break;
        ({ node, from } = next);
      }
      return reader.place(from);
    };
    return good({ value, placeOf });
  } catch (slip) {
    if (!(slip instanceof Slip)) throw slip;
    return bad({ ...reader.place(slip.at), say: slip.message });
  }
}
