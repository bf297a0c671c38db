import { describe, expect, test } from 'vitest';
import { keptText } from '#shared-calc/recipe/kept-text.ts';

const litter = { unit: 'mm' };

describe('keptText', () => {
  test.each([
    ['12,5 mm', '12.5 mm'],
    ['12,5', '12.5'],
    ['8.000,5', '8000.5'],
    ['12.5 mm', '12.5 mm'],
    ['drainage / 2,5', 'drainage / 2,5'],
  ])('where the comma is set, %s is kept as %s', (typed, kept) => {
    expect(keptText(typed, litter, true)).toEqual({ ok: true, value: kept });
  });

  test('where the comma is set, 8.000 may be eight or eight thousand: it is asked for', () => {
    expect(keptText('8.000', litter, true)).toEqual({ ok: false, fault: { kind: 'two-readings', text: '8.000' } });
  });

  test('where the point is set, and in a choice, nothing is touched', () => {
    expect([keptText('8,000', litter, false), keptText('a,b', { unit: 'choice' }, true)]).toEqual([
      { ok: true, value: '8,000' },
      { ok: true, value: 'a,b' },
    ]);
  });
});
