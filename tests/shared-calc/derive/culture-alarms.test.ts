import { describe, expect, test } from 'vitest';
import { cultureAlarms } from '#shared-calc/derive/culture-alarms.ts';
import type { JobDemand } from '#shared-calc/derive/kind-demands.ts';
import { standingTub } from '#shared-calc/prepare/tub-days.ts';
import { cultureBoard } from '#shared-calc/prepare/culture-board.ts';
import type { Tub } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const kind = demoRecords().cultureKind.get('C1');
// Worked by hand: a tub for 28 June had to be started by 31 May, 28 days before.
const demands: readonly JobDemand[] = [
  { job: 'J02', title: 'Library', date: '2027-06-28', animals: 2130 },
  { job: 'J03', title: 'School', date: '2027-07-05', animals: 1581 },
];

function alarmsOn(today: string, tubs: readonly Partial<Tub>[]) {
  if (!kind) throw new Error('no kind');
  const board = cultureBoard({ kind, demands, on: today });
  if (!board.ok) throw new Error(board.fault);
  const standing = tubs.map((tub, at) =>
    standingTub(
      { id: `T-0${at + 1}`, kind: 'C1', startedOn: '2027-05-01', spare: false, place: '', note: '', ...tub },
      kind,
      today,
    ),
  );
  return cultureAlarms(board.value, standing, { demands, today }).map(({ level, says }) => `${level}: ${says}`);
}

describe('cultureAlarms', () => {
  test('in time: how many to start and by when', () => {
    expect(alarmsOn('2027-05-20', [])).toEqual([
      'watch: 2 tubs and 1 spare of white springtail are wanted, 0 stand: start 3 by Monday 31 May.',
    ]);
  });

  test('with three tubs standing there is nothing to say', () => {
    expect(alarmsOn('2027-05-20', [{}, {}, {}])).toEqual([]);
  });

  test('a day too late is said on the day, and that none stands', () => {
    expect(alarmsOn('2027-06-01', [])[0]).toBe(
      'stop: White springtail for Monday 28 June: a tub started today is ready on Tuesday 29 June, and none stands that is ready then.',
    );
  });

  test('a tub that stands and is free serves it', () => {
    expect(alarmsOn('2027-06-01', [{}])[0]).toBe(
      'watch: Monday 28 June: too late to start a tub, but T-01 will be ready.',
    );
  });

  test('one that another job claims does not', () => {
    expect(alarmsOn('2027-06-01', [{ claimedBy: 'J03' }])[0]).toMatch(/^stop: /);
  });
});
