import { describe, expect, test } from 'vitest';
import { groupCosts } from '#shared-calc/buy/group-costs.ts';
import { needsOf } from '#shared-calc/buy/needs.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import { demoPrices, need } from './demo-goods.ts';

describe('groupCosts', () => {
  test.each([
    {
      basis: 'used' as const,
      costs: [
        ['media', 1650 + 838],
        ['plants', 1240],
      ],
    },
    {
      basis: 'packs' as const,
      costs: [
        ['media', 1960 + 1040],
        ['plants', 1240],
      ],
    },
  ])('by the $basis basis the costs of a group add up', ({ basis, costs }) => {
    const needs = [need('M01', 16.837), need('M15', 161.24), need('PG', 4, { group: 'plants' })];
    const list = needsOf(needs, { prices: demoPrices, stock: NO_STOCK });
    expect(list.ok && [...groupCosts(list.value.needs, basis)]).toEqual(costs);
  });
});
