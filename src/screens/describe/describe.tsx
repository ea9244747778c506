/** What the outfit is: the description, from the whole down to an edge. Each page shows one thing and changes it. */
import { later } from '../later.tsx';
import type { Session } from '../session.ts';
import { AboutPage } from './about-page.tsx';
import { ClothsPage } from './cloths-page.tsx';
import { EdgePage } from './edge-page.tsx';
import { EffectSheet } from './effect-sheet.tsx';
import { GarmentPage } from './garment-page.tsx';
import { JoinPage } from './join-page.tsx';
import { OverviewPage } from './overview-page.tsx';
import { PiecePage } from './piece-page.tsx';
import { TryOnPage } from './try-on-page.tsx';
import { UnitPage } from './unit-page.tsx';
import { UnitsPage } from './units-page.tsx';
import { WearerPage } from './wearer-page.tsx';
import { WorkPage } from './work-page.tsx';
import '../reckoner/reckoner.css';
import './describe.css';

/** What every page of the description is handed. */
export interface PageProps {
  readonly session: Session;
}
/** A page about a garment. */
export interface GarmentProps extends PageProps {
  readonly garment: string;
}
/** A page about a part of a garment; a new one where no id is given. */
export interface PartProps extends GarmentProps {
  readonly part: string | undefined;
}

// It brings a library with it, and most outfits do without.
const TracePage = later<GarmentProps>(() => import('./trace-page.tsx'));

/**
 * The pages by their address: `about`; `cloths`; `wearer[/<id>]`; `garment/<id>` and under it `add`, `add/<unit>` with
 * an edge that it is meant for or without, `edge/<edge>` for one that is still raw, `unit/<id>`, and `piece`, `work`, `join`, `try-on`, each with an id or, for a new one, without; `trace`.
 */
export default function Describe({ session, at }: PageProps & { readonly at: readonly string[] }) {
  return (
    <>
      <Page session={session} at={at} />
      <EffectSheet session={session} />
    </>
  );
}

function Page({ session, at }: PageProps & { readonly at: readonly string[] }) {
  const [what, id, kind, part, edge] = at;
  // Each form keeps what was written under its own address, so a page is never shared between two of them.
  const key = at.join('/');
  if (what === 'about') return <AboutPage session={session} />;
  if (what === 'cloths') return <ClothsPage session={session} />;
  if (what === 'wearer') return <WearerPage key={key} session={session} wearer={id} />;
  if (what !== 'garment' || id === undefined) return <OverviewPage session={session} />;
  const props = { key, session, garment: id };
  switch (kind) {
    case 'add':
      return part === undefined ? (
        <UnitsPage {...props} />
      ) : (
        <UnitPage {...props} unit={part} part={undefined} edge={edge} />
      );
    case 'edge':
      return <EdgePage {...props} part={part} />;
    case 'unit':
      return <UnitPage {...props} unit={undefined} part={part} />;
    case 'piece':
      return <PiecePage {...props} part={part} />;
    case 'work':
      return <WorkPage {...props} part={part} />;
    case 'join':
      return <JoinPage {...props} part={part} />;
    case 'try-on':
      return <TryOnPage {...props} part={part} />;
    case 'trace':
      return <TracePage {...props} />;
    default:
      return <GarmentPage {...props} />;
  }
}
