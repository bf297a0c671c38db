import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hourCost, overBuilder } from '#shared-calc/price/hour-coins.ts';
import type { QuoteRules } from '#shared-calc/price/quote-rules.ts';
import { quoteSums } from '#shared-calc/price/quote-sums.ts';
import type { Rate } from '#shared-calc/records/records.ts';
import { costsOfT05, demoRules, minutesOfT05 } from './demo-rules.ts';

describe('figures not given', () => {
  test('what the house has not given is named all at once, and its tax is none that is known', () => {
    const margins = demoRules.margins.map((each) => (each.id === 'media' ? { ...each, share: undefined } : each));
    const taxClasses = demoRules.taxClasses.map((each) => (each.id === 'low' ? { ...each, share: undefined } : each));
    const builder = { what: 'rate', kind: 'rate', of: 'R-builder', label: 'Builder' } as const;
    const rules = {
      ...demoRules,
      margins,
      taxClasses,
      hour: { coins: 1100, builderCoins: 0, notGiven: [builder] },
      paid: new Map([['R-fitter', { label: 'Fitter' }]]),
      depositShare: undefined,
      warrantyShare: undefined,
      plantLossShare: undefined,
    };
    const quote = quoteSums(
      { groupCosts: costsOfT05, minutes: minutesOfT05, paidAt: new Map([['R-fitter', 60]]) },
      rules,
    );
    expect(quote.ok && quote.value.missing).toEqual([
      builder,
      { what: 'rate', kind: 'rate', of: 'R-fitter', label: 'Fitter' },
      { what: 'rate', kind: 'margin', of: 'media', label: 'Margin of media' },
      { what: 'tax', kind: 'taxClass', of: 'low', label: 'Tax: Low' },
      { what: 'rate', kind: 'workshop', of: 'depositShare', label: 'Deposit' },
      { what: 'rate', kind: 'workshop', of: 'warrantyShare', label: 'For warranty' },
      { what: 'rate', kind: 'workshop', of: 'plantLossShare', label: 'For plants that fail' },
    ]);
    expect(quote.ok && quote.value.sums.tax.map(({ taxClass }) => taxClass)).toEqual(['standard']);
  });

  test('a figure that no cost of this quote asks for does not stop it, and a deposit without a step is not rounded', () => {
    const margins = demoRules.margins.map((each) => (each.id === 'media' ? each : { ...each, share: undefined }));
    const taxClasses = demoRules.taxClasses.map((each) => (each.id === 'low' ? { ...each, share: undefined } : each));
    const hour = {
      coins: 0,
      builderCoins: 0,
      notGiven: [{ what: 'rate', kind: 'rate', of: 'R-builder', label: 'Builder' }],
    } as const;
    const rules = { ...demoRules, margins, taxClasses, hour, plantLossShare: undefined, depositStepCoins: undefined };
    const quote = quoteSums({ groupCosts: new Map([['media', 4689]]), minutes: 0 }, rules);
    // 46.89 / 0.6 = 78.15, with 12 % of tax 87.53, of which 40 % is 35.02 up to the coin.
    expect(quote).toMatchObject({
      ok: true,
      value: { sums: { netCoins: 7815, grossCoins: 8753, depositCoins: 3502 }, missing: [] },
    });
  });

  test('a figure that is given never lowers a sum that is at least so much', () => {
    const figures = { groupCosts: costsOfT05, minutes: minutesOfT05, paidAt: new Map([['R-fitter', 60]]) };
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...houseFigures], { minLength: 1 }),
        fc.nat({ max: 4000 }),
        (order, fitterCoins) => {
          const steps = Array.from({ length: order.length + 1 }, (_, given) => {
            const quote = quoteSums(figures, rulesWithout(order.slice(given), fitterCoins));
            if (!quote.ok) throw new Error(quote.fault.kind);
            const { costCoins, netCoins, grossCoins, depositCoins } = quote.value.sums;
            return { costCoins, netCoins, grossCoins, depositCoins };
          });
          for (const [at, next] of steps.entries()) {
            const before = steps[at - 1] ?? next;
            for (const name of ['costCoins', 'netCoins', 'grossCoins', 'depositCoins'] as const) {
              expect([name, next[name] >= before[name]]).toEqual([name, true]);
            }
          }
        },
      ),
    );
  });
});

const houseFigures = [
  'builder',
  'overhead',
  'fitter',
  'margin',
  'tax',
  'depositShare',
  'contingencyShare',
  'warrantyShare',
  'plantLossShare',
] as const;

/** The demo's rules without some of their figures, at steps of 50.00 and rates of an hour of 32.00 and 11.00. */
function rulesWithout(none: readonly (typeof houseFigures)[number][], fitterCoins: number): QuoteRules {
  const lacks = (figure: (typeof houseFigures)[number]) => none.includes(figure);
  const rates = [
    ['R-builder', 'builder', 3200],
    ['R-overhead', 'overhead', 1100],
    ['R-fitter', 'fitter', fitterCoins],
  ] as const;
  const rate = new Map(
    rates.map(([id, figure, coins]): [string, Rate] => [
      id,
      { id, label: id, per: 'h', source: 'house', sourceNote: '', ...(!lacks(figure) && { coins }) },
    ]),
  );
  const share = (figure: (typeof houseFigures)[number], given: number) => (lacks(figure) ? undefined : given);
  return {
    ...demoRules,
    hour: hourCost({ rate }),
    paid: overBuilder({ rate }),
    margins: demoRules.margins.map((each) => ({ ...each, share: share('margin', each.share ?? 0) })),
    taxClasses: demoRules.taxClasses.map((each) => ({ ...each, share: share('tax', each.share ?? 0) })),
    depositShare: share('depositShare', 0.4),
    contingencyShare: share('contingencyShare', 0.05),
    warrantyShare: share('warrantyShare', 0.02),
    plantLossShare: share('plantLossShare', 0.1),
    priceStepCoins: 5000,
  };
}
