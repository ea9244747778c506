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
  }, 30_000); // a leg is drafted anew for every slip in each of its many fields
});

describe('on the screen of the legs', () => {
  const typed = (field: string): HTMLInputElement =>
    document.querySelector<HTMLInputElement>(`[data-field="${field}"] input`)!;

  test('a measure typed in one stands in the others', () => {
    takeRule('in');
    const leg = render(<Reckoner reckoning="stretch-leg" />);
    fireEvent.input(typed('knee'), { target: { value: '15' } });
    leg.unmount();
    for (const id of ['leg-in-two-cloths', 'frills-on-a-leg']) {
      const other = render(<Reckoner reckoning={id} />);
      expect(typed('knee').value).toBe('15');
      other.unmount();
    }
  });

  test('what a card laid out stands in the others as soon as it is seen', () => {
    takeRule('in');
    const laid = { unit: 'in', entries: { knee: '16', first: '3' }, before: {} };
    localStorage.setItem('slipbaste.reckoner.frills-on-a-leg', JSON.stringify(laid));
    const frills = render(<Reckoner reckoning="frills-on-a-leg" />);
    expect([typed('knee').value, typed('first').value]).toEqual(['16', '3']);
    frills.unmount();
    render(<Reckoner reckoning="stretch-leg" />);
    expect(typed('knee').value).toBe('16');
  });
});

describe('folded away', () => {
  const fold = (part: string) => document.querySelector<HTMLDetailsElement>(`[data-part="${part}"]`)!;

  test('fields with a usual answer are named, and open by themselves only at a fault', () => {
    takeRule('in');
    const { container } = render(<Reckoner reckoning="gathered-frill" />);
    const more = fold('more-fields');
    expect(more.open).toBe(false);
    expect(more.querySelector('summary')!.textContent).toContain('seam allowance 1/2 in');
    const allowance = container.querySelector<HTMLInputElement>('[data-field="allowance"] input')!;
    expect(more.contains(allowance)).toBe(true);
    fireEvent.input(allowance, { target: { value: '3/8' } });
    expect(more.querySelector('summary')!.textContent).toContain('seam allowance 3/8 in');
    fireEvent.input(allowance, { target: { value: 'x' } });
    expect(more.open).toBe(true);
  });

  test('eight figures are open, and the rest is one touch away', () => {
    takeRule('in');
    const { container } = render(<Reckoner reckoning="stretch-leg" />);
    const made = RECKONINGS.find(({ id }) => id === 'stretch-leg')!.reckon({}, 'in');
    if (!made.ok) throw new Error('It works from its starting values.');
    const more = fold('more-figures');
    const rest = more.querySelectorAll('dt').length;
    expect(container.querySelectorAll('[data-part="figures"] > dl dt')).toHaveLength(7);
    expect(rest).toBe(made.value.figures.length - 8);
    expect(more.querySelector('summary')!.textContent).toBe(`${rest} more figures`);
  });

  test('a choice of many is a list', () => {
    const { container } = render(<Reckoner reckoning="thread-for-a-seam" />);
    const stitch = container.querySelector<HTMLSelectElement>('[data-field="type"] select')!;
    const before = container.querySelector('[data-part="main-figure"]')!.textContent;
    fireEvent.change(stitch, { target: { value: stitch.options[stitch.options.length - 1]!.value } });
    expect(container.querySelector('[data-part="main-figure"]')!.textContent).not.toBe(before);
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
