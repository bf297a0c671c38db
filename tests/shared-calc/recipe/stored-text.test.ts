import { describe, expect, test } from 'vitest';
import { storedText } from '#shared-calc/recipe/stored-text.ts';

const litter = { unit: 'mm' };

describe('storedText', () => {
  test.each([
    ['12,5 mm', true, '12.5 mm'],
    ['12,5', true, '12.5'],
    ['8.000,5', true, '8000.5'],
    ['1 250,5 mm', true, '1250.5 mm'],
    ['12.5 mm', false, '12.5 mm'],
    ['8,000.5', false, '8000.5'],
    ["1'250 mm", false, '1250 mm'],
    ['1 1/2 in', true, '1 1/2 in'],
    ['drainage / 2.5', true, 'drainage / 2.5'],
    ['0.5 * drainage', true, '0.5 * drainage'],
    ['12.5 mm * 2', true, '12.5 mm * 2'],
    ['1.250 + drainage', true, '1.250 + drainage'],
    ['0.5 * max(1; 5)', true, '0.5 * max(1; 5)'],
    ['1,250 * 2', false, '1,250 * 2'],
    ['max(1; 5)', true, 'max(1; 5)'],
    ['max(1,5)', false, 'max(1,5)'],
  ])('%s, decimal comma %s, is kept as %s', (typed, decimalComma, kept) => {
    expect(storedText(typed, litter, decimalComma)).toEqual({ ok: true, value: kept });
  });

  test.each([
    ['8.000', true, { kind: 'two-readings', text: '8.000', readings: ['8000', '8'] }],
    ['8,000', false, { kind: 'two-readings', text: '8,000', readings: ['8000', '8'] }],
    ['12.5 mm', true, { kind: 'other-sign', text: '12.5', sign: 'comma', like: '12,5' }],
    ['12,5 mm', false, { kind: 'other-sign', text: '12,5', sign: 'point', like: '12.5' }],
  ])('%s, decimal comma %s, is asked for', (typed, decimalComma, fault) => {
    expect(storedText(typed, litter, decimalComma)).toEqual({ ok: false, fault });
  });

  test('where the comma is set, 1,5 among the figures of a function is asked for at its place', () => {
    const fault = { kind: 'two-figures', found: '1,5', first: '1', second: '5', from: 4, to: 7 };
    expect(storedText('max(1,5, 2)', litter, true)).toEqual({
      ok: false,
      fault: { kind: 'rule', text: 'max(1,5, 2)', faults: [fault] },
    });
  });

  test('a choice is never touched', () => {
    expect(storedText('a,b', { unit: 'choice' }, true)).toEqual({ ok: true, value: 'a,b' });
  });
});
