import { z } from 'zod';
import { membersOf, NOTHING, stock } from '#shared-calc/buy/ledger.ts';
import { partsSum, takeLots, type LotPart, type Taking } from '#shared-calc/buy/take-lots.ts';
import { unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lotMove, moveIds, movesAdded, partMoves, type MoveWords } from '#shared-calc/jobs/written-moves.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { recordKinds, type Move } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { Coins, Day } from './inputs.ts';
import { recordChanged, withFields } from './record-changes.ts';

const Amount = z.number().positive().max(1e9).describe('In the unit of the goods.');
const note = z.string().max(2_000).default('');
const on = Day.optional().describe('Left out: today.');
const lot = z.string().optional().describe('Only from this lot, such as K-M01.');

const PutIn = z.strictObject({
  of: z.string().describe('A material, a tank, a plant or a one-off line.'),
  amount: Amount,
  coins: Coins.optional().describe('What was paid for all of it.'),
  sealed: z.boolean().default(true),
  job: z.string().optional().describe('The job that it is kept for.'),
  bestBefore: Day.optional(),
  until: Day.optional().describe('The end of its quarantine.'),
  note,
  on,
});

export const putIn = act<z.infer<typeof PutIn>>({
  name: 'putIn',
  says: 'Puts goods into the Store as a lot of their own, and keeps them for a job if one is named.',
  input: PutIn,
  run: (derived, { job, on: day = derived.today, ...came }) => {
    const { records } = derived;
    const fault = faultOf([day, came.bestBefore, came.until]);
    if (fault) return failed(fault);
    const unit = unitOf(derived, came.of);
    if (!unit.ok) return unit;
    const bare = { of: came.of, on: day, amount: came.amount, note: came.note };
    const move = lotMove(records, withFields<Omit<Move, 'id' | 'lot' | 'what'>>(bare, came));
    const words = { id: moveIds(records)(), lot: move.id, of: came.of, on: day, amount: came.amount, note: '' };
    const kept: readonly Move[] = job === undefined ? [] : [{ ...words, what: 'kept', job }];
    const label = `${goodsOf(derived, came)} into the Store${job === undefined ? '' : `, kept for ${job}`}`;
    return ok(movesAdded(label, [move, ...kept]));
  },
});

function faultOf(days: readonly (string | null | undefined)[]) {
  return days.map((day) => (day ? dayFault(day) : undefined)).find((each) => each !== undefined);
}

const { shape } = recordKinds.move;
const CorrectLot = z.strictObject({
  lot: z.string().describe('The id of the lot, such as K-M01.'),
  fields: z
    .strictObject({
      sealed: z.boolean(),
      coins: Coins.nullable(),
      bestBefore: shape.bestBefore.nullable(),
      until: shape.until.nullable(),
      note: shape.note,
    })
    .partial(),
});

export const correctLot = act<z.infer<typeof CorrectLot>>({
  name: 'correctLot',
  says: 'Puts right what is written of a lot: its days, its price, whether it is sealed; null takes one away.',
  input: CorrectLot,
  run: ({ records }, { lot: id, fields }) => {
    const came = findRecord(records, 'move', id);
    if (!came.ok) return came;
    if (came.value.what !== 'in') return failed({ kind: 'no-record', record: { kind: 'move', id } });
    const fault = faultOf([fields.bestBefore, fields.until]);
    if (fault) return failed(fault);
    return ok(recordChanged(`lot ${id}`, 'move', { from: came.value, to: withFields(came.value, fields) }));
  },
});

const UseStock = z.strictObject({
  of: z.string(),
  amount: Amount,
  job: z.string().optional().describe('What is kept for this job is taken first.'),
  lot,
  note,
  on,
});

export const useStock = act<z.infer<typeof UseStock>>({
  name: 'useStock',
  says: 'Takes goods out of the Store: kept for the job, opened, soonest best before; what is kept for others stays.',
  input: UseStock,
  run: (derived, input) =>
    takenOut(derived, { ...input, from: 'usable', what: 'used', says: `used${input.job ? ` for ${input.job}` : ''}` }),
});

const WasteStock = UseStock;

export const wasteStock = act<z.infer<typeof WasteStock>>({
  name: 'wasteStock',
  says: 'Writes goods off as lost or spoilt, past their best first; the note says why.',
  input: WasteStock,
  run: (derived, input) => takenOut(derived, { ...input, from: 'all', what: 'wasted', says: 'wasted' }),
});

const SellStock = z.strictObject({
  of: z.string(),
  amount: Amount,
  coins: Coins.optional().describe('What was got for all of it.'),
  lot,
  note,
  on,
});

export const sellStock = act<z.infer<typeof SellStock>>({
  name: 'sellStock',
  says: 'Sells goods out of the Store; what is kept for a job stays.',
  input: SellStock,
  run: (derived, input) => takenOut(derived, { ...input, from: 'usable', what: 'sold', says: 'sold' }),
});

type Out = Pick<Taking, 'amount' | 'lot' | 'from' | 'job'> &
  Pick<MoveWords, 'what' | 'coins' | 'note'> & {
    readonly of: string;
    readonly on?: string | undefined;
    readonly says: string;
  };

function takenOut(
  derived: Derived,
  { of, amount, on: day = derived.today, says, ...out }: Out,
): Result<Change, ActFault> {
  const { records } = derived;
  const fault = faultOf([day]);
  if (fault) return failed(fault);
  const unit = unitOf(derived, of);
  if (!unit.ok) return unit;
  const { from, job, lot: only, what, coins, note: words } = out;
  const parts = takeLots(records, { members: membersOf(records, of), amount, on: day, job, lot: only, from });
  if (amount - partsSum(parts) > NOTHING) return failed(tooMuch(derived, { of, asked: amount, on: day }, parts));
  const told = { on: day, what, coins, note: words, ...(job !== undefined && { job }) };
  return ok(movesAdded(`${goodsOf(derived, { of, amount })} ${says}`, partMoves(parts, told, moveIds(records))));
}

interface TooMuch {
  readonly of: string;
  readonly asked: number;
  readonly on: string;
}

/** More than stands there is counted first; what stands there and is not to give is kept, apart or past its best. */
function tooMuch(derived: Derived, { of, asked, on: day }: TooMuch, parts: readonly LotPart[]): ActFault {
  const { records, display } = derived;
  const unit = unitInStore(of, records) ?? 'each';
  const { onHand } = stock(records, of, { asked: day });
  const free = partsSum(parts);
  if (asked - onHand > NOTHING) return { kind: 'more-than-stands', goods: of, unit, stands: onHand, display };
  return { kind: 'not-to-give', material: of, unit, asked, free, display };
}

const CountStock = z.strictObject({
  of: z.string(),
  amount: z.number().min(0).max(1e9).describe('What stands there, in the unit of the goods.'),
  lot,
  note,
  on,
});

export const countStock = act<z.infer<typeof CountStock>>({
  name: 'countStock',
  says: 'Writes down what was counted in the Store: the difference is a move; the note says why.',
  input: CountStock,
  run: (derived, { of, amount, lot: only, note: words, on: day = derived.today }) => {
    const { records } = derived;
    const fault = faultOf([day]);
    if (fault) return failed(fault);
    const unit = unitOf(derived, of);
    if (!unit.ok) return unit;
    const { lots, onHand } = stock(records, of, { asked: day });
    const stands = only === undefined ? onHand : (lots.find((each) => each.lot.id === only)?.amount ?? 0);
    const from = { members: membersOf(records, of), on: day, lot: only, from: 'all' } as const;
    const moves = countMoves(derived, { from, of, stands, amount, note: words });
    return moves.ok ? ok(movesAdded(`${goodsOf(derived, { of, amount })} counted`, moves.value)) : moves;
  },
});

interface Counted {
  readonly from: Omit<Taking, 'amount'>;
  readonly of: string;
  readonly stands: number;
  readonly amount: number;
  readonly note: string;
}

/** What was missing goes as a loss does; what was over stands in the lot that is used last, or in one of its own. */
function countMoves(
  { records, display }: Derived,
  { from, of, stands, amount, note: words }: Counted,
): Result<readonly Move[], ActFault> {
  const difference = amount - stands;
  const told = { on: from.on, what: 'counted', note: words } as const;
  if (Math.abs(difference) <= NOTHING) return ok([]);
  if (difference < 0) {
    const gone = takeLots(records, { ...from, amount: -difference });
    if (-difference - partsSum(gone) > NOTHING)
      return failed({ kind: 'counted-before', goods: of, on: from.on, display });
    return ok(partMoves(gone, told, moveIds(records)));
  }
  const into = takeLots(records, { ...from, amount: Infinity }).at(-1)?.lot;
  if (!into) return ok([lotMove(records, { of, on: from.on, amount, note: words })]);
  return ok(partMoves([{ lot: into, amount: -difference }], told, moveIds(records)));
}

const SetLeast = z.strictObject({
  material: z.string(),
  least: z.number().min(0).max(1e9).nullable().describe('Below it a run over jobs buys for the store; null: no level.'),
  upTo: z.number().min(0).max(1e9).nullable().optional().describe('What it buys up to; left out: the least.'),
});

export const setLeast = act<z.infer<typeof SetLeast>>({
  name: 'setLeast',
  says: 'Sets the least that should lie in the Store of a material, and up to what it is filled.',
  input: SetLeast,
  run: ({ records }, { material, least, upTo = null }) => {
    const found = findRecord(records, 'material', material);
    if (!found.ok) return found;
    if (least !== null && upTo !== null && upTo < least) return failed({ kind: 'least-over-up-to', least, upTo });
    const to = withFields(found.value, { least, upTo: least === null ? null : upTo });
    return ok(recordChanged(`least ${material} in the Store`, 'material', { from: found.value, to }));
  },
});

function unitOf({ records }: Derived, goods: string): Result<string, ActFault> {
  const unit = unitInStore(goods, records);
  if (unit !== undefined) return ok(unit);
  const found = findRecord(records, 'material', goods);
  return found.ok ? ok(found.value.unit) : found;
}

/** `16.84 L of M01` */
function goodsOf(
  { records, display }: Derived,
  { of, amount }: { readonly of: string; readonly amount: number },
): string {
  return `${goodsWords(amount, unitInStore(of, records) ?? 'each', display)} of ${of}`;
}
