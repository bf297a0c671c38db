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
    expect(said({ dam_height: '' })).toBe('Not known yet: T07, dam.');
  });

  test('minutes that are not known keep the price back as well', () => {
    expect(said({ litter_batches: '' })).toBe('Not known yet: T07, batches of leaves.');
  });

  test('every material without a price on the day is named', () => {
    const prices = priceBook(records, { on: '2027-02-28', oldPriceDays: 180 });
    expect(said({}, { prices })).toMatch(
      /^Not known yet: price of Rectangle 900 × 445 × 600; price of Expanded clay 8-16 mm; .*tube with cap\.$/,
    );
  });

  test('an order with all its figures has nothing to say', () => {
    expect(said({})).toBeUndefined();
  });
});
