import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { setAbout } from '../../../src/outfit/changing/whole.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import { changesBetween } from '../../../src/store/changes-between.ts';
import type { Act } from '../../../src/store/deed.ts';
import { clearDesks, desk, shirt } from './desk.ts';
import { PageAt } from './pages.tsx';

afterEach(() => {
  cleanup();
  clearDesks();
});

/** The shirt renamed, as a device writes it that knows of no other change. */
const renamed = (name: string): Act => ({
  kind: 'redescribed',
  say: `called it ${name}`,
  changes: changesBetween(writeOutfit(shirt), writeOutfit(setAbout(shirt, { name }))),
});

describe('what two devices changed at the same place', () => {
  test('is named on the page of the outfit until it has been seen, and the earlier change counts', async () => {
    const { session, outfit } = desk(shirt, renamed('Best shirt'), renamed('Old shirt'));
    render(<PageAt session={session} at="" />);
    const notice = screen.getByRole('status');
    expect(notice.textContent).toContain('called it Old shirt');
    expect(notice.textContent).not.toContain('called it Best shirt');
    expect(outfit().name).toBe('Best shirt');
    fireEvent.click(screen.getByRole('button', { name: 'I have seen this' }));
    await session.settled();
    expect(document.querySelector('[data-part="left-out"]')).toBeNull();
    expect(outfit().name).toBe('Best shirt');
  });

  test('is not spoken of where all went together', () => {
    const { session } = desk(shirt, renamed('Best shirt'));
    render(<PageAt session={session} at="" />);
    expect(document.querySelector('[data-part="left-out"]')).toBeNull();
  });
});
