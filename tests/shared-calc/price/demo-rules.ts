import type { QuoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Margin } from '#shared-calc/records/records.ts';

const margins: readonly Margin[] = (
  [
    ['tank', 0.3, 'standard'],
    ['media', 0.4, 'standard'],
    ['hardscape', 0.4, 'standard'],
    ['cover', 0.35, 'standard'],
    ['lamps', 0.3, 'standard'],
    ['mist', 0.3, 'standard'],
    ['plants', 0.45, 'low'],
    ['microfauna', 0.6, 'low'],
    ['work', 0.25, 'standard'],
    ['delivery', 0, 'standard'],
  ] as const
).map(([id, share, taxClass], order) => ({ id, label: id, share, taxClass, order }));

/** Margins, rates and terms of the demo workshop, entered by hand. */
export const demoRules: QuoteRules = {
  margins,
  taxClasses: [
    { id: 'standard', label: 'Standard', share: 0.12 },
    { id: 'low', label: 'Low', share: 0.04 },
  ],
  hour: { coins: 4300, builderCoins: 3200, notGiven: [] },
  paid: new Map([
    ['R-fitter', { label: 'Fitter', overCoins: -500 }],
    ['R-grower', { label: 'Grower', overCoins: -800 }],
    ['R-overhead', { label: 'Overhead', overCoins: -2100 }],
  ]),
  depositShare: 0.4,
  depositStepCoins: 500,
  contingencyShare: 0,
  warrantyShare: 0,
  plantLossShare: 0,
  discountShare: 0,
  priceStepCoins: 0,
};

/** Group costs of one T05, Full kit, soil laid flat, 36 km away, as on the printed quote. */
export const costsOfT05: ReadonlyMap<string, number> = new Map([
  ['tank', 14_800],
  ['media', 4689],
  ['hardscape', 9240],
  ['cover', 2160],
  ['lamps', 8800],
  ['mist', 5800],
  ['plants', 7150],
  ['microfauna', 1400],
  ['delivery', 1620],
]);

/** Its minutes: tasks L01 to L17, survey, quote, delivery. */
export const minutesOfT05 = 449.35 + 45 + 60 + 60;
