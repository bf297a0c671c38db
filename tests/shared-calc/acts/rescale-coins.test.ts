import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { chooseCurrency, rescaleCoins } from '#shared-calc/acts/rescale-coins.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const rescale = (from: typeof records, coinDecimals: number) =>
  rescaleCoins.run(derive(from, DEMO_DAY), { coinDecimals });

describe('rescaleCoins', () => {
  test('another decimal leaves every amount what it is worth', () => {
    const done = rescale(records, 3);
    if (!done.ok) throw new Error(done.fault.kind);
    const after = applyChange(records, done.value);
    expect([
      workshopOf(after).coinDecimals,
      after.rate.get('R-builder')?.coins,
      after.supplier.get('S-hollin')?.freeFromCoins,
      after.packPrice.get('M04-6@start')?.priceCoins,
      rescale(after, 2).ok,
    ]).toEqual([3, 32_000, 90_000, 7200, true]);
  });

  test('an amount with parts that the new coin does not know is named', () => {
    const done = rescale(records, 0);
    expect(done.ok ? '' : sayActFault(done.fault)).toBe(
      '7.50 of the supplier S-hollin has parts that such a coin does not know. Write it without them first.',
    );
  });
});

describe('chooseCurrency', () => {
  const choose = (from: typeof records, currency: string, coinDecimals?: number) =>
    chooseCurrency.run(derive(from, DEMO_DAY), { currency, ...(coinDecimals !== undefined && { coinDecimals }) });
  const chosen = (from: typeof records, currency: string, coinDecimals?: number) => {
    const done = choose(from, currency, coinDecimals);
    if (!done.ok) throw new Error(done.fault.kind);
    return applyChange(from, done.value);
  };
  const money = (from: typeof records) => {
    const { currency, coinDecimals, depositStepCoins } = workshopOf(from);
    return [currency, coinDecimals, depositStepCoins, from.packPrice.get('M04-6@start')?.priceCoins];
  };

  test('a code brings the decimals of its currency, and no amount changes its worth', () => {
    expect(money(chosen(records, 'EUR'))).toEqual(['EUR', 2, 500, 720]);
    expect(money(chosen(records, 'KWD'))).toEqual(['KWD', 3, 5000, 7200]);
    expect(choose(records, 'JPY')).toEqual({
      ok: false,
      fault: { kind: 'uneven-coins', record: { kind: 'supplier', id: 'S-hollin' }, amount: '7.50' },
    });
  });

  test('a word of one’s own has the decimals that are there, or those that are said', () => {
    expect(money(chosen(records, 'pts'))).toEqual(['pts', 2, 500, 720]);
    expect(money(chosen(records, 'pts', 3))).toEqual(['pts', 3, 5000, 7200]);
  });

  test('a price that is a guess is rounded to a currency without coins', () => {
    const { supplier: _supplier, rate: _rate, packPrice, workshop, ...others } = records;
    const none = new Map<string, never>();
    const guesses = new Map([...packPrice].map(([id, price]) => [id, { ...price, guess: true }]));
    const yen = chosen({ ...others, workshop, supplier: none, rate: none, packPrice: guesses }, 'JPY');
    expect(money(yen)).toEqual(['JPY', 0, 5, 7]);
  });
});
