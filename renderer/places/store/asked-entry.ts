import { readDay } from '#shared-calc/read/read-day.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** An entry for the Store, as typed. */
export interface PutInWishes {
  readonly of: string;
  readonly paid: string;
  readonly amount: string;
  readonly sealed: boolean;
  /** Empty: reserved for no job. */
  readonly job: string;
  readonly bestBefore: string;
  readonly until: string;
  readonly note: string;
}

export function asksOf(of: string): PutInWishes {
  return { of, amount: '', paid: '', sealed: true, job: '', bestBefore: '', until: '', note: '' };
}

interface Reading {
  readonly display: Display;
  readonly today: Day;
}

/** The entry as the act's input, or what cannot be parsed. */
export function putInTyped(
  records: Records,
  wishes: PutInWishes,
  { display, today }: Reading,
): Result<ActInputs['putIn'], string> {
  const unit = unitInStore(wishes.of, records);
  if (unit === undefined) return failed('Choose what it is.');
  const amount = said(
    readMeasure(wishes.amount, { name: calledOf('move', 'amount'), stored: unit, low: 1e-6 }, display),
  );
  if (!amount.ok) return amount;
  const coins = coinsOf(wishes, display);
  if (!coins.ok) return coins;
  const bestBefore = dayOf(wishes, 'bestBefore', { display, today });
  if (!bestBefore.ok) return bestBefore;
  const until = dayOf(wishes, 'until', { display, today });
  if (!until.ok) return until;
  return ok({
    of: wishes.of,
    amount: amount.value ?? 0,
    sealed: wishes.sealed,
    note: wishes.note.trim(),
    job: wishes.job === '' ? undefined : wishes.job,
    coins: coins.value,
    bestBefore: bestBefore.value,
    until: until.value,
  });
}

/** Nothing if no day is given. */
function dayOf(wishes: PutInWishes, key: 'bestBefore' | 'until', reading: Reading): Result<Day | undefined, string> {
  const text = wishes[key];
  return text.trim() === '' ? ok(undefined) : said(readDay(text, calledOf('move', key), reading));
}

/** Nothing if no price is given. */
function coinsOf({ paid }: PutInWishes, display: Display): Result<number | undefined, string> {
  return paid.trim() === '' ? ok(undefined) : said(readMoney(paid, moneyOf(display), 'Paid for it'));
}

function moneyOf({ currency, moneyDecimals: coinDecimals = 2, decimalComma = false }: Display) {
  return { currency, coinDecimals, decimalComma };
}
