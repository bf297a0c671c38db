import { readDay } from '#shared-calc/read/read-day.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** An entry for the Store, as typed. */
export interface PutInWishes {
  readonly material: string;
  readonly amount: string;
  readonly sealed: boolean;
  /** Empty: reserved for no job. */
  readonly job: string;
  readonly bestBefore: string;
  readonly quarantineUntil: string;
  readonly note: string;
}

export function asksOf(material: string): PutInWishes {
  return { material, amount: '', sealed: true, job: '', bestBefore: '', quarantineUntil: '', note: '' };
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
  const unit = unitOfGoods(wishes.material, records);
  if (unit === undefined) return failed('Choose what it is.');
  const amount = said(
    readMeasure(wishes.amount, { name: calledOf('stockEntry', 'amount'), stored: unit, low: 1e-6 }, display),
  );
  if (!amount.ok) return amount;
  const bestBefore = dayOf(wishes, 'bestBefore', today);
  if (!bestBefore.ok) return bestBefore;
  const quarantineUntil = dayOf(wishes, 'quarantineUntil', today);
  if (!quarantineUntil.ok) return quarantineUntil;
  return ok({
    material: wishes.material,
    amount: amount.value ?? 0,
    sealed: wishes.sealed,
    note: wishes.note.trim(),
    reservedFor: wishes.job === '' ? undefined : wishes.job,
    bestBefore: bestBefore.value,
    quarantineUntil: quarantineUntil.value,
  });
}

/** Nothing if no day is given. */
function dayOf(
  wishes: PutInWishes,
  key: 'bestBefore' | 'quarantineUntil',
  today: Day,
): Result<Day | undefined, string> {
  const text = wishes[key];
  return text.trim() === '' ? ok(undefined) : said(readDay(text, calledOf('stockEntry', key), today));
}
