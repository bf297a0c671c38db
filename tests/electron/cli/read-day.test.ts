import { describe, expect, test } from 'vitest';
import { readArguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { failed, ok } from '#shared-calc/result.ts';

function read(...argv: readonly string[]) {
  const given = readArguments(argv, { on: 'text' });
  return given.ok ? readDay(given.value, 'on') : given;
}

describe('readDay', () => {
  test('an option that is left out is no day and no mistake', () => {
    expect(read()).toEqual(ok(undefined));
  });

  test.each([
    ['2026-02-28', ok('2026-02-28')],
    ['2028-02-29', ok('2028-02-29')],
    ['2026-02-30', failed('--on 2026-02-30: there is no such day.')],
    ['2026-13-01', failed('--on 2026-13-01: there is no such day.')],
    ['28.2.2026', failed('--on 28.2.2026: write the day as 2026-11-25.')],
    ['', failed('--on : write the day as 2026-11-25.')],
  ])('a day that is none is told from a day in another form: %j', (text, answer) => {
    expect(read('--on', text)).toEqual(answer);
  });
});
