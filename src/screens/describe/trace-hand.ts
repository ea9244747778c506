import { type Signal, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { NM_PER_MM, nm } from '../../length/length.ts';
import type { Marking } from '../../length/writing.ts';
import type { Box } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';
import { type CutEdge, edgesAt, nearestPlace, type Place, pointAt } from '../../traced/corners.ts';
import type { Drawing, DrawnLine } from '../../traced/drawing.ts';
import { lieOf } from '../../traced/piece-outline.ts';
import { saidName } from './edge-lines.ts';
import { focusOn } from './focus-on.ts';
import type { PieceChoice, TraceDraft } from './trace-draft.ts';
import { boxOf, edgeNames, middleOf } from './trace-make.ts';
import { touched, type View, viewOf } from './trace-view.ts';

/** What a touch on the drawing of a piece is about. */
export type Mode = 'edges' | 'corners' | 'grain' | 'marks';

/** A line that is to be a piece, and all it is judged by. */
export interface InTrace {
  readonly trace: TraceDraft;
  readonly drawing: Drawing;
  readonly line: DrawnLine;
  readonly choice: PieceChoice;
  readonly scale: number;
  readonly marking: Marking;
}

/** The piece in hand: what its drawing shows, and what touches do. */
export interface Hand extends InTrace {
  readonly mode: Signal<Mode>;
  /** The corner at which the edge in hand begins. */
  readonly picked: Signal<Place | undefined>;
  readonly edges: readonly CutEdge[];
  /** Other lines that lie on the piece. */
  readonly near: readonly { readonly line: DrawnLine; readonly box: Box }[];
  readonly view: View;
  readonly nameOf: (at: Place) => string;
  /** A place moved a little towards the middle of the piece. */
  readonly inward: (p: Point) => Point;
  readonly change: (to: Partial<PieceChoice>) => void;
  readonly rename: (at: Place, text: string) => void;
  readonly quick: (name: string) => void;
  readonly takeOut: (at: Place) => void;
  readonly addAt: (at: Place) => void;
  readonly touchCorner: (event: MouseEvent) => void;
  /** Takes a line as the grain, or as a mark, as the mode is. */
  readonly touchNear: (id: string) => void;
  readonly isTaken: (id: string) => boolean;
}

/** Takes a piece in hand. */
export function useHand(of: InTrace): Hand {
  const { trace, drawing, line, choice } = of;
  const mode = useSignal<Mode>('edges');
  const picked = useSignal<number | undefined>(undefined);
  const change = (to: Partial<PieceChoice>): void => {
    const { pieces } = trace.choices.peek();
    trace.change({ pieces: { ...pieces, [line.id]: { ...choice, ...to } } });
  };
  const edges = useMemo(() => edgesAt(line, choice.corners), [line, choice.corners]);
  const names = edgeNames(choice);
  const nameOf = (at: number): string => saidName(names.get(at) ?? '');
  const near = useMemo(() => {
    const own = boxOf(line);
    return drawing.lines
      .filter((one) => one !== line && !trace.choices.peek().chosen.includes(one.id))
      .map((one) => ({ line: one, box: boxOf(one) }))
      .filter(
        ({ box }) =>
          box.left < own.right && box.right > own.left && box.top < own.bottom && box.bottom > own.top,
      )
      .slice(0, 80);
  }, [drawing, line, trace.choices.value.chosen]);
  const rename = (at: number, text: string): void => change({ names: { ...choice.names, [at]: text } });
  const quick = (name: string): void => {
    const at = picked.peek();
    if (at === undefined) return;
    rename(at, name);
    // The next edge round that has no name yet is in hand at once.
    const i = choice.corners.indexOf(at);
    const round = [...choice.corners.slice(i + 1), ...choice.corners.slice(0, i)];
    picked.value = round.find((one) => !choice.names[one]) ?? at;
  };
  const takeOut = (at: number): void => {
    picked.value = undefined;
    // Its name is kept, for when the corner comes back.
    change({ corners: choice.corners.filter((one) => one !== at) });
    focusOn('[aria-label="Corners"] button');
  };
  const addAt = (at: number): void => {
    if (!choice.corners.includes(at)) change({ corners: [...choice.corners, at].sort((a, b) => a - b) });
  };
  const touchCorner = (event: MouseEvent): void => {
    const found = touched(event);
    if (!found) return;
    const away = (at: number): number => {
      const p = pointAt(line, at);
      return Math.hypot(p.x - found.at.x, p.y - found.at.y) / found.pixel;
    };
    const close = choice.corners.toSorted((a, b) => away(a) - away(b))[0];
    if (close !== undefined && away(close) < 24) takeOut(close);
    else {
      const nearest = nearestPlace(line, found.at, found.pixel * 16);
      if (nearest.away < found.pixel * 40) addAt(nearest.place);
    }
  };
  const grainBy = (id: string): void => {
    const lie = lieOf(drawing.lines.find((one) => one.id === id) ?? line);
    if (lie !== undefined) change({ grain: String(Math.round(lie * 100) / 100), grainLine: id });
  };
  const mark = (id: string): void =>
    change({
      marks: choice.marks.includes(id) ? choice.marks.filter((one) => one !== id) : [...choice.marks, id],
    });
  const touchNear = (id: string): void => (mode.value === 'grain' ? grainBy(id) : mark(id));
  const isTaken = (id: string): boolean =>
    mode.value === 'grain' ? choice.grainLine === id : choice.marks.includes(id);
  const view = viewOf(boxOf(line));
  const centre = middleOf(boxOf(line));
  // Words keep clear of the window's rim.
  const inward = ({ x, y }: Point): Point => {
    const [dx, dy] = [centre.x - x, centre.y - y];
    const by = Math.min(1, (view.pixel * NM_PER_MM * 22) / (Math.hypot(dx, dy) || 1));
    return { x: nm(x + dx * by), y: nm(y + dy * by) };
  };
  return {
    ...of,
    mode,
    picked,
    edges,
    near,
    view,
    nameOf,
    inward,
    change,
    rename,
    quick,
    takeOut,
    addAt,
    touchCorner,
    touchNear,
    isTaken,
  };
}
