import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { listFunction, refused, type Answer } from '#shared-calc/trade/trade-function.ts';

/** The time of a task: fixed minutes, and minutes for each unit of a measure (m2 of glass, L of mix, panes). */
export interface TaskTime {
  readonly fixed: number;
  readonly rates: readonly { readonly driver: string; readonly minutes: number }[];
}

/** Times by task id; 'none' for a task marked as taking no time. */
export type TaskTimes = ReadonlyMap<string, TaskTime | 'none'>;

/** Minutes of all tasks together, not rounded. Refuses a task without a time, and a missing measure. */
export function taskMinutes(tasks: readonly string[], times: TaskTimes, drivers: ReadonlyMap<string, number>): Answer {
  let sum = 0;
  for (const task of tasks) {
    const time = times.get(task);
    if (time === undefined) return refused(`No time for task ${task}; add one or mark as none.`);
    const minutes = time === 'none' ? 0 : minutesOf(time, drivers);
    if (typeof minutes !== 'number') return minutes;
    sum += minutes;
  }
  return sum;
}

function minutesOf({ fixed, rates }: TaskTime, drivers: ReadonlyMap<string, number>): Answer {
  let minutes = fixed;
  for (const rate of rates) {
    const driver = drivers.get(rate.driver);
    if (driver === undefined) return refused(`Needs a figure: ${rate.driver}`);
    const wrong = belowZero({ [rate.driver]: driver });
    if (wrong) return wrong;
    minutes += rate.minutes * driver;
  }
  return minutes;
}

export const taskMinutesEntry = listFunction({
  name: 'TASK_MINUTES',
  title: 'Task minutes',
  group: 'price',
  takes: 'tasks, the times of each, the measures they go by',
  gives: 'minutes',
  sum: 'for each task: fixed + rate x measure; all added up',
  help: 'Minutes of a build by its tasks. The times are a start: put in your own once you have them.',
  examples: [
    { rule: 'T05, Full kit, all tasks L01 to L17', gives: '449.35 min' },
    { rule: 'L04 of 6 min and 4 min/m, perimeter 2.69 m', gives: '16.76 min' },
  ],
  source: 'common practice, no source',
});
