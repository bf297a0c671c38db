import { describe, expect, test } from 'vitest';
import { rescaleCoins } from '#renderer/places/workshop/rescale-coins.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed } from '#shared-calc/result.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();

describe('rescaleCoins', () => {
  test('another decimal leaves every amount what it is worth', () => {
    const done = rescaleCoins(records, 3);
    if (!done.ok) throw new Error(done.fault);
    const after = applyChange(records, done.value);
    expect([
      workshopOf(after).coinDecimals,
      after.rate.get('R-builder')?.coins,
      after.supplier.get('S-hollin')?.freeFromCoins,
      after.packPrice.get('M04-6@start')?.priceCoins,
      rescaleCoins(after, 2).ok,
    ]).toEqual([3, 32_000, 90_000, 7200, true]);
  });

  test('an amount with parts that the new coin does not know is named', () => {
    expect(rescaleCoins(records, 0)).toEqual(
      failed('7.50 of the supplier S-hollin has parts that such a coin does not know. Write it without them first.'),
    );
  });
});
