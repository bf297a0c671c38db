import { z } from 'zod';

import { code, data, day, figure, longText, money, name, orEmpty, reference, yesNo } from './field.ts';

/** Steps of a job's plan that a person writes as done; goods that are in are facts of the Store. */
export const doneSteps = [
  'panel',
  'looks',
  'cleared',
  'springtails',
  'blend',
  'leaves',
  'build',
  'watch',
  'handover',
] as const;
export type DoneStep = (typeof doneSteps)[number];

/** What was read or counted while it was done. Humidity is a share. */
const Readings = z
  .strictObject({
    lowC: z.number().min(-50).max(100),
    highC: z.number().min(-50).max(100),
    lowHumidity: z.number().min(0).max(1),
    highHumidity: z.number().min(0).max(1),
    drainedL: z.number().min(0).max(10_000),
    leavesG: z.number().min(0).max(1_000_000),
    plants: z.int().min(0).max(9_999),
    deaths: z.int().min(0).max(9_999),
    eating: z.boolean(),
    active: z.boolean(),
  })
  .partial();

/**
 * What was done on a day, and by whom: a step of a plan or a task, or a quote issued or a job moved although something
 * stood against it.
 */
export const done = {
  id: code(),
  on: day('On'),
  /** One of `doneSteps`, a task such as `L11`, `issued`, or the state that a job was moved to. */
  step: code('Step'),
  who: reference('Who', ['rate']),
  job: orEmpty(reference('Job', ['job'])),
  /** Of a quote over sizes alone there is no job: its number says what it is of. */
  quote: orEmpty(reference('Quote', ['issuedQuote'])),
  /** What stood against it that day, in the words that were shown. */
  against: data('Against it', z.array(z.strictObject({ what: z.string(), why: z.string() }))),
  note: longText('Reason'),
  /** Of the person; `who` is whose hour it is. */
  name: orEmpty(name('Name')),
  minutes: orEmpty(figure('Took', 'min', { shown: 'min', low: 0, high: 100_000 })),
  /** What an hour of that rate cost on the day, without overhead. */
  rateCoins: orEmpty(money('Rate', { low: 0 })),
  /** The step is over. */
  ends: yesNo('Ends the step'),
  size: orEmpty(reference('Size', ['size'])),
  tub: orEmpty(reference('Tub', ['tub'])),
  order: orEmpty(code('Order')),
  readings: orEmpty(data('Readings', Readings)),
};
