import { describe, expect, test } from 'vitest';
import { readYesNo } from '#shared-calc/read/read-yes-no.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

describe('readYesNo', () => {
  test.each([
    ['yes', true],
    ['Y', true],
    ['no', false],
    ['', false],
  ])('reads %s as %s', (text, value) => {
    expect(readYesNo(text, 'Keeps')).toEqual(ok(value));
  });

  test('refuses any other word', () => {
    expect(said(readYesNo('perhaps', 'Keeps'))).toEqual(failed('Keeps: "perhaps" is neither yes nor no.'));
  });
});
