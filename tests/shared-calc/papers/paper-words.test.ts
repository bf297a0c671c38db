import { describe, expect, test } from 'vitest';
import { paperCoins, paperDay, paperFigure, paperMoney, paperWeekday } from '#shared-calc/papers/paper-words.ts';

describe('paperDay', () => {
  test('a day is spoken with its year', () => {
    expect([paperDay('2027-07-01', {}), paperWeekday('2027-03-16', {})]).toEqual([
      '1 July 2027',
      'Tuesday 16 March 2027',
    ]);
  });
});

describe('paperMoney', () => {
  test.each([
    ['1615.56', false, '1,615.56'],
    ['1615.56', true, '1.615,56'],
    ['148', false, '148'],
    ['-114.40', false, '-114.40'],
  ])('%s with a decimal comma %s is %s', (text, decimalComma, shown) => {
    expect(paperMoney(text, { decimalComma })).toBe(shown);
  });
});

describe('paperCoins', () => {
  test('coins show the decimals of their currency', () => {
    expect([paperCoins(728_527, { coinDecimals: 2 }), paperCoins(7285, { coinDecimals: 0 })]).toEqual([
      '7,285.27',
      '7,285',
    ]);
  });
});

describe('paperFigure', () => {
  test('a whole figure has no decimals', () => {
    expect([paperFigure(36, 1, {}), paperFigure(86.32, 1, {}), paperFigure(4.1, 1, { decimalComma: true })]).toEqual([
      '36',
      '86.3',
      '4,1',
    ]);
  });
});

describe('days on a paper', () => {
  test.each([
    [undefined, '12 May 2027', 'Wednesday 12 May 2027'],
    ['ymd', '12 May 2027', 'Wednesday 12 May 2027'],
    ['dmy', '12 May 2027', 'Wednesday 12 May 2027'],
    ['mdy', 'May 12, 2027', 'Wednesday, May 12, 2027'],
  ] as const)('%s: the month comes first only where the workshop writes it so', (dateOrder, day, weekday) => {
    const dates = dateOrder === undefined ? {} : { dateOrder };
    expect([paperDay('2027-05-12', dates), paperWeekday('2027-05-12', dates)]).toEqual([day, weekday]);
  });
});
