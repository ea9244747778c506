/**
 * Where the maker starts: what is in work, how to begin, and how to keep a copy outside the browser.
 *
 * What others may hold on to: `main[data-part="outfits"]`; buttons `Describe your own outfit` (its form is
 * `form[data-part="begin-own"]`), `Open the Harbour Clockmaker`, `Open the Glasshouse Astronomer` and `Open the plain shirt`; one `li[data-outfit]` an
 * outfit with the links `Go on`, `Order` and `Description` and `[data-part="save-copy"]`; the file field `[data-part="bring-in"]`; `[data-part="keeping"]`, `[data-part="missing"]`, `[data-part="install"]`.
 */
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { type Keeping, keepingNow, missingWork } from '../../store/keeping.ts';
import { SlipBasting } from '../../ui/heading-mark.tsx';
import { keep } from '../../ui/safe-storage.ts';
import { canShare } from '../../ui/share.ts';
import { ChoicesPanel } from '../choices-panel.tsx';
import { recallDraft } from '../describe/drafts.ts';
import { HouseNotice, HouseTrouble, trouble } from '../house.tsx';
import { go, writeHash } from '../route.ts';
import { ledger } from '../workroom.ts';
import { Answer } from './answer.tsx';
import { type BroughtIn, beginFrom, bringIn } from './bring-in.ts';
import { ByHand } from './by-hand.tsx';
import { copyWords, dayWords, type Listed, listed, readList } from './outfit-list.ts';
import './outfits.css';

const clockmaker = () => import('../../../demo-data/harbour-clockmaker.json');
const astronomer = () => import('../../../demo-data/glasshouse-astronomer.json');
const plainShirt = () => import('../../../demo-data/plain-shirt.json');

const onIos = (): boolean =>
  /iPad|iPhone|iPod/.test(navigator.userAgent) ||
  (/Mac/.test(navigator.userAgent) && navigator.maxTouchPoints > 1);
const onHomeScreen = (): boolean =>
  matchMedia('(display-mode: standalone)').matches ||
  ('standalone' in navigator && navigator.standalone === true);

/** The outfits page. */
export default function Outfits() {
  const answer = useSignal<BroughtIn | undefined>(undefined);
  const keeping = useSignal<Keeping | undefined>(undefined);
  const busy = useSignal(false);
  const chosen = useSignal('');
  const chooser = useRef<HTMLInputElement>(null);

  useEffect(() => {
    listed.value = listed.value?.map((line) => ({ ...line, copy: undefined }));
    ledger()
      .then(readList)
      .catch(() => {
        listed.value ??= [];
      });
    void keepingNow().then((found) => {
      keeping.value = found;
    });
  }, []);

  const settle = async (bringing: Promise<BroughtIn>, onward: boolean): Promise<void> => {
    busy.value = true;
    try {
      const found = await bringing;
      answer.value = found;
      if (found.ok && found.asked) go({ screen: 'outfit', outfit: found.outfit, at: [] });
      else if (found.ok && onward) go({ screen: 'bench', outfit: found.outfit });
      else if (found.ok) await readList(await ledger());
    } catch (error) {
      answer.value = { ok: false, say: error instanceof Error ? error.message : String(error) };
    } finally {
      busy.value = false;
    }
  };
  const demonstrate = (load: () => Promise<{ readonly default: unknown }>): void => {
    chosen.value = '';
    void settle(
      load().then((file) => beginFrom(file.default)),
      true,
    );
  };

  const own = useSignal<{ readonly Form: ComponentType } | undefined>(undefined);
  const beginOwn = (): void => {
    import('./begin-own.tsx').then(
      (part) => {
        own.value = { Form: part.default };
      },
      () => {
        trouble.value =
          'A part of the app could not be read. Load the page again when you are at a quiet moment.';
      },
    );
  };
  useEffect(() => {
    // What was begun and not handed in is there again.
    if (Object.values(recallDraft('own')).some((text) => text.trim() !== '')) beginOwn();
  }, []);

  const list = listed.value;
  const Own = own.value?.Form;
  const missing = list && missingWork(list.length);
  return (
    <main class="page" data-part="outfits">
      <h1 class="name">Slipbaste</h1>
      <SlipBasting />
      <HouseTrouble />
      {onIos() && !onHomeScreen() && (list?.length ?? 0) === 0 && (
        <p class="notice" data-part="install">
          <span>
            Put Slipbaste on your home screen before you begin: the share sign, then “Add to Home Screen”. The
            copy there and this page keep separate work.
          </span>
        </p>
      )}
      {missing !== undefined && (
        <p class="notice" role="alert" data-part="missing">
          <span>{missing}</span>
        </p>
      )}
      {list === undefined && <p>Opening the ledger…</p>}
      {list?.length === 0 && (
        <section class="begin">
          <p class="lead">
            Say what the outfit is, and Slipbaste works out the order of making, one card at a time, with
            every mark and count.
          </p>
          {Own ? (
            <Own />
          ) : (
            <button type="button" class="main big" onClick={beginOwn}>
              Describe your own outfit
            </button>
          )}
          <button
            type="button"
            class="plain big"
            disabled={busy.value}
            onClick={() => demonstrate(clockmaker)}
          >
            Open the Harbour Clockmaker
          </button>
          <p class="quiet">An invented costume, to try everything with.</p>
          <button type="button" class="plain" disabled={busy.value} onClick={() => demonstrate(astronomer)}>
            Open the Glasshouse Astronomer
          </button>
          <p class="quiet">A ballroom dress, invented too, put together from ready-made parts.</p>
          <button type="button" class="plain" disabled={busy.value} onClick={() => demonstrate(plainShirt)}>
            Open the plain shirt
          </button>
        </section>
      )}
      {list !== undefined && list.length > 0 && (
        <ul class="outfit-list">
          {list.map((line) => (
            <OutfitLine key={line.id} line={line} />
          ))}
        </ul>
      )}
      {list !== undefined &&
        list.length > 0 &&
        (Own ? (
          <Own />
        ) : (
          <button type="button" class="plain big" onClick={beginOwn}>
            Describe your own outfit
          </button>
        ))}
      <Answer
        found={answer.value}
        file={chosen.value}
        busy={busy.value}
        onTake={(take) => {
          void settle(take(), false);
        }}
        onAgain={() => chooser.current?.click()}
      />
      <section>
        <h2>Reckoner</h2>
        <a class="plain" href={writeHash({ screen: 'reckoner' })}>
          One thing by itself: tucks, frills, bias, legs
        </a>
        <a class="plain" href={writeHash({ screen: 'sources' })}>
          Where figures come from
        </a>
      </section>
      <section>
        <h2>Bring in a file</h2>
        <label class="bring-in">
          <span>A saved copy with its ledger, or an outfit described by hand.</span>
          <input
            type="file"
            ref={chooser}
            class="field"
            data-part="bring-in"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (file) {
                chosen.value = file.name;
                void settle(bringIn(file), false);
              }
              event.currentTarget.value = '';
            }}
          />
        </label>
        <ByHand />
      </section>
      {list !== undefined && list.length > 0 && (
        <section>
          <h2>Demonstrations</h2>
          <p class="quiet">All are invented.</p>
          <div class="choice">
            <button type="button" class="plain" disabled={busy.value} onClick={() => demonstrate(clockmaker)}>
              Open the Harbour Clockmaker
            </button>
            <button type="button" class="plain" disabled={busy.value} onClick={() => demonstrate(astronomer)}>
              Open the Glasshouse Astronomer
            </button>
            <button type="button" class="plain" disabled={busy.value} onClick={() => demonstrate(plainShirt)}>
              Open the plain shirt
            </button>
          </div>
        </section>
      )}
      <section>
        <h2>Your choices</h2>
        <ChoicesPanel />
      </section>
      <section>
        <h2>Your work on this device</h2>
        <p data-part="keeping">{keeping.value?.words}</p>
      </section>
      <HouseNotice />
    </main>
  );
}

function OutfitLine({ line }: { readonly line: Listed }) {
  const copy = copyWords(line, Date.now());
  const { outfit } = line;
  const nothing = outfit?.garments.every(({ pieces }) => pieces.length === 0) === true;
  return (
    <li class="outfit" data-outfit={line.id}>
      <h2>{line.name}</h2>
      <p>
        {outfit ? (
          <>
            {outfit.event.name}, {dayWords(outfit.event.date, new Date().toISOString().slice(0, 10))}
            {outfit.invented && <span class="quiet"> (invented)</span>}
          </>
        ) : (
          'The description cannot be read; open it to see why.'
        )}
      </p>
      {nothing ? (
        <p>Nothing to sew yet</p>
      ) : outfit && line.steps === 0 ? (
        <p>It cannot be sewn in any order yet: its order says why.</p>
      ) : (
        <p class="how-far">
          <progress
            class="string"
            value={line.done}
            max={Math.max(1, line.steps)}
            aria-label={`${line.name}, steps done`}
          >
            {line.done}
          </progress>
          <span>
            {line.done} of {line.steps} steps
          </span>
        </p>
      )}
      <div class="choice">
        {!nothing && (
          <a class="main" href={writeHash({ screen: 'bench', outfit: line.id })}>
            {line.done === 0 ? 'Begin' : 'Go on'}
            <span class="unseen"> with {line.name}</span>
          </a>
        )}
        <a class={nothing ? 'main' : 'plain'} href={writeHash({ screen: 'outfit', outfit: line.id, at: [] })}>
          {nothing ? 'Go on describing it' : 'Description'}
          <span class="unseen">: {line.name}</span>
        </a>
        {!nothing && (
          <a class="plain" href={writeHash({ screen: 'order', outfit: line.id })}>
            Order<span class="unseen"> of {line.name}</span>
          </a>
        )}
        <SaveCopy line={line} />
        {outfit && !nothing && (
          <a class="plain" href={writeHash({ screen: 'paper', outfit: line.id })}>
            Pattern sheets<span class="unseen"> of {line.name}</span>
          </a>
        )}
      </div>
      <p class={copy.nudge ? 'nudge' : 'quiet'}>
        {copy.words}
        {copy.nudge && ' A copy outside the browser is the only safe one.'}
      </p>
    </li>
  );
}

function SaveCopy({ line }: { readonly line: Listed }) {
  const href = useSignal<string | undefined>(undefined);
  const file = line.copy;
  useEffect(() => {
    if (!file || canShare(file)) return undefined;
    const url = URL.createObjectURL(file);
    href.value = url;
    return () => URL.revokeObjectURL(url);
  }, [file]);
  const saved = (): void => {
    const now = Date.now();
    keep(`saved.${line.id}`, `${now}:${line.deeds}`);
    listed.value = listed.value?.map((one) =>
      one.id === line.id ? { ...one, saved: { at: now, deeds: line.deeds } } : one,
    );
  };
  const name = <span class="unseen"> of {line.name}</span>;
  if (file && canShare(file)) {
    return (
      <button
        type="button"
        class="plain"
        data-part="save-copy"
        onClick={() => {
          // Turning away from the share sheet is no failure, and no copy either.
          navigator.share({ files: [file], title: line.name }).then(saved, () => {});
        }}
      >
        Save a copy{name}
      </button>
    );
  }
  return href.value === undefined ? (
    <button type="button" class="plain" data-part="save-copy" disabled>
      Making a copy{name}
    </button>
  ) : (
    <a class="plain" data-part="save-copy" href={href.value} download={file?.name} onClick={saved}>
      Save a copy{name}
    </a>
  );
}
