import { bad, good, type Result } from '../length/result.ts';
import { type Place, Slip, standing, Words } from './hand-words.ts';

export type { Place };

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

class Reader extends Words {
  value(depth: number): [value: unknown, node: Node] {
    const from = this.at;
    const node: Node = { from, parts: new Map() };
    const first = this.text[from];
    if (depth > DEEPEST)
      throw new Slip(from, `Nothing in an outfit lies more than ${DEEPEST} brackets deep.`);
    if (first === '{') return [this.object(node, depth), node];
    if (first === '[') return [this.list(node, depth), node];
    return [this.plain(), node];
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
