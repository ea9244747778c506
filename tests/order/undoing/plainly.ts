import type { Running } from '../../../src/order/running-types.ts';
import { crossings, type Looked, lookUp, piecesOf } from '../../../src/outfit/chains.ts';
import type { Chain, EdgeRef, Garment, Join, Outfit } from '../../../src/outfit/outfit.ts';

/**
 * The steps that are done again, found plainly: everything is gone through again and again until nothing new is found.
 * Only for pieces that are cut anew on both sides, and without the gathering rows of opened seams.
 */
export function againPlainly(
  outfit: Outfit,
  running: Running,
  pieces: readonly { readonly garment: string; readonly piece: string }[],
  done: readonly string[],
): ReadonlySet<string> {
  const isDone = new Set(done);
  const again = new Set<string>();
  for (const garment of outfit.garments) {
    const isCut = (piece: string) =>
      isDone.has(`${garment.id}/cut-${garment.pieces.find(({ id }) => id === piece)?.cloth}/cut`);
    const anew = new Set(
      pieces
        .filter((one) => one.garment === garment.id)
        .map(({ piece }) => piece)
        .filter(isCut),
    );
    if (anew.size === 0) continue;
    for (let size = -1; size !== anew.size + again.size; ) {
      size = anew.size + again.size;
      round(garment, lookUp(garment), running, anew, isDone, again);
    }
  }
  return again;
}

function round(
  garment: Garment,
  looked: Looked,
  running: Running,
  anew: Set<string>,
  isDone: ReadonlySet<string>,
  again: Set<string>,
): void {
  const steps = [...running.steps.values()].filter(
    (step) => step.garment === garment.id && isDone.has(step.id),
  );
  const of = (id: string) => steps.filter((step) => step.of.id === id);
  const altered = (ref: EdgeRef) => anew.has(ref.piece);
  const along = (join: Join) =>
    [...join.this, ...join.to, ...join.catches.map(({ trim }) => trim)].some(altered);
  const whole = (join: Join) =>
    join.this.every(altered) || join.to.every(altered) || join.catches.some(({ trim }) => altered(trim));
  const lifted = (join: Join) =>
    join.seam === 'laid-on' &&
    garment.joins.some(
      (under) =>
        under.seam !== 'laid-on' &&
        of(under.id).length > 0 &&
        whole(under) &&
        [...under.this, ...under.to].some((a) =>
          [...join.this, ...join.to].some((b) => a.piece === b.piece && a.edge === b.edge),
        ),
    );
  const opened = (join: Join) => of(join.id).length > 0 && (along(join) || lifted(join));
  const crossed = (chain: Chain, ring: boolean, id: string) =>
    crossings(looked, chain, ring, id).some(({ from, to, over }) =>
      over.some(
        (under) =>
          opened(under) &&
          [...under.this, ...under.to].some(
            (ref) =>
              (whole(under) || lifted(under) || altered(ref)) &&
              [from, to].some(
                (end) =>
                  end.piece === ref.piece &&
                  looked.beside.get(`${ref.piece}.${ref.edge}`)?.includes(end.edge),
              ),
          ),
      ),
    );
  for (const join of garment.joins) {
    const over = crossed(join.this, join.ring, join.id) || crossed(join.to, join.ring, join.id);
    for (const step of of(join.id)) {
      const trim = /^baste-trim-?(\d*)$/.exec(step.action);
      const caught = trim && join.catches[Number(trim[1] || 1) - 1];
      const needed = caught
        ? altered(caught.trim) || join[caught.basteTo].some(altered)
        : opened(join) ||
          (over && !step.final) ||
          (step.action === 'cover' && join.cover !== undefined && altered(join.cover));
      if (needed) again.add(step.id);
      if (needed && step.final && join.seam === 'turned' && join.worked !== 'round')
        for (const piece of piecesOf(join)) anew.add(piece);
    }
  }
  for (const work of garment.works) {
    const chain = work.kind === 'hem' || work.kind === 'casing' ? work : undefined;
    for (const step of of(work.id)) {
      if (step.action === 'sample') continue;
      const needed = chain
        ? chain.along.some(altered) ||
          (step.action !== 'elastic' && crossed(chain.along, chain.ring, work.id))
        : step.pieces.some((piece) => anew.has(piece));
      if (needed) again.add(step.id);
      if (needed && step.final) for (const piece of step.pieces) anew.add(piece);
    }
  }
  for (const piece of anew) for (const step of of(`outline-${piece}`)) again.add(step.id);
  for (const gate of garment.gates) {
    const fit = of(gate.id).find((step) => step.action === 'fit');
    if (!fit) continue;
    const open = (id: string) =>
      garment.joins.some((join) => join.id === id && opened(join)) ||
      garment.works.some(
        (work) =>
          work.id === id &&
          'along' in work &&
          work.kind !== 'buttonholes' &&
          work.along.some(altered) &&
          of(id).length > 0,
      );
    const seen = of(gate.id).some((step) => step.pieces.some((piece) => anew.has(piece)));
    if (!seen && ![...gate.after, ...gate.tack].some(open)) continue;
    again.add(fit.id);
    if (gate.tack.some(open)) for (const step of of(gate.id)) again.add(step.id);
  }
}
