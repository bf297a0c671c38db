import { z } from 'zod';
import { findCurrency } from '#shared-calc/quantity/currencies.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { emptyChange, type Change, updated, type Updated } from '#shared-calc/records/change.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { allKinds, recordKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';

const Decimals = z.int().min(0).max(4);

const ChooseCurrency = z.strictObject({
  currency: recordKinds.workshop.shape.currency
    .min(1)
    .describe('A code of ISO 4217, or a word of one to three letters.'),
  coinDecimals: Decimals.optional().describe('Left out: those of the currency; of another word, those there are.'),
});

/** Names the currency; amounts keep their worth in its coins. */
export const chooseCurrency = act<z.infer<typeof ChooseCurrency>>({
  name: 'chooseCurrency',
  says: 'Names the currency of the workshop and gives it its decimals; every amount stays what it is worth.',
  input: ChooseCurrency,
  run: ({ records, workshop }, { currency, coinDecimals }) => {
    const decimals = coinDecimals ?? findCurrency(currency)?.decimals ?? workshop.coinDecimals;
    const done = rescaled(records, decimals);
    if (!done.ok) return done;
    const { id } = workshop;
    const others = done.value.updated.filter(({ kind }) => kind !== 'workshop');
    const to = done.value.updated.find((each) => each.kind === 'workshop' && each.to.id === id)?.to ?? workshop;
    const named = updated('workshop', workshop, recordKinds.workshop.parse({ ...to, currency }));
    return ok({ ...emptyChange(`${currency} as the currency`), updated: [named, ...others] });
  },
});

/** The fields that hold money, by kind, in whole coins. */
const coinFields: readonly { readonly kind: RecordKind; readonly keys: readonly string[] }[] = allKinds.map((kind) => ({
  kind,
  keys: fieldsOf(kind).flatMap(([key, field]) => (field.kind === 'money' ? key : [])),
}));

const RescaleCoins = z.strictObject({ coinDecimals: Decimals });

/**
 * Changes the decimals of the currency: every amount keeps its worth, so its coins change. Refused if an amount has a
 * fraction that the new coin cannot hold; a price that is a guess is rounded. Issued quotes stay as issued.
 */
export const rescaleCoins = act<z.infer<typeof RescaleCoins>>({
  name: 'rescaleCoins',
  says: 'Gives the currency another number of decimals; every amount stays what it is worth.',
  input: RescaleCoins,
  run: ({ records }, { coinDecimals }) => rescaled(records, coinDecimals),
});

function rescaled(records: Records, coinDecimals: number): Result<Change, ActFault> {
  const workshop = workshopOf(records);
  const steps = coinDecimals - workshop.coinDecimals;
  const rescaledRecords: Updated[] = [];
  for (const { kind, keys } of coinFields.filter((each) => each.keys.length > 0)) {
    for (const record of records[kind].values()) {
      const scaled = scaleRecord(record, keys, { steps, rounds: 'guess' in record && record.guess === true });
      if (!scaled.ok) {
        const amount = coinsText(scaled.fault, workshop.coinDecimals);
        return failed({ kind: 'uneven-coins', record: { kind, id: record.id }, amount });
      }
      const to = kind === 'workshop' ? { ...scaled.value, coinDecimals } : scaled.value;
      if (steps !== 0) rescaledRecords.push(updated(kind, record, to));
    }
  }
  return ok({ ...emptyChange(`${coinDecimals} decimals in the currency`), updated: rescaledRecords });
}

interface Scaling {
  /** How many decimals more. */
  readonly steps: number;
  /** What is no whole number of new coins is rounded. */
  readonly rounds: boolean;
}

/** The record with its amounts in the new coin, or the first amount that is not a whole number of new coins. */
function scaleRecord<R extends object>(
  record: R,
  fields: readonly string[],
  { steps, rounds }: Scaling,
): Result<R, number> {
  const amounts = new Map<string, unknown>(Object.entries(record));
  const next: Record<string, number> = {};
  for (const field of fields) {
    const coins = amounts.get(field);
    if (typeof coins !== 'number') continue;
    const exact = steps >= 0 ? coins * 10 ** steps : coins / 10 ** -steps;
    const scaled = rounds ? Math.round(exact) : exact;
    if (!Number.isSafeInteger(scaled)) return failed(coins);
    next[field] = scaled;
  }
  return ok({ ...record, ...next });
}
