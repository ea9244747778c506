import { describe, expect, test } from 'vitest';
import { appliqueOnMesh } from '../../../src/outfit/units/applique-on-mesh.ts';
import { lanternSleeve } from '../../../src/outfit/units/lantern-sleeve.ts';
import { outlineArea } from '../../../src/shape/measure.ts';
import { order } from '../../order/make.ts';
import { bare, faults, forcedPairs, measured, put } from './bodies.ts';

const sleeve = put(bare(measured), lanternSleeve, {
  id: 'sleeve',
  name: 'Sleeve',
  cloths: { main: 'mesh', lower: 'mesh' },
}).outfit;
const called = { id: 'leaves', name: 'Leaves', at: { piece: ['sleeve'] }, cloths: { main: 'taffeta' } };
const steps = (entries: Readonly<Record<string, string>>) => {
  const work = put(sleeve, appliqueOnMesh, { ...called, entries }).built.works[0];
  if (work?.kind !== 'own') throw new Error('no steps');
  return work.steps;
};

describe('appliqué on mesh', () => {
  test('is backed, basted, stitched, trimmed and covered, and only then freed of its backing', () => {
    const said = steps({}).map(({ say }) => say);
    const places = ['Mark', 'backing under', 'baste each', 'straight stitch', 'Trim', 'zigzag', 'Tear'].map(
      (word) => said.findIndex((say) => say.includes(word)),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).not.toContain(-1);
  });

  test('asks for care where blades come near the mesh, and cuts nothing twice', () => {
    const [motifs, ...cuts] = steps({ backing: 'cut', mesh: 'cut' }).filter(
      ({ station }) => station === 'cut',
    );
    // The cutting card has one of each side.
    expect(motifs?.say).toBe('Cut 4 more of the motif, half of them turned over: 6 in all');
    expect(steps({ motifs: '1' })[0]?.say).toMatch(/^Mark/);
    expect(cuts).toHaveLength(3);
    for (const { final, say } of cuts) {
      expect(final).toBe(true);
      expect(say).toMatch(/blades|scissors/);
    }
    expect(steps({ mesh: 'kept' }).filter(({ station }) => station === 'cut')).toHaveLength(2);
  });

  test('dries before anything is done to it where the backing is washed out', () => {
    const { outfit } = put(sleeve, appliqueOnMesh, { ...called, entries: { backing: 'wash' } });
    expect(
      order(outfit).constraints.some(
        ({ before, wait: rest }) => before.includes('leaves-work') && rest === 240 * 60,
      ),
    ).toBe(true);
  });

  test('is done while the piece lies flat', () => {
    expect(
      forcedPairs(
        put(sleeve, appliqueOnMesh, called).outfit,
        ['leaves-work/own-9', 'sleeve-widest/pin'],
        ['leaves-work/own-9', 'sleeve-seam/pin'],
      ),
    ).toEqual([]);
  });

  test('draws an oval of the size given for the motif', () => {
    const { built } = put(sleeve, appliqueOnMesh, { ...called, entries: { wide: '80 mm', high: '120 mm' } });
    expect(outlineArea(built.pieces[0]!.outline)).toBeCloseTo((Math.PI / 4) * 80 * 120, -1);
    expect(built.advice[0]!.say).toContain('Cut 6 motifs');
  });

  test('says what cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>) =>
      faults(sleeve, appliqueOnMesh, { ...called, entries })[0]?.split(':')[0];
    expect(fault({ motifs: '0' })).toBe('motifs');
    expect(fault({ wide: '0' })).toBe('wide');
    expect(fault({ spare: '0' })).toBe('spare');
  });
});
