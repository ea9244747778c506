import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { STILL } from '../../src/traced/matrix.ts';
import { pathLines } from '../../src/traced/path-lines.ts';
import { shapeData } from '../../src/traced/shapes.ts';

const data = (shape: string): string | undefined =>
  shapeData(new DOMParser().parseFromString(shape, 'image/svg+xml').documentElement as unknown as Element);

describe('basic shapes as path data', () => {
  it('are what the shapes are', () => {
    expect(data('<rect x="1" y="2" width="3" height="4"/>')).toBe('M1 2H4V6H1Z');
    expect(data('<line x1="1" x2="3" y2="4"/>')).toBe('M1 0L3 4');
    expect(data('<polygon points="0,0 5,0,5,5"/>')).toBe('M0 0 5 0 5 5Z');
    expect(data('<polyline points="0 0 5 0 5 5 9"/>')).toBe('M0 0 5 0 5 5');
    expect(data('<path d="M0 0"/>')).toBe('M0 0');
    expect(data('<rect width="1in" height="2"/>')).toMatch(/^M0 0H9[56]\b/);
  });

  it('have their corners rounded as far as there is room', () => {
    const [run] = pathLines(data('<rect width="20" height="10" rx="30"/>')!, STILL, 99)!;
    // Both straight sides are used up: two half ellipses of four arcs.
    expect(run!.segments.filter(({ kind }) => kind === 'curve')).toHaveLength(4);
    expect(run!.closed).toBe(true);
    expect(data('<rect width="20" height="10" ry="2"/>')).toContain('A2 2 0 0 1');
  });

  it('are nothing without a size, or with figures that are none', () => {
    for (const shape of [
      '<rect width="0" height="4"/>',
      '<rect width="5%" height="4"/>',
      '<circle r="-1"/>',
      '<ellipse rx="4"/>',
      '<line x1="a"/>',
      '<polygon points="1 2"/>',
      '<polygon/>',
    ])
      expect(data(shape)).toBeUndefined();
  });
});
