import { describe, expect, test } from 'vitest';
import { quoteSums } from '#shared-calc/price/quote-sums.ts';
import { costsOfT05, demoRules, minutesOfT05 } from './demo-rules.ts';

describe('figures not given', () => {
  test('what the house has not given is named all at once, never taken as 0', () => {
    const margins = demoRules.margins.map((each) => (each.id === 'media' ? { ...each, share: undefined } : each));
    const taxClasses = demoRules.taxClasses.map((each) => (each.id === 'low' ? { ...each, share: undefined } : each));
    const builder = { what: 'rate', kind: 'rate', of: 'R-builder', label: 'Builder' } as const;
    const rules = {
      ...demoRules,
      margins,
      taxClasses,
      hour: { coins: 1100, notGiven: [builder] },
      paid: new Map([['R-fitter', { label: 'Fitter' }]]),
      depositShare: undefined,
      warrantyShare: undefined,
      plantLossShare: undefined,
    };
    expect(
      quoteSums({ groupCosts: costsOfT05, minutes: minutesOfT05, paidAt: new Map([['R-fitter', 60]]) }, rules),
    ).toEqual({
      ok: false,
      fault: {
        kind: 'figures-not-given',
        missing: [
          builder,
          { what: 'rate', kind: 'rate', of: 'R-fitter', label: 'Fitter' },
          { what: 'rate', kind: 'margin', of: 'media', label: 'Margin of media' },
          { what: 'tax', kind: 'taxClass', of: 'low', label: 'Tax: Low' },
          { what: 'rate', kind: 'workshop', of: 'depositShare', label: 'Deposit' },
          { what: 'rate', kind: 'workshop', of: 'warrantyShare', label: 'For warranty' },
          { what: 'rate', kind: 'workshop', of: 'plantLossShare', label: 'For plants that fail' },
        ],
      },
    });
  });

  test('a figure that no cost of this quote asks for does not stop it, and a deposit without a step is not rounded', () => {
    const margins = demoRules.margins.map((each) => (each.id === 'media' ? each : { ...each, share: undefined }));
    const taxClasses = demoRules.taxClasses.map((each) => (each.id === 'low' ? { ...each, share: undefined } : each));
    const hour = { coins: 0, notGiven: [{ what: 'rate', kind: 'rate', of: 'R-builder', label: 'Builder' }] } as const;
    const rules = { ...demoRules, margins, taxClasses, hour, plantLossShare: undefined, depositStepCoins: undefined };
    const quote = quoteSums({ groupCosts: new Map([['media', 4689]]), minutes: 0 }, rules);
    // 46.89 / 0.6 = 78.15, with 12 % of tax 87.53, of which 40 % is 35.02 up to the coin.
    expect(quote).toMatchObject({ ok: true, value: { netCoins: 7815, grossCoins: 8753, depositCoins: 3502 } });
  });
});
