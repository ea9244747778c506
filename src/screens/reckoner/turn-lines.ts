import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { turnLength } from './turn-length.ts';

/** Between how many, across and along. */
const BETWEEN = /(\s*[x×*]\s*|\s+by\s+)/i;

/** A size and the words after it, the size turned. */
function turnSize(text: string, from: ReadingUnit, to: ReadingUnit): string {
  // Words at the even places, the blanks between them at the odd.
  const parts = text.split(/(\s+)/);
  for (let n = parts.length; n > 0; n -= 2) {
    const head = parts.slice(0, n).join('');
    const [, size = '', comma = ''] = /^(.*?)([,;:]?)$/s.exec(head) ?? [];
    if (size.trim() === '' || !readLength(size, from).ok) continue;
    return turnLength(size, from, to) + comma + parts.slice(n).join('');
  }
  return text;
}

function turnLine(line: string, from: ReadingUnit, to: ReadingUnit): string {
  const [many, first, across, second, ...rest] = line.split(BETWEEN);
  if (many === undefined || first === undefined || across === undefined || second === undefined) return line;
  return many + first + turnSize(across, from, to) + second + turnSize(rest.join(''), from, to);
}

/** Lines of sizes, `2 x 12 x 24 front`, as they must stand under another rule to mean the same. */
export const turnLines = (text: string, from: ReadingUnit, to: ReadingUnit): string =>
  text
    .split('\n')
    .map((line) => turnLine(line, from, to))
    .join('\n');
