import type { jsPDF } from 'jspdf';
import { type Length, toMm } from '../length/length.ts';
import type { Ink, Page } from '../paper/ink.ts';
import { PENS } from '../paper/pens.ts';
import type { Point } from '../shape/outline.ts';
import { inLatin } from './latin.ts';

/** What is written into the file beside its pages. */
export interface PdfAbout {
  readonly title: string;
  /** When it was made. */
  readonly made: Date;
  /** Told after each page, so that a screen can show how far it is. */
  readonly onPage?: (done: number, of: number) => void;
}

function trace(doc: jsPDF, points: readonly Point[], closed: boolean): void {
  for (const [i, p] of points.entries()) {
    if (i === 0) doc.moveTo(toMm(p.x), toMm(p.y));
    else doc.lineTo(toMm(p.x), toMm(p.y));
  }
  if (closed) doc.close();
}

function draw(doc: jsPDF, ink: Ink): void {
  if (ink.kind === 'words') {
    doc.setFont('helvetica', ink.bold ? 'bold' : 'normal');
    doc.setFontSize(points(ink.high));
    const words = inLatin(ink.words);
    const angle = (ink.turn * Math.PI) / 180;
    // Middled by hand: the library middles turned words along the level.
    const back = ink.from === 'middle' ? doc.getTextWidth(words) / 2 : 0;
    doc.text(words, toMm(ink.at.x) - back * Math.cos(angle), toMm(ink.at.y) - back * Math.sin(angle), {
      angle: -ink.turn,
    });
    return;
  }
  if (ink.kind === 'fill') {
    trace(doc, ink.points, true);
    doc.fill();
    return;
  }
  const { wide, dash } = PENS[ink.pen];
  doc.setLineWidth(toMm(wide));
  doc.setLineDashPattern(dash.map(toMm), toMm(ink.phase));
  trace(doc, ink.points, ink.closed);
  doc.stroke();
}

const points = (high: Length): number => (toMm(high) / 25.4) * 72;

/** Pages between which the screen gets time to show how far it is. */
const BREATH = 4;

/**
 * Writes laid pages as a PDF at true size. The library is loaded when this is first called.
 *
 * Letters beyond code page 1252 are written as {@link inLatin} says.
 */
export async function writePdf(pages: readonly Page[], about: PdfAbout): Promise<Blob> {
  const { jsPDF: Pdf } = await import('jspdf');
  const [first] = pages;
  const format = (page: Page | undefined): [number, number] =>
    page ? [toMm(page.wide), toMm(page.high)] : [210, 297];
  const way = (page: Page | undefined) => (page && page.wide > page.high ? 'landscape' : 'portrait');
  const doc = new Pdf({
    unit: 'mm',
    format: format(first),
    orientation: way(first),
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 5,
  });
  doc.setProperties({ title: inLatin(about.title), creator: 'Slipbaste' });
  doc.setCreationDate(about.made);
  doc.viewerPreferences({ PrintScaling: 'None' });
  for (const [i, page] of pages.entries()) {
    if (i > 0) doc.addPage(format(page), way(page));
    doc.setLineJoin('round');
    for (const { area, ink } of page.windows) {
      doc.saveGraphicsState();
      doc.rect(
        toMm(area.left),
        toMm(area.top),
        toMm(area.right) - toMm(area.left),
        toMm(area.bottom) - toMm(area.top),
        null,
      );
      doc.clip();
      doc.discardPath();
      for (const one of ink) draw(doc, one);
      doc.restoreGraphicsState();
    }
    for (const one of page.ink) draw(doc, one);
    about.onPage?.(i + 1, pages.length);
    if (about.onPage && i % BREATH === BREATH - 1) await new Promise((resolve) => setTimeout(resolve));
  }
  return doc.output('blob');
}
