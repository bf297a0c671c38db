import { describe, expect, test } from 'vitest';
import { orderPaper } from '#shared-calc/papers/order-paper.ts';
import { jobPaperInput } from '#shared-calc/papers/paper-input.ts';
import { supplierOrder, type SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** The orders placed for the library's T05, with the stock of the demo's Store. */
const placed = done(libraryJob({ audience: 'Children of the school next door' }), 'placeOrders', {
  jobs: ['J02'],
  note: '',
}).records;

function printed(records: Records, supplier: string): SupplierOrder | undefined {
  const order = [...records.order.values()].find((each) => each.supplier === supplier);
  return order && supplierOrder(order, records);
}

describe('supplierOrder', () => {
  test('panes go to the cutter by their sizes, a tank by its ten working days', () => {
    const greavel = printed(placed, 'S-greavel');
    expect(greavel?.rows.map(({ material, what, cost }) => [material, what, cost])).toEqual([
      ['T05', '1 piece', '148.00'],
      ['M25a', '1 piece', '10.00'],
      ['M25b', '1 of 597 × 418 mm, 4 mm glass (J02)', '11.60'],
    ]);
    expect([greavel?.goods, greavel?.carriage, greavel?.landed, greavel?.arrivesOn]).toEqual([
      '169.60',
      '12.00',
      '181.60',
      '2027-03-22',
    ]);
  });

  test('plants are ordered by name at their own price, on a day the plant house comes', () => {
    const marlvale = printed(placed, 'S-marlvale');
    expect(marlvale?.rows.map(({ material, what }) => [material, what])).toContainEqual(['P02', '3 pieces']);
    expect([marlvale?.arrivesOn, marlvale?.goods, marlvale?.plantsByClass]).toEqual(['2027-03-16', '83.00', '71.50']);
  });

  test('what the Store has is not ordered, and a least order is said', () => {
    expect([...placed.order.values()].flatMap(({ lines }) => lines.map(({ of }) => of))).not.toContain('M24');
    expect(printed(placed, 'S-marlvale')?.shortOfMinimum).toBe('');
    const one = { supplier: 'S-marlvale', packs: [{ pack: 'P13-1', count: 2 }], note: '' };
    expect(printed(done(libraryJob(), 'newOrder', one).records, 'S-marlvale')?.shortOfMinimum).toBe('29.60');
  });

  test('printed again it is what was ordered, whatever prices and sizes are by now', () => {
    const before = printed(placed, 'S-hollin');
    const dearer = done(placed, 'put', {
      kind: 'packPrice',
      record: { ...priceOf(placed, 'M01-10'), priceCoins: 9999 },
    });
    const larger = done(dearer.records, 'setSizes', { job: 'J02', sizes: [{ tank: 'T08', count: 3 }] });
    expect(printed(larger.records, 'S-hollin')).toEqual(before);
  });
});

function priceOf({ packPrice }: Records, pack: string) {
  const found = [...packPrice.values()].find((price) => price.pack === pack);
  if (!found) throw new Error(`no price of ${pack}`);
  return found;
}

describe('orderPaper', () => {
  const titles = (records: Records) => {
    const input = jobPaperInput(derive(records, DEMO_DAY), 'J02');
    const paper = input && valueOf(orderPaper(input));
    return paper?.document.blocks.flatMap((block) => (block.is === 'sheet' ? [block.text] : []));
  };

  test('the orders of a job are those placed, and then what is not ordered yet', () => {
    const part = done(libraryJob(), 'placeOrders', { jobs: ['J02'], suppliers: ['S-hollin'], note: '' }).records;
    expect(titles(part)?.[0]).toBe("Order to Hollin Lane Growers' Supply");
    expect(titles(part)).toHaveLength(6);
    expect(titles(placed)?.at(-1)).toBe('For us: when these goods come in');
  });
});
