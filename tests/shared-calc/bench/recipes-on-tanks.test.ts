import { describe, expect, test } from 'vitest';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { demoBench, demoPricing, demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const tanks = [...records.tank.keys()];

describe.each(demoRecipes)('recipe %s on every tank of the tank book', (recipe) => {
  const bench = demoBench({ recipe, sizes: tanks }, records);
  const lines = bench.input().lines;

  test.each(tanks)('every box of %s comes to a figure within its bounds', (tank) => {
    const wrong = lines.flatMap((line) => {
      const box = bench.box(tank, line.name);
      return box.value === undefined || box.flags.length > 0
        ? [`${line.name} ${JSON.stringify(box.cause ?? box.flags)}`]
        : [];
    });
    expect(wrong).toEqual([]);
  });

  test.each(tanks)('no need of %s is below zero, and it has a price', (tank) => {
    const sums = orderSums(bench, [tank], demoPricing(records));
    const needs = lines.filter((line) => line.role === 'need').map((line) => bench.box(tank, line.name).value);
    expect(needs.filter((value) => typeof value !== 'number' || value < 0)).toEqual([]);
    expect(sums.ok && sums.value.quote.grossCoins > 10_000).toBe(true);
  });
});
