import { describe, expect, test } from 'vitest';
import { orderSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { demoBench, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const pricing = demoPricing(records);

function said(job: Readonly<Record<string, string>>, over: Partial<Pricing> = {}): string | undefined {
  const sums = orderSums(demoBench({ sizes: ['T07'], job }, records), ['T07'], { ...pricing, ...over });
  return sums.ok ? undefined : sayOrderFault(sums.fault);
}

describe('sayOrderFault', () => {
  test('a box without a figure is named with its size', () => {
    expect(said({ dam_height: '' })).toBe('T07, drainage_need: Waits on dam_height. Needs a figure: dam_height.');
  });

  test('minutes that are not known keep the price back as well', () => {
    expect(said({ litter_batches: '' })).toBe(
      'T07, litter_work: Waits on litter_batches. Needs a figure: litter_batches.',
    );
  });

  test('a pack without a price on the day is named', () => {
    const prices = priceBook(records, { on: '2027-02-28', oldPriceDays: 180 });
    expect(said({}, { prices })).toMatch(/^Pack of 1 .*Rectangle 900 × 445 × 600.* has no price .*2027-02-28\.$/);
  });

  test('an order with all its figures has nothing to say', () => {
    expect(said({})).toBeUndefined();
  });
});
