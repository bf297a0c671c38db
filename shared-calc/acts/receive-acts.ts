import { z } from 'zod';
import { classMaterialOf } from '#shared-calc/buy/class-price.ts';
import { isPlantGoods, NOTHING, QUARANTINE_DAYS, stockOf } from '#shared-calc/buy/ledger.ts';
import { orderStanding, type LineStanding, type OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { addDays, dayFault, type Day as OnDay } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { lotMove, moveIds, movesAdded } from '#shared-calc/jobs/written-moves.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Move, Order, Records } from '#shared-calc/records/records.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { withStates } from './goods-moved.ts';
import { Coins, Day } from './inputs.ts';
import { movedAnyway, reasonFields } from './reason.ts';

const ReceiveOrder = z.strictObject({
  order: z.string(),
  lines: z
    .array(
      z.strictObject({
        n: z.int().min(1).describe('The number of the line.'),
        count: z.number().positive().max(99_999).describe('Packs that came, or a part of one.'),
        eachCoins: Coins.optional().describe('Paid for one pack; left out: as asked.'),
      }),
    )
    .min(1)
    .optional()
    .describe('Left out: all that is still to come.'),
  until: Day.optional().describe('The end of its quarantine; left out: plants stand apart for 30 days.'),
  bestBefore: Day.optional(),
  on: Day.optional().describe('Left out: today.'),
  note: z.string().max(2_000).default('').describe('With it more is taken in than was still to come.'),
  ...reasonFields,
});

type Receipt = z.infer<typeof ReceiveOrder>;

export const receiveOrder = act<Receipt>({
  name: 'receiveOrder',
  says: 'Takes in what came of an order, all of it or a part, and keeps it for the jobs that it was ordered for.',
  input: ReceiveOrder,
  run: (derived, input) => {
    const { records, today } = derived;
    const { on = today, until, bestBefore, anyway, who } = input;
    const fault = [on, until, bestBefore].map((day) => day && dayFault(day)).find(Boolean);
    if (fault) return failed(fault);
    const order = findRecord(records, 'order', input.order);
    if (!order.ok) return order;
    const came = cameOf(derived, order.value, { ...input, on });
    if (!came.ok) return came;
    const change = takenIn(derived, came.value, { ...input, on });
    const jobs = came.value.flatMap(({ standing }) => standing.line.for.map(({ job }) => job));
    const then = derived.update(records, on);
    return movedAnyway(then, withStates(then, change, [...new Set(jobs)]), { anyway, who });
  },
});

type OnReceipt = Receipt & { readonly on: OnDay };

interface Came {
  readonly standing: LineStanding;
  readonly count: number;
  readonly eachCoins: number;
}

/** What came, line by line; more than is open only with a note. */
function cameOf(
  { records, display }: Derived,
  order: Order,
  { lines, on, note }: OnReceipt,
): Result<readonly Came[], ActFault> {
  const standing = orderStanding(records, order, on);
  const noted = note.trim() !== '';
  const fault = orderFault(standing, { on, noted, display });
  if (fault) return failed(fault);
  const came: Came[] = [];
  for (const asked of lines ?? openLines(standing)) {
    const line = cameLine(standing, asked, noted);
    if (!line.ok) return line;
    came.push(line.value);
  }
  return came.length > 0 ? ok(came) : failed({ kind: 'nothing-came' });
}

interface OfReceipt {
  readonly on: OnDay;
  readonly noted: boolean;
  readonly display: Display;
}

function orderFault({ order, state }: OrderStanding, { on, noted, display }: OfReceipt): ActFault | undefined {
  const { id, on: ordered, closedOn = on } = order;
  if (on < ordered) return { kind: 'before-ordered', order: id, ordered, on, display };
  if (state === 'in' && !noted) return { kind: 'order-all-in', order: id };
  return state === 'closed' && !noted ? { kind: 'order-closed', order: id, closedOn, display } : undefined;
}

type AskedLine = NonNullable<Receipt['lines']>[number];

function openLines({ lines }: OrderStanding): readonly AskedLine[] {
  return lines.filter(({ open }) => open > 0).map(({ line: { n }, open: count }) => ({ n, count }));
}

function cameLine(
  { order: { id: order }, lines }: OrderStanding,
  { n, count, eachCoins }: AskedLine,
  noted: boolean,
): Result<Came, ActFault> {
  const standing = lines.find(({ line }) => line.n === n);
  if (!standing) return failed({ kind: 'no-order-line', order, line: n, lines: lines.length });
  const { line, open } = standing;
  if (count - open > NOTHING && !noted) return failed({ kind: 'more-than-open', order, line, came: count, open });
  return ok({ standing, count, eachCoins: eachCoins ?? line.askedCoins });
}

function takenIn(derived: Derived, came: readonly Came[], receipt: OnReceipt): Change {
  let now = derived.records;
  const changes: Change[] = [];
  for (const each of came) {
    const change = movesAdded('', lotOf(derived, now, { ...each, receipt }));
    now = applyChange(now, change);
    changes.push(change);
  }
  const what = came.length === 1 ? '1 line' : `${came.length} lines`;
  return squashChanges(`${receipt.order}: ${what} in`, changes);
}

interface CameLine extends Came {
  readonly receipt: OnReceipt;
}

/** The lot that came, and what of it is kept for the jobs of its line, those that use it first first. */
function lotOf(
  derived: Derived,
  now: Records,
  { standing: { line }, count, eachCoins, receipt }: CameLine,
): readonly Move[] {
  const { order, on, bestBefore, note } = receipt;
  const until = receipt.until ?? (isPlantGoods(now, line.of) ? addDays(on, QUARANTINE_DAYS) : undefined);
  const amount = count * line.amount;
  const lot = lotMove(now, {
    of: line.of,
    on,
    amount,
    order,
    line: line.n,
    coins: roundCoins(count * eachCoins),
    ...(until !== undefined && { until }),
    ...(bestBefore !== undefined && { bestBefore }),
    sealed: true,
    note,
  });
  const nextId = moveIds(now);
  let left = amount;
  const kept: Move[] = [];
  for (const { job, wanted } of wantedOf(derived, now, { of: line.of, order, n: line.n, on })) {
    const part = Math.min(left, wanted);
    if (part <= NOTHING) continue;
    left -= part;
    const ofLine = { of: line.of, order, line: line.n };
    kept.push({ id: nextId(), lot: lot.id, on, what: 'kept', amount: part, job, ...ofLine, note: '' });
  }
  return [lot, ...kept];
}

interface OfLine {
  readonly of: string;
  readonly order: string;
  readonly n: number;
  readonly on: OnDay;
}

/** Jobs that a line is still for, in order of their day of use; one that is built or closed wants nothing any more. */
function wantedOf(derived: Derived, now: Records, { of, order, n, on }: OfLine) {
  const coming = stockOf(now, [of], { asked: on }).lines.find((each) => each.order === order && each.line.n === n);
  const neededAs = classMaterialOf(now, of) ?? of;
  const useOn = (job: string) => derived.job(job)?.useOn(neededAs) ?? '';
  return [...(coming?.kept ?? [])]
    .filter(([job]) => isBefore(now.job.get(job)?.state ?? 'closed', 'built'))
    .map(([job, wanted]) => ({ job, wanted, use: useOn(job) }))
    .toSorted((one, other) => (one.use < other.use ? -1 : Number(one.use > other.use)));
}
