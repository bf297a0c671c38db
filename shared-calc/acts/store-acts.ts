import { z } from 'zod';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { addDays, dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { orderedJobs } from '#shared-calc/derive/expected-goods.ts';
import { findJob, freeId } from '#shared-calc/jobs/find-job.ts';
import { spendChoices } from '#shared-calc/jobs/pack-choices.ts';
import { receiveOrder } from '#shared-calc/jobs/receive-order.ts';
import { releaseStock, reserveStock } from '#shared-calc/jobs/reserve-stock.ts';
import { amountOf, NOTHING, storePieces, withoutPieces } from '#shared-calc/jobs/store-pieces.ts';
import { PLANTS_GROUP } from '#shared-calc/price/quote-rules.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { recordKinds, type Records, type StockEntry } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { usesOf } from './build-job.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { recordAdded, recordChanged, recordRemoved, withFields } from './record-changes.ts';

const Amount = z.number().positive().describe("In the material's own unit.");
const note = z.string().max(2_000).default('');

const PutIn = z.strictObject({
  material: z.string(),
  amount: Amount,
  sealed: z.boolean().default(true),
  reservedFor: z.string().optional().describe('The job that it is kept for.'),
  bestBefore: Day.optional(),
  quarantineUntil: Day.optional(),
  note,
});

export const putIn = act<z.infer<typeof PutIn>>({
  name: 'putIn',
  says: 'Puts a material or a tank into the Store, beside what is there of it.',
  input: PutIn,
  run: (derived, input) => {
    const fault = dayFaultOf(input);
    if (fault) return failed(fault);
    const { stockEntry } = derived.records;
    const bare = { id: freeId(`K-${input.material}`, stockEntry), material: '', amount: 0, sealed: true, note: '' };
    const entry: StockEntry = withFields<StockEntry>(bare, input);
    return ok(recordAdded(`${goodsOf(derived, input)} into the Store`, 'stockEntry', entry));
  },
});

function dayFaultOf({
  bestBefore,
  quarantineUntil,
}: { readonly [K in 'bestBefore' | 'quarantineUntil']?: string | null | undefined }) {
  return [bestBefore, quarantineUntil]
    .map((day) => (day ? dayFault(day) : undefined))
    .find((each) => each !== undefined);
}

const { shape } = recordKinds.stockEntry;
const CorrectEntry = z.strictObject({
  entry: z.string().describe('The id of the entry, such as K-M01.'),
  fields: z
    .strictObject({
      amount: shape.amount.min(0),
      sealed: shape.sealed,
      reservedFor: shape.reservedFor.nullable(),
      bestBefore: shape.bestBefore.nullable(),
      quarantineUntil: shape.quarantineUntil.nullable(),
      note: shape.note,
    })
    .partial(),
});

export const correctEntry = act<z.infer<typeof CorrectEntry>>({
  name: 'correctEntry',
  says: 'Puts an entry of the Store right, as it was counted; null takes a day or a job away.',
  input: CorrectEntry,
  run: ({ records }, { entry: id, fields }) => {
    const entry = findRecord(records, 'stockEntry', id);
    if (!entry.ok) return entry;
    const fault = dayFaultOf(fields);
    if (fault) return failed(fault);
    const to = withFields(entry.value, fields);
    return ok(recordChanged(`${entry.value.material} in the Store`, 'stockEntry', { from: entry.value, to }));
  },
});

const WriteOff = z.strictObject({ entry: z.string() });

export const writeOff = act<z.infer<typeof WriteOff>>({
  name: 'writeOff',
  says: 'Takes a whole entry out of the Store: lost, spoilt or never there.',
  input: WriteOff,
  run: ({ records }, { entry: id }) => {
    const entry = findRecord(records, 'stockEntry', id);
    return entry.ok ? ok(recordRemoved(`${entry.value.material} out of the Store`, 'stockEntry', entry.value)) : entry;
  },
});

const UseStock = z.strictObject({
  material: z.string(),
  amount: Amount,
  job: z.string().optional().describe('What is kept for this job is taken first.'),
});

export const useStock = act<z.infer<typeof UseStock>>({
  name: 'useStock',
  says: 'Takes an amount out of the Store, opened bags first; what is kept for others stays.',
  input: UseStock,
  run: (derived, { job, ...used }) => {
    const { records, today, display } = derived;
    const unit = unitOfGoods(used.material, records);
    if (unit === undefined) return failed({ kind: 'no-record', record: { kind: 'material', id: used.material } });
    const pieces = storePieces(records.stockEntry.values(), { ...used, on: today, ...(job !== undefined && { job }) });
    const free = amountOf(pieces);
    if (used.amount - free > NOTHING)
      return failed({ kind: 'not-to-give', material: used.material, unit, asked: used.amount, free, display });
    const label = `${goodsOf(derived, used)} used${job === undefined ? '' : ` for ${job}`}`;
    return ok(diffRecords(label, records, { ...records, stockEntry: withoutPieces(records.stockEntry, pieces) }));
  },
});

const Reserve = z.strictObject({ job: z.string(), material: z.string(), amount: Amount });

export const reserve = act<z.infer<typeof Reserve>>({
  name: 'reserve',
  says: 'Keeps an amount in the Store for a job: no other job is given it.',
  input: Reserve,
  run: ({ records, today }, input) => reserveStock(records, { ...input, on: today }),
});

const OfJob = z.strictObject({ job: z.string() });

export const release = act<z.infer<typeof OfJob>>({
  name: 'release',
  says: 'Gives back all that is kept in the Store for a job.',
  input: OfJob,
  run: ({ records }, { job: id }) => {
    const job = findJob(records, id);
    return job.ok ? ok(releaseStock(records, id)) : job;
  },
});

export const keepNeeded = act<z.infer<typeof OfJob>>({
  name: 'keepNeeded',
  says: 'Keeps for a job as much of everything it needs as the Store has free.',
  input: OfJob,
  run: (derived, { job }) => neededKept(derived, job),
});

function neededKept(derived: Derived, job: string): Result<Change, ActFault> {
  const { records, today: on } = derived;
  const uses = usesOf(derived, job);
  if (!uses.ok) return uses;
  let now = records;
  const changes: Change[] = [];
  for (const [material, needed] of uses.value) {
    const lacking = Math.max(0, needed - keptFor(now, job, material));
    const amount = amountOf(storePieces(now.stockEntry.values(), { material, amount: lacking, on }));
    if (amount <= NOTHING) continue;
    const keep = reserveStock(now, { job, material, amount, on });
    if (!keep.ok) return keep;
    now = applyChange(now, keep.value);
    changes.push(keep.value);
  }
  if (changes.length === 0) return failed({ kind: 'nothing-free', job });
  return ok(squashChanges(`kept for ${job}: what the Store has of its needs`, changes));
}

function keptFor({ stockEntry }: Pick<Records, 'stockEntry'>, job: string, material: string): number {
  return [...stockEntry.values()]
    .filter((entry) => entry.material === material && entry.reservedFor === job)
    .reduce((sum, { amount }) => sum + amount, 0);
}

/** Days that plants are kept apart unless another count is given. Common practice, no source. */
export const QUARANTINE_DAYS = 30;

const Receive = z.strictObject({
  supplier: z.string(),
  packs: z.array(
    z.strictObject({
      material: z.string(),
      amount: Amount.describe("What one pack holds, in the material's own unit."),
      count: z.int().min(0).max(9_999),
    }),
  ),
  quarantineDays: z.int().min(0).max(9_999).default(QUARANTINE_DAYS),
});

export const receive = act<z.infer<typeof Receive>>({
  name: 'receive',
  says: 'Puts an order that came in into the Store; plants go into quarantine, and a choice of packs by hand is spent.',
  input: Receive,
  run: ({ records, today }, { supplier, packs, quarantineDays }) => {
    const came = packs.filter(({ count }) => count > 0);
    if (came.length === 0) return failed({ kind: 'nothing-came' });
    const from = records.supplier.get(supplier)?.name || supplier;
    const until = addDays(today, quarantineDays);
    const marked = came.map((pack) => (isPlant(records, pack.material) ? { ...pack, quarantineUntil: until } : pack));
    const order = receiveOrder(records, marked, from);
    const materials = came.map(({ material }) => material);
    return ok(squashChanges(order.label, [order, spendChoices(records, orderedJobs(records), materials)]));
  },
});

function isPlant({ line }: Pick<Records, 'line'>, material: string): boolean {
  return [...line.values()].some((each) => each.material === material && each.group === PLANTS_GROUP);
}

/** `16.84 L of M01` */
function goodsOf({ records, display }: Derived, { material, amount }: Pick<StockEntry, 'material' | 'amount'>): string {
  return `${goodsWords(amount, unitOfGoods(material, records) ?? 'each', display)} of ${material}`;
}
