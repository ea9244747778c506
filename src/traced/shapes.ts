import { numbersIn, unitsOf } from './matrix.ts';

/** What a basic shape looks like as path data; nothing where its figures cannot be read, or it has no size. */
export function shapeData(shape: Element): string | undefined {
  const get = (name: string): number => unitsOf(shape.getAttribute(name));
  const sound = (...figures: readonly number[]): boolean => figures.every(Number.isFinite);
  switch (shape.localName) {
    case 'path':
      return shape.getAttribute('d') ?? '';
    case 'rect': {
      const [x, y, w, h] = [get('x'), get('y'), get('width'), get('height')];
      const [a, b] = [shape.getAttribute('rx'), shape.getAttribute('ry')];
      const [rx, ry] = [Math.min(unitsOf(a ?? b), w / 2), Math.min(unitsOf(b ?? a), h / 2)];
      if (!sound(x, y, w, h, rx, ry) || w <= 0 || h <= 0) return undefined;
      if (rx <= 0 || ry <= 0) return `M${x} ${y}H${x + w}V${y + h}H${x}Z`;
      const arc = (to: string): string => `A${rx} ${ry} 0 0 1 ${to}`;
      return (
        `M${x + rx} ${y}H${x + w - rx}${arc(`${x + w} ${y + ry}`)}V${y + h - ry}${arc(`${x + w - rx} ${y + h}`)}` +
        `H${x + rx}${arc(`${x} ${y + h - ry}`)}V${y + ry}${arc(`${x + rx} ${y}`)}Z`
      );
    }
    case 'circle':
    case 'ellipse': {
      const [x, y] = [get('cx'), get('cy')];
      const [rx, ry] = shape.localName === 'circle' ? [get('r'), get('r')] : [get('rx'), get('ry')];
      if (!sound(x, y, rx, ry) || rx <= 0 || ry <= 0) return undefined;
      return `M${x - rx} ${y}A${rx} ${ry} 0 0 1 ${x + rx} ${y}A${rx} ${ry} 0 0 1 ${x - rx} ${y}Z`;
    }
    case 'line': {
      const [a, b, c, d] = [get('x1'), get('y1'), get('x2'), get('y2')];
      return sound(a, b, c, d) ? `M${a} ${b}L${c} ${d}` : undefined;
    }
    default: {
      const points = numbersIn(shape.getAttribute('points') ?? '');
      if (!points || points.length < 4) return undefined;
      const end = shape.localName === 'polygon' ? 'Z' : '';
      return `M${points.slice(0, points.length - (points.length % 2)).join(' ')}${end}`;
    }
  }
}
