import { describe, expect, test } from 'vitest';
import { mayGo } from '#renderer/books/uses-of.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();

describe('mayGo', () => {
  test.each([
    ['tank', 'T07', 'J01 Ferry waiting hall'],
    ['taxClass', 'low', 'Plants, Microfauna'],
    ['margin', 'work', 'the price of all work'],
    ['rate', 'R-overhead', 'the price of every hour'],
  ] as const)('%s %s stays', (kind, id, by) => {
    expect(mayGo(kind, [id], records)).toEqual(failed(`${id} stays: it is used by ${by}. Take it out there first.`));
  });

  test('what nothing means may go', () => {
    expect([
      mayGo('tank', ['T01', 'T02'], records),
      mayGo('plant', ['P01'], records),
      mayGo('rate', ['R-fitter'], records),
    ]).toEqual([ok(undefined), ok(undefined), ok(undefined)]);
  });

  test('many users are told by the first and counted', () => {
    expect(mayGo('supplier', ['S-hollin'], records)).toEqual(
      failed(
        'S-hollin stays: it is used by material M01, material M02, material M03, material M04 and 11 more. Take it out there first.',
      ),
    );
  });
});
