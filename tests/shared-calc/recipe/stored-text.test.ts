import { describe, expect, test } from 'vitest';
import { storedText } from '#shared-calc/recipe/stored-text.ts';

const litter = { unit: 'mm' };

describe('storedText', () => {
  test.each([
    ['12,5 mm', '12.5 mm'],
    ['12,5', '12.5'],
    ['8.000,5', '8000.5'],
    ['12.5 mm', '12.5 mm'],
    ['drainage / 2,5', 'drainage / 2,5'],
  ])('where the comma is set, %s is kept as %s', (typed, kept) => {
    expect(storedText(typed, litter, true)).toEqual({ ok: true, value: kept });
  });

  test('where the comma is set, 8.000 may be eight or eight thousand: it is asked for', () => {
    expect(storedText('8.000', litter, true)).toEqual({ ok: false, fault: { kind: 'two-readings', text: '8.000' } });
  });

  test('where the point is set, and in a choice, nothing is touched', () => {
    expect([storedText('8,000', litter, false), storedText('a,b', { unit: 'choice' }, true)]).toEqual([
      { ok: true, value: '8,000' },
      { ok: true, value: 'a,b' },
    ]);
  });
});
