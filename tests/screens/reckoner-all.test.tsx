import { cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { RECKONINGS } from '../../src/reckon/all.ts';
import { units } from '../../src/screens/choices.ts';
import Reckoner from '../../src/screens/reckoner/reckoner.tsx';
import { takeRule } from '../../src/screens/reckoner/rule.ts';
import { plainText } from '../../src/screens/reckoner/words.ts';

beforeEach(() => localStorage.clear());
afterEach(() => {
  cleanup();
  units.value = 'outfit';
  vi.unstubAllGlobals();
});

const slips = /undefined|NaN|Infinity|\[object/;

describe.each(RECKONINGS.map((one) => [one.id, one] as const))('%s', (id, reckoning) => {
  test.each(['in', 'mm'] as const)('stands complete at its starting values, in %s', (unit) => {
    takeRule(unit);
    const { container } = render(<Reckoner reckoning={id} />);
    expect(container.querySelectorAll('[data-part="fault"]')).toHaveLength(0);
    expect(container.querySelectorAll('[data-field]')).toHaveLength(Object.keys(reckoning.fields).length);
    expect(container.querySelector('[data-part="main-figure"] :is(.figure, .figure-words)')).toBeTruthy();
    expect(container.querySelector('[data-part="sheet-drawing"] path')).toBeTruthy();
    expect(container.innerHTML).not.toMatch(slips);
    // Every field has a name of its own for those who hear the page.
    const names = [...container.querySelectorAll('[data-field] > :is(label, legend)')].map(
      (l) => l.textContent,
    );
    expect(names).toHaveLength(Object.keys(reckoning.fields).length);
    expect(new Set(names).size).toBe(names.length);
  });

  test('is copied without a slip, and again by the other rule', () => {
    for (const unit of ['in', 'mm'] as const) {
      const marking = unit === 'in' ? ({ unit, per: 16 } as const) : ({ unit, step: 0.5 } as const);
      const made = reckoning.reckon({}, unit);
      if (!made.ok) throw new Error(made.error.map(({ say }) => say).join(' '));
      const text = plainText({ reckoning, written: { unit, entries: {} }, reckoned: made.value, marking });
      expect(text.startsWith(`${reckoning.name}\n\n`)).toBe(true);
      expect(text).not.toMatch(slips);
      expect(text).toMatch(/\nFrom: /);
    }
  });

  test('takes any slip of the finger in any field, and says so there or goes on', () => {
    takeRule('in');
    const { container } = render(<Reckoner reckoning={id} />);
    for (const input of container.querySelectorAll<HTMLInputElement>('input.entry')) {
      const was = input.value;
      for (const slip of ['', '-', '3/', '0', '-4', '999999', '1e9', '🧵', '0.0001']) {
        fireEvent.input(input, { target: { value: slip } });
        expect(container.querySelector('[data-part="main-figure"]')).toBeTruthy();
        const stale = container.querySelector('.main-figure.stale') !== null;
        expect(container.querySelectorAll('[data-part="fault"]').length > 0).toBe(stale);
        expect(container.innerHTML).not.toMatch(slips);
      }
      fireEvent.input(input, { target: { value: was } });
    }
    expect(container.querySelector('.main-figure.stale')).toBeNull();
  });
});

describe('the rule at the first visit', () => {
  const first = async (language: string) => {
    vi.resetModules();
    vi.stubGlobal('navigator', { ...navigator, language });
    const { ruleInUse } = await import('../../src/screens/reckoner/rule.ts');
    return ruleInUse().unit;
  };

  test('is that of the place, until one is chosen here', async () => {
    expect(await first('en-US')).toBe('in');
    expect(await first('en-GB')).toBe('mm');
    expect(await first('de')).toBe('mm');
    localStorage.setItem('slipbaste.reckoner.rule', 'in');
    expect(await first('de')).toBe('in');
  });
});
