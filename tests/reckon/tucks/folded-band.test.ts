import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { foldedBand } from '../../../src/reckon/tucks/folded-band.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('a folded band', () => {
  test('half an inch and an inch, from the cut edge', () => {
    const given = reckoned(foldedBand);
    expect(figures(given)).toEqual({
      'Add beyond the finished edge': inches(3, 2),
      'Cut edge to centre front': inches(2),
      'Finished band': inches(1),
      'Fronts lie over each other': inches(1),
      'Centre front to stitching': inches(3, 8),
    });
    expect(places(given)).toEqual([inches(1, 2), inches(3, 2), inches(2), inches(19, 8), inches(5, 2)]);
  });

  test('the centre front elsewhere, in millimetres', () => {
    const found = figures(reckoned(foldedBand, { lap: '10' }, 'mm'));
    expect(found['Cut edge to centre front']).toBe(mm(47));
    expect(found['Fronts lie over each other']).toBe(mm(20));
    expect(found['Centre front to stitching']).toBe(mm(12));
  });

  test.each([
    [{ firstTurn: '0' }, 'firstTurn'],
    [{ firstTurn: '2' }, 'firstTurn'],
    [{ secondTurn: '0' }, 'secondTurn'],
    [{ stitchIn: '0' }, 'stitchIn'],
    [{ stitchIn: '3/4' }, 'stitchIn'],
    [{ lap: '0' }, 'lap'],
    [{ lap: '1' }, 'lap'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(foldedBand, entries)).toEqual([field]);
  });
});
