import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSeason, writeSeason } from '#shared-calc/read/read-season.ts';

const yearDay = fc
  .date({ min: new Date('2028-01-01'), max: new Date('2028-12-31'), noInvalidDate: true })
  .map((day) => day.toISOString().slice(5, 10));

describe('readSeason', () => {
  test('what is written of a season reads as that season, over the end of a year too', () => {
    fc.assert(
      fc.property(yearDay, yearDay, (from, to) => {
        expect(readSeason(writeSeason({ from, to }), 'Season')).toEqual({ ok: true, value: { from, to } });
      }),
    );
  });

  test.each([
    '10-01',
    'October to March',
    '10-01 to 02-30',
    '13-01 to 03-31',
    '10-01 to 03-31 to 04-01',
    '1-1 to 3-31',
  ])('%s is no season', (text) => {
    expect(readSeason(text, 'Season')).toMatchObject({ ok: false, fault: { kind: 'other-form', name: 'Season' } });
  });
});
