import { describe, expect, test } from 'vitest';
import { namedWeeks, shutStretches, timeScale } from '#renderer/curves/time-scale.ts';
import { mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';

const days = ['2027-04-07', '2027-02-26', '2027-04-28'];

function scaleOf(room: number) {
  const scale = timeScale(days, room);
  if (!scale) throw new Error('no scale');
  return scale;
}

describe('timeScale', () => {
  test('it runs from three days before the first to three after the last', () => {
    const { from, to } = scaleOf(680);
    expect([from, to]).toEqual(['2027-02-23', '2027-05-01']);
  });

  test('68 days in 680 px are 10 px each, a day in the middle of its own', () => {
    const { pxADay, at } = scaleOf(680);
    expect([pxADay, at('2027-02-23'), at('2027-02-26')]).toEqual([10, 5, 35]);
  });

  test('in too little room days stay wide enough to be told apart', () => {
    expect(scaleOf(20).pxADay).toBe(3);
  });

  test('without a day there is no line', () => {
    expect(timeScale([], 680)).toBeUndefined();
  });
});

describe('namedWeeks', () => {
  test('every Monday where there is room, every third where there is little', () => {
    expect([namedWeeks(scaleOf(680)).slice(0, 2), namedWeeks(scaleOf(20)).slice(0, 2)]).toEqual([
      ['2027-03-01', '2027-03-08'],
      ['2027-03-01', '2027-03-22'],
    ]);
  });
});

describe('shutStretches', () => {
  test('a weekend before a closed week is one stretch', () => {
    const calendar = { ...mondayToFriday, closed: [{ from: '2027-03-29', to: '2027-04-02' }] };
    expect(
      shutStretches(scaleOf(680), calendar)
        .filter(({ from }) => from >= '2027-03-20')
        .slice(0, 2),
    ).toEqual([
      { from: '2027-03-20', days: 2 },
      { from: '2027-03-27', days: 9 },
    ]);
  });
});
