import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '#shared-calc/calendar/day.ts';
import { quarantineUntil } from '#shared-calc/prepare/animal-quarantine.ts';

describe('quarantineUntil', () => {
  test('sixty days from the day they came, by hand', () => {
    expect(quarantineUntil({ cameOn: '2027-01-04' }, { quarantineDays: 60 })).toBe('2027-03-05');
  });

  test('another animal never shortens it', () => {
    fc.assert(
      fc.property(
        fc.nat(2_000),
        fc.integer({ min: -400, max: 400 }),
        fc.integer({ min: 30, max: 365 }),
        (day, later, days) => {
          const cameOn = addDays('2027-01-01', day);
          const joinedOn = addDays(cameOn, later);
          const until = quarantineUntil({ cameOn, joinedOn }, { quarantineDays: days });
          expect(daysBetween(cameOn, until)).toBe(days + Math.max(0, later));
        },
      ),
    );
  });
});
