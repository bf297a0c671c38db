import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { workedJob } from '#tests/worked-job.ts';
import { orderPlants } from '#shared-calc/jobs/order-plants.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import { supplierOrders, type SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { DEMO_DAY, demoPrices } from '#tests/demo-bench.ts';
import { jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** The orders for the library's T05, with the stock of the demo's Store. */
function libraryOrders(): ReadonlyMap<string, SupplierOrder> {
  const records = libraryJob({ audience: 'Children of the school next door' });
  const { run } = valueOf(derive(records, DEMO_DAY).run({ jobs: ['J02'] }));
  const { bench } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
  const { survey } = jobOf(records, 'J02');
  const orders = supplierOrders(
    {
      run,
      on: DEMO_DAY,
      calendar: calendarOf(records),
      panes: paneCuts(bench).map((cut) => ({ ...cut, column: `J02 ${cut.column}` })),
      plants: orderPlants([{ bench, survey }], pricedPlants(records, demoPrices(records))),
      planned: [
        { job: 'J02', plan: { steps: [{ step: 'tank', state: 'open', date: '2027-03-30', orderBy: '2027-03-16' }] } },
      ],
    },
    records,
  );
  return new Map(orders.map((order) => [order.supplier, order]));
}

describe('supplierOrders', () => {
  const orders = libraryOrders();

  test('panes go to the cutter by their sizes, a tank by its ten working days', () => {
    const greavel = orders.get('S-greavel');
    expect(greavel?.rows.map(({ material, what, cost }) => [material, what, cost])).toEqual([
      ['T05', ['1 piece'], '148.00'],
      ['M25a', ['1 piece'], '10.00'],
      ['M25b', ['0.2495 m²', '1 of 597 × 418 mm, 4 mm glass (J02 T05)'], '11.60'],
    ]);
    expect([greavel?.goods, greavel?.carriage, greavel?.landed, greavel?.arrivesOn]).toEqual([
      '169.60',
      '12.00',
      '181.60',
      '2027-03-22',
    ]);
  });

  test('each order says the last day to send it, and for whose handover', () => {
    const days = [...orders.values()].map(({ supplier, orderBy }) => [supplier, orderBy?.day, orderBy?.job]);
    expect(Object.fromEntries(days.map(([supplier, ...day]) => [supplier, day]))).toMatchObject({
      'S-greavel': ['2027-03-16', 'J02'],
      'S-marlvale': [undefined, undefined],
    });
  });

  test('plants are ordered by name, harmless ones for children, on a day the plant house comes', () => {
    const marlvale = orders.get('S-marlvale');
    const climbers = marlvale?.rows.filter(({ material }) => material === 'P02');
    expect(climbers).toEqual([
      { material: 'P02', label: 'Marcgravia sp., shingling', what: ['3 pieces'], cost: '24.60', classCost: '11.70' },
    ]);
    expect(marlvale?.arrivesOn).toBe('2027-03-16');
  });

  test('an order is summed at the own prices of its plants, not at the price of their class', () => {
    const rows = orders.get('S-marlvale')?.rows ?? [];
    const sum = rows.reduce((all, { cost }) => all + Math.round(Number(cost) * 100), 0);
    expect(rows.every(({ classCost }) => classCost !== undefined)).toBe(true);
    expect(orders.get('S-marlvale')?.goods).toBe((sum / 100).toFixed(2));
  });

  test('what the Store has is not ordered, and a least order is said', () => {
    expect([...orders.values()].flatMap(({ rows }) => rows.map(({ material }) => material)).includes('M24')).toBe(
      false,
    );
    expect(orders.get('S-marlvale')?.shortOfMinimum).toBe('');
  });
});
