import { type Known, knownOf } from './known.ts';
import { MOST, STYLE } from './markup.ts';
import { after, fitBox, type Matrix, moveBy, numbersIn, readTransform, STILL, unitsOf } from './matrix.ts';
import { pathLines, type Run } from './path-lines.ts';
import { shapeData } from './shapes.ts';

/** A line of a drawing, at the size that its file gives it. */
export interface DrawnLine extends Run {
  /** Its number in the drawing: `l1`. */
  readonly id: string;
  /** What the file calls it, or its group; empty where it says nothing that a person wrote. */
  readonly name: string;
  /** What a file written here says of a piece. */
  readonly known?: Known;
}

const SVG = 'http://www.w3.org/2000/svg';
const GROUPS = new Set(['svg', 'g', 'a', 'switch']);
const SHAPES = new Set(['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon']);
/** What is no line, by how a file calls it, in words: one of them, several. */
export const LEFT: Readonly<Record<string, readonly [string, string]>> = {
  image: ['picture', 'pictures'],
  text: ['line of words', 'lines of words'],
  script: ['script', 'scripts'],
  foreignObject: ['part that is no drawing', 'parts that are no drawing'],
  hidden: ['hidden part', 'hidden parts'],
  elsewhere: ['part from elsewhere', 'parts from elsewhere'],
  unreadable: ['line that cannot be read', 'lines that cannot be read'],
};

/** A name that a program made up and no person wrote. */
const MADE_UP =
  /^(?:svg|path|rect|circle|ellipse|line|polyline|polygon|poly|g|group|layer|shape|use|object|curve)?[-_ ]?[\d._-]*$/i;

function nameOf(part: Element): string {
  const written = [...Array(part.attributes.length).keys()]
    .map((i) => part.attributes.item(i))
    .find((one) => one?.localName === 'label' || one?.localName === 'aria-label');
  let title = '';
  for (let child = part.firstChild; child && title === ''; child = child.nextSibling)
    if ((child as Element).localName === 'title') title = child.textContent ?? '';
  const found = written?.value || title || (part.getAttribute('id') ?? '');
  // Some programs write signs in ids as numbers.
  const plain = found
    .replace(/_x([0-9A-F]{2})_/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
    .replace(/[_\s]+/g, ' ')
    .trim()
    .slice(0, 60);
  return MADE_UP.test(plain) ? '' : plain;
}

const isHidden = (part: Element): boolean =>
  part.getAttribute('display') === 'none' ||
  part.getAttribute('visibility') === 'hidden' ||
  /(?:^|[;\s])(?:display\s*:\s*none|visibility\s*:\s*hidden)/.test(part.getAttribute(STYLE) ?? '');

/** The box that a part is drawn in; empty where it has none. */
export const boxOf = (part: Element): readonly number[] => {
  const box = numbersIn(part.getAttribute('viewBox') ?? '');
  return box?.length === 4 ? box : [];
};

/** Why a drawing cannot be taken apart, in words. */
export class Refused extends Error {}

/** Walks through a parsed drawing and takes its lines out; what is no line is counted and left. */
export class Walk {
  readonly lines: DrawnLine[] = [];
  readonly left = new Map<string, number>();
  private segments = 0;
  private parts = 0;
  private readonly end = performance.now() + MOST.time;
  private readonly byId = new Map<string, Element>();

  constructor(root: Element) {
    const all = root.getElementsByTagName('*');
    for (let i = 0; i < all.length; i++) {
      const part = all.item(i);
      const id = part?.getAttribute('id');
      if (part && id && !this.byId.has(id)) this.byId.set(id, part);
    }
  }

  leave(what: string): void {
    this.left.set(what, (this.left.get(what) ?? 0) + 1);
  }

  visit(part: Element, outer: Matrix, group: string, uses: number): void {
    if (++this.parts > MOST.elements || (this.parts % 64 === 0 && performance.now() > this.end))
      throw new Refused(
        'The drawing repeats its parts too often. Turn repeated parts into plain outlines and save it again.',
      );
    const kind = part.localName;
    if (part.namespaceURI !== null && part.namespaceURI !== SVG) return;
    if (!GROUPS.has(kind) && !SHAPES.has(kind) && kind !== 'use') {
      if (Object.hasOwn(LEFT, kind)) this.leave(kind);
      return;
    }
    if (isHidden(part)) {
      this.leave('hidden');
      return;
    }
    const own = readTransform(part.getAttribute('transform') ?? '');
    if (!own) {
      this.leave('unreadable');
      return;
    }
    const to = after(outer, own);
    const name = nameOf(part) || group;
    if (SHAPES.has(kind)) this.draw(part, to, name);
    else if (kind === 'use') this.use(part, to, name, uses);
    else this.inside(part, to, name, uses);
  }

  inside(part: Element, to: Matrix, name: string, uses: number, by: Element = part): void {
    const into = this.within(part, to, by);
    for (let child = part.firstChild; child; child = child.nextSibling)
      if (child.nodeType === 1) this.visit(child as Element, into, name, uses);
  }

  /** A drawing inside the drawing, and a symbol, lie in a box of their own. */
  private within(part: Element, to: Matrix, by: Element): Matrix {
    if (
      part.localName !== 'symbol' &&
      (part.localName !== 'svg' || !part.parentNode || part.parentNode.nodeType !== 1)
    )
      return to;
    const size = (one: string): number | undefined =>
      unitsOf(by.getAttribute(one) ?? part.getAttribute(one)) || undefined;
    const placed =
      part.localName === 'svg'
        ? after(to, moveBy(unitsOf(part.getAttribute('x')), unitsOf(part.getAttribute('y'))))
        : to;
    return after(
      placed,
      fitBox(boxOf(part), size('width'), size('height'), part.getAttribute('preserveAspectRatio')) ?? STILL,
    );
  }

  private use(part: Element, to: Matrix, name: string, uses: number): void {
    const href =
      part.getAttribute('href') ?? part.getAttributeNS('http://www.w3.org/1999/xlink', 'href') ?? '';
    const found = href.startsWith('#') ? this.byId.get(href.slice(1)) : undefined;
    if (!found) {
      this.leave('elsewhere');
      return;
    }
    if (uses >= MOST.uses)
      throw new Refused(
        'The drawing repeats parts inside repeated parts too deep. Turn them into plain outlines and save it again.',
      );
    const placed = after(to, moveBy(unitsOf(part.getAttribute('x')), unitsOf(part.getAttribute('y'))));
    if (found.localName !== 'symbol') {
      this.visit(found, placed, name, uses + 1);
      return;
    }
    this.inside(found, placed, name, uses + 1, part);
  }

  private draw(part: Element, to: Matrix, name: string): void {
    const data = shapeData(part);
    if (data?.trim() === '' || data === 'none') return;
    const runs =
      data === undefined || data.length > MOST.letters / 4 ? undefined : pathLines(data, to, MOST.segments);
    if (!runs) {
      this.leave('unreadable');
      return;
    }
    for (const run of runs) {
      const known = runs.length === 1 ? knownOf(part, run) : undefined;
      this.segments += run.segments.length;
      if (this.lines.length >= MOST.lines || this.segments > MOST.segments)
        throw new Refused(
          `The drawing has more than ${MOST.lines} lines, or lines of more than ${MOST.segments} stretches. Leave only the outlines in it, simplify them and save it again.`,
        );
      this.lines.push({ ...run, id: `l${this.lines.length + 1}`, name, ...(known ? { known } : {}) });
    }
  }
}
