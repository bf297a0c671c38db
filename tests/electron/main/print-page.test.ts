import { describe, expect, test, vi } from 'vitest';
import { pdfName, pdfOptions } from '#electron/main/print-page.ts';

vi.mock('electron', () => import('./stand-in-shell.ts'));

describe('pdfName', () => {
  test.each([
    ['Quote Q-0007, revision A, J07 Weir Hotel, stairwell', 'Quote Q-0007 revision A J07 Weir Hotel stairwell.pdf'],
    ['Tank book, Loamwright', 'Tank book.pdf'],
    ['../../etc/passwd', 'etc passwd.pdf'],
    ['', 'Loamwright.pdf'],
  ])('%s', (title, name) => {
    expect(pdfName(title)).toBe(name);
  });
});

describe('pdfOptions', () => {
  test('the workshop’s paper comes first, then that of the country', () => {
    const of = (country: string) => [pdfOptions(country).preferCSSPageSize, pdfOptions(country).pageSize];
    expect([of('US'), of('GB'), of('')]).toEqual([
      [true, 'Letter'],
      [true, 'A4'],
      [true, 'A4'],
    ]);
  });
});
