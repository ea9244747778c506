import { describe, expect, it } from 'vitest';
import { spell } from '../../src/outfit/chains.ts';
import { rawEdges } from '../../src/outfit/raw-edges.ts';
import { gate, join, outfit, pair, piece, work } from '../order/make.ts';
import { demo } from './demo-files.ts';
import { garmentOf } from './units/worn.ts';

const raw = (of: Parameters<typeof rawEdges>[0]): readonly string[] => rawEdges(of).map(spell);

describe('edges that are still raw', () => {
  const front = pair('front', 'shoulder side hem opening');
  const back = piece('back', 'shoulder side hem', { cut: 'fold' });
  const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder');

  it('are those in no seam, without the fold', () => {
    const made = outfit({ pieces: [front, back], joins: [shoulder], gates: [gate('try', 'shoulder')] });
    expect(raw(made.garments[0]!)).toEqual([
      'front.side',
      'front.hem',
      'front.opening',
      'back.side',
      'back.hem',
    ]);
  });

  it('are fewer once they are hemmed, bound, or finished by steps of the maker’s own', () => {
    const steps = [{ say: 'Turn the opening in and stitch it', station: 'machine', minutes: 5 }];
    const made = outfit({
      pieces: [front, back],
      works: [
        work('hem', 'hem', 'front', { along: ['front.hem'], turn: '20 mm', by: 'hand' }),
        work('bind-edge', 'binding', 'back', { edge: 'hem', strip: '30 mm' }),
        work('own', 'opening', 'front', { when: 'flat', steps, finishes: ['front.opening'] }),
      ],
      joins: [shoulder, join('side', 'front.side', 'back.side')],
    });
    expect(raw(made.garments[0]!)).toEqual([]);
  });

  it('are not the inner layer of a collar, nor the short end that is folded in with a band', () => {
    const [shirt] = demo('plain-shirt').garments;
    const edges = raw(shirt!);
    expect(edges).not.toContain('collar-upper.neck');
    expect(edges).not.toContain('front.lap');
  });

  it('tell a maker what a blouse still wants', () => {
    const [blouse] = garmentOf([
      { unit: 'plain-front', name: 'Front' },
      { unit: 'plain-back', name: 'Back' },
      { unit: 'button-band', name: 'Band' },
    ]).garments;
    expect(raw(blouse!)).toEqual([
      'front.neck',
      'front.armhole',
      'front.hem',
      'back.neck',
      'back.armhole',
      'back.hem',
    ]);
  });
});
