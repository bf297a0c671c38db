import { describe, expect, test } from 'vitest';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { demoRules } from './demo-rules.ts';

const workshop: Workshop = {
  id: 'workshop',
  name: '',
  place: '',
  letterhead: '',
  terms: '',
  payment: '',
  currency: 'cr',
  coinDecimals: 2,
  altitudeM: 650,
  unitsShown: {},
  decimalComma: false,
  oldPriceDays: 180,
  openWeekdays: [1, 2, 3, 4, 5],
  depositShare: 0.4,
  depositStepCoins: 500,
  quoteValidDays: 21,
  contingencyShare: 0,
  warrantyShare: 0,
  plantLossShare: 0,
  discountShare: 0,
  priceStepCoins: 0,
  pressureKpa: 93.756,
};

describe('quoteRules', () => {
  test('takes terms from the workshop and margins in their own order', () => {
    const margin = new Map(demoRules.margins.toReversed().map((each) => [each.id, each]));
    const taxClass = new Map(demoRules.taxClasses.map((each) => [each.id, each]));
    const hourly = [
      ['R-builder', 'Builder', 3200],
      ['R-fitter', 'Fitter', 2700],
      ['R-grower', 'Grower', 2400],
      ['R-overhead', 'Overhead', 1100],
    ] as const;
    const rate = new Map(hourly.map(([id, label, coins]) => [id, { id, label, coins, per: 'h' as const }]));
    expect(quoteRules(workshop, { margin, taxClass, rate })).toEqual(demoRules);
  });
});
