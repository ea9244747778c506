import { signal, useSignal } from '@preact/signals';
import { useCallback, useEffect } from 'preact/hooks';
import type { Marking } from '../../length/writing.ts';
import { markingStrip } from '../../paper/marking-strip.ts';
import type { Reckoned, Reckoning } from '../../reckon/reckoning.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { Sign } from '../../ui/signs.tsx';
import { canSpeak, hush, sayAloud } from '../../ui/speak.ts';
import type { PrintPaper, PrintPaperProps } from '../paper/print.tsx';
import { copyText } from './copy.ts';
import type { Written } from './entries.ts';
import PutOnCard from './put-on-card.tsx';
import { cardFigures, plainText, sayFigures } from './words.ts';

/** What can be done with a result: hear it, copy it, print it, put it on a card. */
export function Actions(props: {
  readonly reckoning: Reckoning;
  readonly reckoned: Reckoned;
  readonly written: Written;
  readonly marking: Marking;
}) {
  const { reckoning, reckoned, written, marking } = props;
  const answer = useSignal('');
  const printing = useSignal(false);
  const onPaper = reckoned.strips.length + reckoned.sheets.length > 0;
  const sheets = useCallback(
    () => [...reckoned.sheets, ...reckoned.strips.map((strip) => markingStrip(strip, marking))],
    [reckoned, marking.unit],
  );
  const putting = useSignal(false);
  const byHand = useSignal<string | undefined>(undefined);
  useEffect(() => hush, []);
  // What was said about one result does not stand beside the next.
  useEffect(() => {
    answer.value = '';
    byHand.value = undefined;
  }, [reckoned, marking.unit]);
  const copy = async (): Promise<void> => {
    const text = plainText({ reckoning, written, reckoned, marking });
    const there = await copyText(text);
    answer.value = there ? 'Copied.' : 'This device does not let a page copy; take the text from here.';
    byHand.value = there ? undefined : text;
  };
  return (
    <section>
      <h2 class="unseen">What to do with it</h2>
      <div class="choice actions">
        {canSpeak() && (
          <button
            type="button"
            class="plain"
            data-part="aloud"
            onClick={() => sayAloud(sayFigures(reckoning.name, reckoned.figures, marking))}
          >
            <Sign name="aloud" />
            Read aloud
          </button>
        )}
        <button type="button" class="plain" data-part="copy" onClick={() => void copy()}>
          Copy as text
        </button>
        {onPaper && (
          <button
            type="button"
            class="plain"
            data-part="print"
            onClick={() => {
              printing.value = true;
            }}
          >
            Print at true size
          </button>
        )}
        <button
          type="button"
          class="plain"
          data-part="to-card"
          onClick={() => {
            putting.value = true;
          }}
        >
          Put on the card
        </button>
      </div>
      <p role="status">{answer.value}</p>
      {byHand.value !== undefined && (
        <textarea
          class="field lines"
          aria-label="The result as text"
          readOnly
          rows={8}
          value={byHand.value}
        />
      )}
      {printing.value && (
        <Sheet
          title={`${reckoning.name}, at true size`}
          onClose={() => {
            printing.value = false;
          }}
        >
          <Print name={reckoning.name} sheets={sheets} headed />
        </Sheet>
      )}
      {putting.value && (
        <Sheet
          title="Put on the card"
          onClose={() => {
            putting.value = false;
          }}
        >
          <PutOnCard
            title={reckoning.name}
            reckoning={reckoning.id}
            entries={written.entries}
            figures={cardFigures(reckoned, marking)}
          />
        </Sheet>
      )}
    </section>
  );
}

const printPart = signal<typeof PrintPaper | undefined>(undefined);

/** What lays the pages, fetched when it is first wanted. */
function Print(props: PrintPaperProps) {
  const failed = useSignal(false);
  useEffect(() => {
    if (printPart.value) return;
    import('../paper/print.tsx').then(
      (part) => {
        printPart.value = part.PrintPaper;
      },
      () => {
        failed.value = true;
      },
    );
  }, []);
  const Pages = printPart.value;
  if (Pages) return <Pages {...props} />;
  return (
    <p role="status">
      {failed.value
        ? 'What lays the pages could not be read. Load the page again; what you have written stays.'
        : 'Laying it out…'}
    </p>
  );
}
