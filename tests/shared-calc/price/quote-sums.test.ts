import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { QuoteRules } from '#shared-calc/price/quote-rules.ts';
import { quoteSums, type QuoteFigures, type QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { costsOfT05, demoRules, minutesOfT05 } from './demo-rules.ts';

const t05: QuoteFigures = { groupCosts: costsOfT05, minutes: minutesOfT05 };

describe('quoteSums', () => {
  test('one T05, Full kit: 1,454.25 before tax, 1,615.56 with it, 650.00 deposit', () => {
    const quote = worked(t05);
    expect(quote.lines.map((line) => [line.group, line.costCoins, line.priceCoins, line.taxClass])).toEqual([
      ['tank', 14_800, 21_143, 'standard'],
      ['media', 4689, 7815, 'standard'],
      ['hardscape', 9240, 15_400, 'standard'],
      ['cover', 2160, 3323, 'standard'],
      ['lamps', 8800, 12_571, 'standard'],
      ['mist', 5800, 8286, 'standard'],
      ['plants', 7150, 13_000, 'low'],
      ['microfauna', 1400, 3500, 'low'],
      ['work', 44_075, 58_767, 'standard'],
      ['delivery', 1620, 1620, 'standard'],
    ]);
    expect({ ...quote, lines: [] }).toEqual({
      lines: [],
      costCoins: 99_734,
      netCoins: 145_425,
      tax: [
        { taxClass: 'standard', label: 'Standard', share: 0.12, netCoins: 128_925, coins: 15_471 },
        { taxClass: 'low', label: 'Low', share: 0.04, netCoins: 16_500, coins: 660 },
      ],
      grossCoins: 161_556,
      depositCoins: 65_000,
      hours: 10.25,
    });
  });

  test.each([
    { cost: 10_000, margin: 0.35, price: 15_385, source: 'trade sums, function 45' },
    { cost: 500, margin: 0.3, price: 714, source: 'a margin of 30 % on a cost of 5, worked from the definition' },
    { cost: 10_000, margin: 0, price: 10_000, source: 'no margin' },
  ])('a cost of $cost at a margin of $margin is $price ($source)', ({ cost, margin, price }) => {
    const margins = demoRules.margins.map((each) => ({ ...each, share: margin }));
    expect(worked({ groupCosts: new Map([['media', cost]]), minutes: 0 }, { margins }).netCoins).toBe(price);
  });

  test('what costs nothing has no line', () => {
    expect(
      worked({
        groupCosts: new Map([
          ['tank', 0],
          ['media', 4689],
        ]),
        minutes: 0,
      }).lines,
    ).toHaveLength(1);
  });

  test('a one-off line is priced by the margin of its group, and may take something off', () => {
    const quote = worked({
      groupCosts: new Map([['hardscape', 9240]]),
      minutes: 0,
      oneOffs: [
        { label: 'Ramp for the pump', group: 'hardscape', costCoins: 900 },
        { label: 'Old stock', group: 'hardscape', costCoins: -600 },
      ],
    });
    expect(quote.lines.map((line) => [line.label, line.priceCoins])).toEqual([
      ['hardscape', 15_400],
      ['Ramp for the pump', 1500],
      ['Old stock', -1000],
    ]);
    expect(quote.netCoins).toBe(15_900);
  });

  test('the deposit covers at least the cost of what is cut or grown for the job', () => {
    expect(
      worked(
        {
          groupCosts: new Map([
            ['cover', 2160],
            ['plants', 7150],
          ]),
          minutes: 0,
        },
        { depositShare: 0.1 },
      ).depositCoins,
    ).toBe(9500);
  });

  test('the deposit is never more than the price itself', () => {
    expect(worked({ groupCosts: new Map([['delivery', 100]]), minutes: 0 })).toMatchObject({
      grossCoins: 112,
      depositCoins: 112,
    });
  });

  test.each<{ says: string; rules: Partial<QuoteRules>; lines: readonly (readonly [string, number, number])[] }>([
    {
      says: 'contingency is added to the cost',
      rules: { contingencyShare: 0.03 },
      lines: [
        ['media', 141, 8050],
        ['plants', 215, 13_391],
      ],
    },
    {
      says: 'plant loss is added to plants alone',
      rules: { plantLossShare: 0.08 },
      lines: [
        ['media', 0, 7815],
        ['plants', 572, 14_040],
      ],
    },
    {
      says: 'the warranty reserve is a share of the price',
      rules: { warrantyShare: 0.04 },
      lines: [
        ['media', 0, 8141],
        ['plants', 0, 13_542],
      ],
    },
    {
      says: 'a discount comes off the price',
      rules: { discountShare: 0.1 },
      lines: [
        ['media', 0, 7034],
        ['plants', 0, 11_700],
      ],
    },
    {
      says: 'the price before tax goes up to its step on the largest line',
      rules: { priceStepCoins: 500 },
      lines: [
        ['media', 0, 7815],
        ['plants', 0, 13_185],
      ],
    },
  ])('$says', ({ rules, lines }) => {
    const figures = {
      groupCosts: new Map([
        ['media', 4689],
        ['plants', 7150],
      ]),
      minutes: 0,
    };
    const quote = worked(figures, rules);
    expect(quote.lines.map((line) => [line.group, line.reserveCoins, line.priceCoins])).toEqual(lines);
  });

  test.each([
    {
      says: 'a margin of the whole price',
      group: 'media',
      share: 1,
      fault: { kind: 'margin-too-high', group: 'media', label: 'media', margin: 1 },
    },
    { says: 'a group without a margin', group: 'stone', share: 0.4, fault: { kind: 'no-margin', group: 'stone' } },
  ])('$says is refused', ({ group, share, fault }) => {
    const margins = demoRules.margins.map((each) => ({ ...each, share }));
    expect(quoteSums({ groupCosts: new Map([[group, 100]]), minutes: 0 }, { ...demoRules, margins })).toEqual({
      ok: false,
      fault,
    });
  });

  test('a discount of the whole price is refused', () => {
    expect(quoteSums(t05, { ...demoRules, discountShare: 1 })).toEqual({
      ok: false,
      fault: { kind: 'share-too-high', figure: 'discount', share: 1 },
    });
  });

  test('coins add up: lines to the price before tax, taxes to the price', () => {
    fc.assert(
      fc.property(someFigures, someRules, (figures, rules) => {
        const quote = worked(figures, rules);
        expect(sum(quote.lines.map((line) => line.priceCoins))).toBe(quote.netCoins);
        expect(sum(quote.lines.map((line) => line.costCoins))).toBe(quote.costCoins);
        expect(quote.netCoins + sum(quote.tax.map((tax) => tax.coins))).toBe(quote.grossCoins);
        expect(sum(quote.tax.map((tax) => tax.netCoins))).toBe(quote.netCoins);
      }),
    );
  });

  test('a price step is kept, and costs less than one step', () => {
    fc.assert(
      fc.property(someFigures, fc.constantFrom(100, 500, 1000), (figures, priceStepCoins) => {
        const plain = worked(figures).netCoins;
        const stepped = worked(figures, { priceStepCoins }).netCoins;
        expect([stepped % priceStepCoins, stepped >= plain, stepped - plain < priceStepCoins]).toEqual([0, true, true]);
      }),
    );
  });
});

const share = fc.integer({ min: 0, max: 30 }).map((percent) => percent / 100);
const someFigures = fc.record({
  groupCosts: fc
    .array(fc.nat({ max: 200_000 }), { minLength: 10, maxLength: 10 })
    .map((coins) => new Map(demoRules.margins.map((margin, at) => [margin.id, coins[at] ?? 0]))),
  minutes: fc.double({ min: 0, max: 5000, noNaN: true }),
});
const someRules = fc.record({
  contingencyShare: share,
  warrantyShare: share,
  plantLossShare: share,
  discountShare: share,
});

function worked(figures: QuoteFigures, rules: Partial<QuoteRules> = {}): QuoteSums {
  const quote = quoteSums(figures, { ...demoRules, ...rules });
  if (!quote.ok) throw new Error(JSON.stringify(quote.fault));
  return quote.value.sums;
}

function sum(coins: readonly number[]): number {
  return coins.reduce((all, each) => all + each, 0);
}
