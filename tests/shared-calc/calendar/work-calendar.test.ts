import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { isOpen, nextOpen, previousOpen } from '#shared-calc/calendar/work-calendar.ts';

const summer = {
  openWeekdays: [1, 2, 3, 4, 5],
  closed: [
    { from: '2027-08-02', to: '2027-08-06' },
    { from: '2027-08-30', to: '2027-08-30' },
  ],
};
const day = fc.integer({ min: 0, max: 1000 }).map((days) => addDays('2027-01-01', days));
const range = fc.tuple(day, fc.nat(40)).map(([from, length]) => ({ from, to: addDays(from, length) }));
const calendar = fc.record({
  openWeekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
  closed: fc.array(range, { maxLength: 6 }),
});

describe('isOpen', () => {
  test.each([
    ['2027-07-30', true, 'a Friday'],
    ['2027-07-31', false, 'a Saturday'],
    ['2027-08-02', false, 'the first closed day'],
    ['2027-08-06', false, 'the last closed day'],
    ['2027-08-09', true, 'the Monday after'],
    ['2027-08-30', false, 'a single closed day'],
  ])('on %s the workshop is open: %s (%s)', (date, open) => {
    expect(isOpen(date, summer)).toBe(open);
  });
});

describe('nextOpen', () => {
  test.each([
    ['2027-07-30', '2027-07-30'],
    ['2027-07-31', '2027-08-09'],
    ['2028-09-16', '2028-09-18'],
  ])('from %s it is %s', (from, next) => {
    expect(nextOpen(from, summer)).toBe(next);
  });

  test('years of closing are jumped over', () => {
    const closed = [{ from: '2027-08-02', to: '9000-12-31' }];
    expect(nextOpen('2027-08-02', { openWeekdays: [1, 2, 3, 4, 5, 6, 7], closed })).toBe('9001-01-01');
  });

  test('it is open, and no day between is', () => {
    fc.assert(
      fc.property(day, calendar, (from, of) => {
        const next = nextOpen(from, of);
        expect(isOpen(next, of)).toBe(true);
        for (let at = from; at < next; at = addDays(at, 1)) expect(isOpen(at, of)).toBe(false);
      }),
    );
  });
});

describe('previousOpen', () => {
  test.each([
    ['2027-08-09', '2027-08-09'],
    ['2027-08-08', '2027-07-30'],
    ['2027-08-30', '2027-08-27'],
  ])('from %s it is %s', (from, before) => {
    expect(previousOpen(from, summer)).toBe(before);
  });

  test('it is open, and no day between is', () => {
    fc.assert(
      fc.property(day, calendar, (from, of) => {
        const before = previousOpen(from, of);
        expect(isOpen(before, of)).toBe(true);
        for (let at = from; at > before; at = addDays(at, -1)) expect(isOpen(at, of)).toBe(false);
      }),
    );
  });
});
