import { coinsText } from '#shared-calc/buy/coins.ts';
import { readMoney } from '#shared-calc/papers/read-money.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Field, KeyOf } from './field.ts';

export interface MoneyParts {
  readonly title: string;
  readonly mayBeEmpty?: boolean;
  readonly width?: number;
}

/** An amount of money, kept in whole coins. */
export function moneyField<R>(key: KeyOf<R, number>, parts: MoneyParts, workshop: Workshop): Field<R> {
  const { title, mayBeEmpty = false, width = 5.5 } = parts;
  const coinsOf = (record: R) => {
    const coins: unknown = record[key];
    return typeof coins === 'number' ? coins : undefined;
  };
  return {
    key,
    title,
    unit: workshop.currency,
    look: 'figure',
    width,
    show: (record) => showCoins(coinsOf(record), workshop),
    entry: (record) => entryOfCoins(coinsOf(record), workshop),
    read: (text, record) => {
      if (mayBeEmpty && text.trim() === '') return ok({ ...record, [key]: undefined });
      const read = readMoney(text, workshop);
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(`${title}: ${read.fault}`);
    },
  };
}

/** Coins as shown, thousands marked: `1,288.88`. */
export function showCoins(coins: number | undefined, { coinDecimals, decimalComma }: Workshop): string {
  return coins === undefined ? '' : writeNumber(coins / 10 ** coinDecimals, coinDecimals, { decimalComma });
}

/** Coins as they would be written: `1288.88`. */
export function entryOfCoins(coins: number | undefined, { coinDecimals, decimalComma }: Workshop): string {
  if (coins === undefined) return '';
  const text = coinsText(coins, coinDecimals);
  return decimalComma ? text.replace('.', ',') : text;
}
