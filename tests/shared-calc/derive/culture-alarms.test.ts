import { describe, expect, test } from 'vitest';
import { cultureAlarms } from '#shared-calc/derive/culture-alarms.ts';
import { cultureBoard } from '#shared-calc/prepare/culture-board.ts';
import type { TubFacts } from '#shared-calc/prepare/standing-tub.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const kind = demoRecords().cultureKind.get('C1');
// Worked by hand: a tub for 28 June had to be started by 31 May, 28 days before.
const demands = [
  { job: 'J02', date: '2027-06-28', animals: 2130 },
  { job: 'J03', date: '2027-07-05', animals: 1581 },
];

function alarmsOn(today: string, tubs: readonly Partial<TubFacts>[]) {
  if (!kind) throw new Error('no kind');
  const stand = tubs.map((tub, at) => ({ id: `K${at + 1}`, startedOn: '2027-05-01', founders: 1250, ...tub }));
  const board = cultureBoard({ kind, demands, tubs: stand, on: today, portion: { animals: 2000, coins: 600 } });
  if (!board.ok) throw new Error(board.fault);
  const coins = (amount: number) => `${amount / 100} cr`;
  return cultureAlarms(board.value, { today, coins, display: {} }).map(({ level, says }) => `${level}: ${says}`);
}

describe('cultureAlarms', () => {
  test('in time: how many to start and by when, and that nothing stands to split', () => {
    expect(alarmsOn('2027-05-20', [])).toEqual([
      'watch: Start 2 tubs and 1 spare of White springtail by Monday 31 May; 0 stand.',
      'watch: No tub of White springtail stands to split: start a new line, or buy the starter animals.',
    ]);
  });

  test('with two tubs that serve it and a spare there is nothing to say', () => {
    expect(alarmsOn('2027-05-20', [{}, {}, { spare: true }])).toEqual([]);
  });

  test('a day too late is said on the day, with when it would be ready and what can be bought instead', () => {
    expect(alarmsOn('2027-06-01', [])[0]).toBe(
      'stop: White springtail for Monday 28 June: 2,130 short, a tub started today gives that on Tuesday 29 June. Instead: 2 cups, 12 cr.',
    );
  });

  test('a tub that stands and is free serves it', () => {
    expect(alarmsOn('2027-06-01', [{}])).toEqual([
      'watch: Start 1 tub and 1 spare of White springtail by Monday 7 June; 1 stands.',
    ]);
  });

  test('one that another job claims does not', () => {
    expect(alarmsOn('2027-06-01', [{ keptFor: 'J03' }])[0]).toMatch(/^stop: /);
  });
});
