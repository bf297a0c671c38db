import { describe, expect, test } from 'vitest';
import { windowTitle } from '#electron/main/window-title.ts';

describe('windowTitle', () => {
  test.each([
    ['Size bench, Youth club, Loamwright', 'Size bench, Youth club, Ferry hall - Loamwright'],
    ['Quote Q-0007, revision A, J07 Weir Hotel', 'Quote Q-0007, revision A, J07 Weir Hotel, Ferry hall - Loamwright'],
    ['Loamwright', 'Ferry hall - Loamwright'],
    ['', 'Ferry hall - Loamwright'],
  ])('%s', (page, title) => {
    expect(windowTitle(page, '/books/Ferry hall.loamwright')).toBe(title);
  });
});
