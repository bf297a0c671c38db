import { describe, expect, test } from 'vitest';
import { nextCode } from '#shared-calc/records/next-code.ts';

describe('nextCode', () => {
  test.each([
    [['T01', 'T12', 'T02'], 'T13'],
    [[], 'T01'],
    [['T99'], 'T100'],
    [['M40', 'T07x', 'TANK'], 'T01'],
  ])('after %o comes %s', (taken, next) => {
    expect(nextCode('T', taken)).toBe(next);
  });
});
