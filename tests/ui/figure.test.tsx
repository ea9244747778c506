import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { inches, mm } from '../../src/length/length.ts';
import { writeLength } from '../../src/length/writing.ts';
import { LengthFigure } from '../../src/ui/figure.tsx';

afterEach(cleanup);

const drawn = (container: Element) => ({
  text: container.querySelector('.unseen')?.textContent,
  whole: container.querySelector('.figure-whole')?.textContent,
  top: container.querySelector('.fraction-top')?.textContent,
  bottom: container.querySelector('.fraction-bottom')?.textContent,
  unit: container.querySelector('.figure-unit')?.textContent,
});

test('a fraction is stacked, and read as one text', () => {
  const { container } = render(
    <LengthFigure written={writeLength(inches(35, 8), { unit: 'in', per: 16 })} />,
  );
  expect(drawn(container)).toEqual({ text: '4 3/8 in', whole: '4', top: '3', bottom: '8', unit: 'in' });
});

test('a fraction alone has no nought before it, a whole inch no fraction', () => {
  const half = render(<LengthFigure written={writeLength(inches(1, 2), { unit: 'in', per: 16 })} />);
  expect(drawn(half.container)).toMatchObject({ whole: undefined, top: '1', bottom: '2' });
  half.unmount();
  const three = render(<LengthFigure written={writeLength(inches(3), { unit: 'in', per: 16 })} />);
  expect(drawn(three.container)).toMatchObject({ whole: '3', top: undefined });
});

test('millimetres keep their decimal', () => {
  const { container } = render(<LengthFigure written={writeLength(mm(111.5), { unit: 'mm', step: 0.5 })} />);
  expect(drawn(container)).toMatchObject({ text: '111.5 mm', whole: '111.5', unit: 'mm' });
});
