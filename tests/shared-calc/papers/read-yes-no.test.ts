import { describe, expect, test } from 'vitest';
import { readYesNo } from '#shared-calc/papers/read-yes-no.ts';
import { failed, ok } from '#shared-calc/result.ts';

describe('readYesNo', () => {
  test.each([
    ['yes', true],
    ['Y', true],
    ['no', false],
    ['', false],
  ])('reads %s as %s', (text, value) => {
    expect(readYesNo(text)).toEqual(ok(value));
  });

  test('refuses any other word', () => {
    expect(readYesNo('perhaps')).toEqual(failed('"perhaps" is neither yes nor no.'));
  });
});
