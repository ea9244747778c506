/**
 * Pattern sheets and marking strips on paper at true size: which paper, what will come, and the file.
 *
 * What others may hold on to: `[data-part="print-paper"]`; buttons `A4` and `Letter`; `[data-part="page-count"]`,
 * `[data-part="page-map"]`; `[data-part="make-pdf"]`, then `[data-part="save-pdf"]`; `[data-part="save-svg"]`;
 * `[data-part="print-trouble"]`.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { layPages, type Pages } from '../../paper/pages.ts';
import { PAPERS } from '../../paper/papers.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { sheetsSvg } from '../../paper/svg.ts';
import { losesLetters } from '../../print/latin.ts';
import { canShare } from '../../ui/share.ts';
import { PagePictures } from './page-pictures.tsx';
import { paper } from './paper-choice.ts';
import { fileName, offerFile } from './save-file.ts';
import './paper.css';

/** What is to be printed. Give the same function again as long as its sheets are the same: they are laid anew for a new one. */
export interface PrintPaperProps {
  /** Name of the whole: stands on every page and names the file. */
  readonly name: string;
  readonly sheets: () => readonly PatternSheet[];
  /** Does what is around it already say what this is for? Then it has no heading of its own. */
  readonly headed?: true;
}

/** All words on the sheets, for letters that a PDF cannot have. */
const wordsOf = (name: string, sheets: readonly PatternSheet[]): string =>
  [
    name,
    ...sheets.flatMap((sheet) => [
      sheet.name,
      ...sheet.notes,
      ...sheet.drawn.flatMap((one) => (one.kind === 'words' ? [one.words] : [])),
    ]),
  ].join(' ');

const pageCount = ({ pages, first, paper: { name } }: Pages): string => {
  const all = pages.length === 1 ? `1 page of ${name}` : `${pages.length} pages of ${name}`;
  if (first === 0) return `${all}.`;
  return `${all}; the first ${first === 1 ? 'tells' : `${first} tell`} how to put the others together.`;
};

/** Offers pattern sheets on paper: see {@link PrintPaperProps}. */
export function PrintPaper({ name, sheets, headed }: PrintPaperProps) {
  const all = useMemo(sheets, [sheets]);
  const laid = useMemo(() => layPages(name, all, paper.value), [name, all, paper.value]);
  const poor = useMemo(() => losesLetters(wordsOf(name, all)), [name, all]);
  return (
    <section class="print-paper" data-part="print-paper">
      {!headed && <h2>Print at true size</h2>}
      <fieldset class="one-of">
        <legend>Paper</legend>
        <div class="choice">
          {PAPERS.map((one) => (
            <button
              key={one.name}
              type="button"
              class="plain"
              aria-pressed={paper.value === one}
              onClick={() => {
                paper.value = one;
              }}
            >
              {one.name}
            </button>
          ))}
        </div>
      </fieldset>
      {laid.ok ? (
        <p data-part="page-count">{pageCount(laid.value)}</p>
      ) : (
        <p class="notice" role="alert" data-part="print-trouble">
          <span>
            {laid.error.wrong} {laid.error.cure}
          </span>
        </p>
      )}
      <ul class="print-hints">
        <li>Print at 100 %, which some printers call actual size. Do not let it fit the page.</li>
        <li>Measure the 100 mm line or the 4 in line on the paper before you cut anything.</li>
        <li>SVG is one drawing in one piece, for a printer of wide rolls or a drawing program.</li>
        {poor && (
          <li>
            Some letters in the names cannot be written in this PDF and stand there as question marks. The SVG
            has them all.
          </li>
        )}
      </ul>
      {laid.ok && <SavePdf name={name} pages={laid.value} />}
      {all.length > 0 && (
        <button
          type="button"
          class="plain"
          data-part="save-svg"
          onClick={() =>
            offerFile(new File([sheetsSvg(name, all)], fileName(name, 'svg'), { type: 'image/svg+xml' }))
          }
        >
          Save as SVG
        </button>
      )}
      {laid.ok && <PagePictures pages={laid.value} sheets={all} />}
    </section>
  );
}

type Making =
  | { readonly state: 'idle' }
  | { readonly state: 'working'; readonly say: string }
  | { readonly state: 'ready'; readonly file: File; readonly url: string }
  | { readonly state: 'trouble'; readonly say: string };

/** Makes the file first and offers it then, because sharing must follow a touch at once. */
function SavePdf({ name, pages }: { readonly name: string; readonly pages: Pages }) {
  const making = useSignal<Making>({ state: 'idle' });
  // Counts up whenever what is being made is no longer wanted.
  const turn = useRef(0);
  useEffect(
    () => () => {
      turn.current += 1;
      if (making.value.state === 'ready') URL.revokeObjectURL(making.value.url);
      making.value = { state: 'idle' };
    },
    [pages],
  );
  const make = async (): Promise<void> => {
    turn.current += 1;
    const mine = turn.current;
    const say = (next: Making): void => {
      if (turn.current === mine) making.value = next;
    };
    say({ state: 'working', say: 'Fetching what writes the PDF…' });
    try {
      const { writePdf } = await import('../../print/pdf.ts');
      const blob = await writePdf(pages.pages, {
        title: name,
        made: new Date(),
        onPage: (done, all) => say({ state: 'working', say: `Writing page ${done} of ${all}…` }),
      });
      if (turn.current !== mine) return;
      const file = new File([blob], fileName(name, 'pdf'), { type: 'application/pdf' });
      say({ state: 'ready', file, url: URL.createObjectURL(file) });
    } catch {
      say({
        state: 'trouble',
        say: 'The PDF could not be made. Try once more, or load the page again; the SVG does not need it.',
      });
    }
  };
  const now = making.value;
  return (
    <div class="save-pdf">
      {now.state === 'ready' ? (
        canShare(now.file) ? (
          <button type="button" class="main" data-part="save-pdf" onClick={() => offerFile(now.file)}>
            Save as PDF
          </button>
        ) : (
          <a class="main" data-part="save-pdf" href={now.url} download={now.file.name}>
            Save as PDF
          </a>
        )
      ) : (
        <button
          type="button"
          class="main"
          data-part="make-pdf"
          disabled={now.state === 'working'}
          onClick={() => void make()}
        >
          Make the PDF
        </button>
      )}
      <p role="status">
        {now.state === 'working' || now.state === 'trouble' ? now.say : ''}
        {now.state === 'ready' && 'The PDF is ready.'}
      </p>
    </div>
  );
}
