import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { rescaleCoins } from '#shared-calc/acts/rescale-coins.ts';
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
