import { z } from 'zod';

import { choice, code, count, data, day, figure, money, orEmpty, reference, words, yesNo } from './field.ts';

/** A day in data of a record. */
const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const Id = code().schema;

/** An order to one supplier. What came of it are moves that name it; only `closedOn` and `note` change later. */
export const order = {
  id: code(),
  supplier: reference('Supplier', ['supplier']),
  on: day('Ordered on'),
  lines: data(
    'Lines',
    z
      .array(
        z.strictObject({
          n: z.int().min(1),
          of: Id,
          label: z.string(),
          /** What one pack holds, in the unit of the goods; of a cut pane its area. */
          amount: z.number().min(1e-6),
          unit: z.string(),
          count: z.int().min(1).max(99_999),
          /** For one pack. */
          askedCoins: z.int().min(0),
          due: Day,
          cut: z
            .strictObject({
              lengthMm: z.number().min(1e-6),
              depthMm: z.number().min(1e-6),
              glassMm: z.number().min(1e-6),
            })
            .optional(),
          /** What of it is for jobs, in the unit of the goods; the rest is for the store. */
          for: z.array(z.strictObject({ job: Id, amount: z.number().min(1e-6) })),
        }),
      )
      .min(1),
  ),
  carriageCoins: money('Carriage', { low: 0 }),
  closedOn: orEmpty(day('Closed on', { help: 'what has not come by then is not coming' })),
  note: words('Note'),
};

/**
 * What came into a lot, went out of it, was counted in it or is kept of it for a job. A lot is what one `in` brought and
 * bears its id, or a tub, which grows by its curve.
 */
export const move = {
  id: code(),
  lot: reference('Lot', ['tub', 'move']),
  of: reference('Goods', ['material', 'tank', 'plant', 'cultureKind', 'quoteLine']),
  on: day('On'),
  what: choice('What', ['in', 'used', 'wasted', 'sold', 'counted', 'kept']),
  /**
   * In the unit of the goods, below 0 out of the lot. `counted` is the difference that a count found; in a tub, what
   * stood there. `kept` moves nothing, and gives back below 0.
   */
  amount: figure('Amount', "the goods'"),
  job: orEmpty(reference('For', ['job'])),
  order: orEmpty(reference('Order', ['order'])),
  /** The number of the order's line. */
  line: orEmpty(count('Line of the order', { low: 1, high: 9_999 })),
  /** Paid for all of it, or got for it; without carriage and tax. */
  coins: orEmpty(money('Paid or got', { low: 0 })),
  until: orEmpty(day('In quarantine until')),
  bestBefore: orEmpty(day('Best before')),
  sealed: orEmpty(yesNo('Sealed')),
  note: words('Note'),
};
