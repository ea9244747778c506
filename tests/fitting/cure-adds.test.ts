import { describe, expect, it } from 'vitest';
import { addsOf } from '../../src/fitting/cure-adds.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import { saw } from './at-a-try-on.ts';
import { demoGarment } from './demo-garments.ts';

const { garment } = demoGarment('harbour-clockmaker', 'hose');
const roles = rolesOf(garment);
const low = saw('hose', 'crotch-low');
const slips = { observation: 'crotch-low', cause: 'slipping-waist' };

describe('what is sewn in besides', () => {
  it('is a work of its own on the piece that it is for, with its steps', () => {
    const [added, ...more] = addsOf(garment, roles, [low], [slips]);
    expect(more).toEqual([]);
    expect(added?.garment).toBe('hose');
    expect(added?.work).toMatchObject({
      kind: 'own',
      id: 'put-right-slipping-waist',
      on: 'thigh',
      when: 'late',
    });
    expect(added?.work.kind === 'own' && added.work.steps.length).toBeGreaterThan(0);
  });

  it('is sewn in once, however often it is asked for', () => {
    const again = { ...low, id: 'again' };
    expect(addsOf(garment, roles, [low, again], [slips, { ...slips, observation: 'again' }])).toHaveLength(1);
  });

  it('has an id that nothing in the garment has', () => {
    const [first] = addsOf(garment, roles, [low], [slips]);
    const sewn = { ...garment, works: [...garment.works, first!.work] };
    expect(addsOf(sewn, roles, [low], [slips])[0]?.work.id).toBe('put-right-slipping-waist-2');
  });

  it('is nothing where a piece changes instead', () => {
    expect(addsOf(garment, roles, [low], [{ ...slips, cause: 'long-rise' }])).toEqual([]);
  });
});
