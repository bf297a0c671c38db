import { describe, expect, test } from 'vitest';
import { taskMinutes, type TaskTime } from '#shared-calc/trade/price/task-minutes.ts';

// common practice, no source
const times = new Map<string, TaskTime | 'none'>([
  ['L01', by(10, ['glass_area', 12])],
  ['L02', by(25, ['panel_area', 80])],
  ['L03', by(3, ['drainage_placed', 0.9])],
  ['L04', by(6, ['perimeter', 4])],
  ['L05', by(3, ['capping_placed', 0.5], ['perimeter', 1.5])],
  ['L06', by(6, ['mix_inputs', 0.6])],
  ['L07', by(4, ['soil_placed', 0.4])],
  ['L08', by(15, ['pieces', 8])],
  ['L09', by(4, ['floor_area', 6])],
  ['L10', by(6)],
  ['L11', by(0, ['plants', 6])],
  ['L12', by(4, ['litter_batches', 14], ['floor_area', 12])],
  ['L13', by(6, ['panes', 4])],
  ['L14', by(14, ['lamps', 6])],
  ['L15', by(20, ['nozzles', 8])],
  ['L16', by(15)],
  ['L17', by(40)],
  ['J9', 'none'],
]);

/** The 600 x 445 x 600 tank with a flat soil, Full kit. */
const t05 = new Map([
  ['glass_area', 0.267 + 2.09 * 0.6],
  ['panel_area', 0.6 * 0.6],
  ['drainage_placed', 0.267 * 35],
  ['perimeter', 2.09],
  ['capping_placed', 2.67 + 0.418],
  ['mix_inputs', ((17.3375 / 0.88) * 1.05) / 0.88],
  ['soil_placed', 17.3375],
  ['pieces', 4],
  ['floor_area', 0.267],
  ['plants', 16],
  ['litter_batches', 1],
  ['panes', 1],
  ['lamps', 2],
  ['nozzles', 2],
]);

describe('taskMinutes', () => {
  test('a T05 with the full kit takes 449.35 min', () => {
    const tasks = [...times.keys()].filter((task) => task.startsWith('L'));
    expect(taskMinutes(tasks, times, t05)).toBeCloseTo(449.35, 2);
  });

  test('a task that is marked as none takes none, and no tasks take none', () => {
    expect([taskMinutes(['J9'], times, t05), taskMinutes([], times, t05)]).toEqual([0, 0]);
  });

  test('a task without a time is named, and how to mend it', () => {
    expect(taskMinutes(['L01', 'L18'], times, t05)).toEqual({
      refused: 'No time for task L18; add one or mark as none.',
    });
  });

  test('a measure that is missing is named, never counted as nothing', () => {
    expect(taskMinutes(['L04'], times, new Map())).toEqual({ refused: 'Needs a figure: perimeter' });
  });

  test('a measure below zero is refused', () => {
    expect(taskMinutes(['L04'], times, new Map([['perimeter', -1]]))).toEqual({
      refused: 'perimeter cannot be below zero.',
    });
  });
});

function by(fixed: number, ...rates: readonly (readonly [driver: string, minutes: number])[]): TaskTime {
  return { fixed, rates: rates.map(([driver, minutes]) => ({ driver, minutes })) };
}
