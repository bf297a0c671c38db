import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { RecordKind } from '#shared-calc/records/records.ts';
import type { QuoteBody } from './quote-body.ts';

/** A quote from before the currency had other decimals, in the coins of now; half a coin goes up. */
export function bodyInCoins(body: QuoteBody, coinDecimals: number): QuoteBody {
  const steps = coinDecimals - body.workshop.coinDecimals;
  if (steps === 0) return body;
  const scale = (coins: number) => Math.round(coins * 10 ** steps);
  const scaled = <R extends object>(kind: RecordKind, record: R): R => withScaled(record, moneyOf(kind), scale);
  const { costCoins, netCoins, grossCoins, depositCoins } = body.sums;
  return {
    ...body,
    workshop: { ...scaled('workshop', body.workshop), coinDecimals },
    rates: body.rates.map((rate) => scaled('rate', rate)),
    margins: body.margins.map((margin) => scaled('margin', margin)),
    oneOffs: body.oneOffs.map((line) => scaled('quoteLine', line)),
    goods: body.goods.map((goods) => ({
      ...goods,
      packs: goods.packs.map((pack) => ({ ...pack, priceCoins: scale(pack.priceCoins) })),
    })),
    sums: {
      ...body.sums,
      costCoins: scale(costCoins),
      netCoins: scale(netCoins),
      grossCoins: scale(grossCoins),
      depositCoins: scale(depositCoins),
    },
  };
}

function moneyOf(kind: RecordKind): ReadonlySet<string> {
  return new Set(fieldsOf(kind).flatMap(([key, field]) => (field.kind === 'money' ? [key] : [])));
}

function withScaled<R extends object>(record: R, keys: ReadonlySet<string>, scale: (coins: number) => number): R {
  const next = { ...record };
  for (const [key, value] of Object.entries(record)) {
    if (keys.has(key) && typeof value === 'number') Reflect.set(next, key, scale(value));
  }
  return next;
}
