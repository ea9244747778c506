import { bad, good, type Result } from '../length/result.ts';

/** What a drawing may hold at most: far more than any pattern needs, little enough to be read in a moment. */
export const MOST = {
  /** Letters of the whole file. */
  letters: 5_000_000,
  elements: 20_000,
  /** Groups inside groups. */
  depth: 60,
  /** Uses of a symbol inside a symbol. */
  uses: 6,
  lines: 1500,
  segments: 60_000,
  /** Milliseconds for taking the parsed file apart. */
  time: 4000,
};

const PLAIN = 'In the drawing program save it again as plain SVG';
const BROKEN = `The file is not a whole SVG drawing: a tag in it does not end. ${PLAIN}.`;
/** What is said of tags that are not a drawing together. */
export const UNFIT =
  'The file is not a sound SVG drawing: its tags do not fit together. Open it in the drawing program and save it again as plain SVG.';
const ENTITIES = `The file defines text of its own in a way that is not read here (from another file, inside each other, or too much of it). ${PLAIN}.`;
/** What is said of a file with too many letters. */
export const TOO_LARGE =
  'The file is larger than 5 MB. Leave only the outlines in it, without pictures, and save it again.';

/** Where a tag ends, quoted text passed over; -1 where it does not. */
function tagEnd(text: string, open: number, ends = '>'): number {
  let quote = '';
  for (let i = open + 1; i < text.length; i++) {
    const c = text.charAt(i);
    if (quote !== '') {
      if (c === quote) quote = '';
    } else if (c === '"' || c === "'") quote = c;
    else if (ends.includes(c)) return i;
    else if (c === '<') return -1;
  }
  return -1;
}

const SPACE = /\s*/y;
const ENTITY = /<!ENTITY\s+([\w:.-]{1,64})\s+(?:"([^"<&%]{0,200})"|'([^'<&%]{0,200})')\s*>/y;

/** Reads what stands in a DOCTYPE: plain short texts only, as drawing programs write for the names of their own data. */
function readDoctype(
  text: string,
  open: number,
): Result<{ readonly end: number; readonly texts: ReadonlyMap<string, string> }, string> {
  const texts = new Map<string, string>();
  const mark = tagEnd(text, open, '[>');
  if (mark < 0) return bad(BROKEN);
  if (text[mark] === '>') return good({ end: mark + 1, texts });
  let [at, count] = [mark + 1, 0];
  const skip = (): void => {
    SPACE.lastIndex = at;
    SPACE.exec(text);
    at = SPACE.lastIndex;
  };
  for (skip(); text[at] !== ']'; skip()) {
    if (text.startsWith('<!--', at)) {
      const end = text.indexOf('-->', at + 4);
      if (end < 0) return bad(BROKEN);
      at = end + 3;
      continue;
    }
    ENTITY.lastIndex = at;
    const found = ENTITY.exec(text);
    if (!found || ++count > 40) return bad(ENTITIES);
    const [, name = '', double, single = ''] = found;
    // Of two texts of one name the first counts.
    if (!texts.has(name))
      texts.set(name, (double ?? single).replaceAll('"', '&quot;').replaceAll("'", '&apos;'));
    at = ENTITY.lastIndex;
  }
  at++;
  skip();
  return text[at] === '>' ? good({ end: at + 1, texts }) : bad(BROKEN);
}

/** Puts the short texts in; nothing where that would make the file too large. */
function filledIn(text: string, texts: ReadonlyMap<string, string>): string | undefined {
  if (texts.size === 0) return text;
  let more = text.length;
  const made = text.replace(/&([\w:.-]{1,64});/g, (all, name: string) => {
    const found = more > MOST.letters ? undefined : texts.get(name);
    more += found?.length ?? 0;
    return found ?? all;
  });
  return more > MOST.letters ? undefined : made;
}

function whatElse(text: string): string | undefined {
  if (text.trim() === '') return 'The file is empty. Choose an SVG drawing.';
  if (text.startsWith('%PDF')) return 'This is a PDF. In the drawing program save the drawing as SVG.';
  if (text.startsWith('\u001f'))
    return 'This drawing is packed (SVGZ). Save it as plain SVG, not compressed.';
  if (text.includes('\0') || !/<(?:[\w-]+:)?svg[\s>/]/.test(text))
    return 'This is not an SVG drawing. In the drawing program save the drawing as SVG and choose that file.';
  return undefined;
}

/** What stands beside the tags: notes and instructions are left out, plain text is kept. */
const ASIDE = [
  ['<!--', '-->'],
  ['<![CDATA[', ']]>'],
  ['<?', '?>'],
] as const;

const AS_WRITTEN = 'data-as-written-';

/** The attribute that styles are kept under, where no browser takes them for styles. */
export const STYLE = `${AS_WRITTEN}style`;

/** A tag without anything that a browser would try to style by or to run: its page policy would complain. */
const quiet = (tag: string): string =>
  tag
    .replace(/^(<\/?(?:[\w.-]+:)?)style(?![\w.:-])/, '$1metadata')
    .replace(/(\s)(style|on\w+)(\s*=)/gi, `$1${AS_WRITTEN}$2$3`);

/**
 * Looks a file over, letter by letter and once only, before any parser sees it: its size, how many tags it has and how
 * deep they lie, and that it brings no definitions of its own except short plain texts, which are put in here. Gives the
 * markup without its DOCTYPE, notes and styles, or what is wrong and what would be right.
 */
export function safeMarkup(text: string): Result<string, string> {
  if (text.length > MOST.letters) return bad(TOO_LARGE);
  const other = whatElse(text);
  if (other !== undefined) return bad(other);
  let [at, elements] = [0, 0];
  const within: string[] = [];
  let texts: ReadonlyMap<string, string> | undefined;
  const kept: string[] = [];
  for (let open = text.indexOf('<'); open >= 0; open = text.indexOf('<', at)) {
    kept.push(text.slice(at, open));
    const ends = ASIDE.find(([begins]) => text.startsWith(begins, open));
    if (ends) {
      const [begins, stops] = ends;
      const end = text.indexOf(stops, open + begins.length);
      if (end < 0) return bad(BROKEN);
      at = end + stops.length;
      if (begins === '<![CDATA[') kept.push(text.slice(open, at));
    } else if (text.startsWith('<!DOCTYPE', open) && !texts && elements === 0) {
      const read = readDoctype(text, open);
      if (!read.ok) return read;
      texts = read.value.texts;
      at = read.value.end;
    } else {
      const end = text[open + 1] === '!' ? -1 : tagEnd(text, open);
      if (end < 0) return bad(BROKEN);
      at = end + 1;
      const tag = text.slice(open, at);
      kept.push(quiet(tag));
      const name = /^<\/?([^\s/>]*)/.exec(tag)?.[1] ?? '';
      if (tag[1] === '/') {
        if (within.pop() !== name) return bad(UNFIT);
      } else {
        elements++;
        if (!tag.endsWith('/>')) within.push(name);
      }
      if (elements > MOST.elements)
        return bad(
          `The drawing has more than ${MOST.elements} parts. Leave only the outlines in it and save it again.`,
        );
      if (within.length > MOST.depth)
        return bad(
          `The drawing has more than ${MOST.depth} groups inside each other. Ungroup it and save it again.`,
        );
    }
  }
  if (within.length > 0) return bad(UNFIT);
  kept.push(text.slice(at));
  const made = filledIn(kept.join(''), texts ?? new Map());
  return made === undefined ? bad(ENTITIES) : good(made);
}
