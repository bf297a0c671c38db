import { z } from 'zod';

import {
  choice,
  count,
  data,
  figure,
  longText,
  money,
  orEmpty,
  share,
  textAs,
  weekdays,
  within,
  words,
  yesNo,
} from './field.ts';
import { typedFields } from './typed.ts';

const unitSystems = ['metric', 'us'] as const;
export const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
const dateOrderWords = {
  ymd: 'year first, 2027-05-12',
  dmy: 'day first, 12 May 2027, 12/5/2027',
  mdy: 'month first, May 12, 2027, 5/12/2027',
};

const days = { unit: 'd', low: 1, high: 3_650 };
const replaced = { ...days, help: 'once, if they die within these; empty: a quote with this kit promises nothing' };
const asShare = { low: 0, high: 0.95 };
/** An upper bound for the price of a kilowatt hour or a litre. */
const dearest = { low: 0, high: 100_000, help: 'empty: the options page says no money for it' };

/** Settings of the whole house: its letterhead, money, days and habits. */
export const workshop = {
  id: textAs('Code', z.literal('workshop')),
  name: words('Name'),
  place: words('Place'),
  letterhead: longText('Letterhead, as printed on a quote'),
  terms: longText('Terms'),
  payment: longText('How to pay'),
  currency: textAs('Currency', z.string().max(3), {
    help: "EUR, GBP, or a word of one's own",
    form: { pattern: /^\p{L}{1,3}$/u, says: 'A currency is one to three letters, such as EUR or cr.' },
  }),
  coinDecimals: within(count('Decimals of the currency', { low: 0, high: 4 }), (any) => any.min(0).max(4)),
  altitudeM: orEmpty(
    figure('Altitude', 'm', {
      low: -430,
      high: 5_000,
      help: 'steam is cooler higher up; each recipe has its own altitude line',
    }),
  ),
  unitsShown: data('Units shown', z.record(z.string(), z.string()), { help: 'where a kind is not as the choice' }),
  decimalComma: yesNo('Decimal sign'),
  oldPriceDays: within(
    count('A price is old after', { ...days, help: 'it is then marked wherever it counts' }),
    (any) => any.min(1),
  ),
  openWeekdays: within(weekdays('Open on'), (any) => any.min(1)),
  depositShare: orEmpty(share('Deposit', { ...asShare, help: 'of the price, tax included' })),
  depositStepCoins: orEmpty(
    within(
      money('Deposit in steps of', { low: 1, help: 'the deposit goes up to the next; empty: as it comes out' }),
      (any) => any.min(1),
    ),
  ),
  quoteValidDays: orEmpty(
    within(count('A quote is valid for', { ...days, help: 'the last day stands on the quote' }), (any) => any.min(1)),
  ),
  contingencyShare: orEmpty(share('For what comes up', { ...asShare, help: 'of the cost' })),
  warrantyShare: orEmpty(share('For warranty', { ...asShare, help: 'of the price' })),
  plantLossShare: orEmpty(share('For plants that fail', { ...asShare, help: 'of the cost of plants' })),
  discountShare: share('Discount', { ...asShare, help: 'off the price before tax' }),
  priceStepCoins: within(
    money('Price before tax in steps of', { help: 'tax comes on top; 0 leaves the price as it comes out' }),
    (any) => any.min(0),
  ),
  pressureKpa: orEmpty(
    figure('Pressure of the vessel', 'kPa', {
      low: 0,
      high: 300,
      help: 'over the air around it, by its weight or gauge',
    }),
  ),
  electricityPerKwh: orEmpty(within(figure('Electricity', 'number', { per: 'kWh', ...dearest }), (any) => any.min(0))),
  waterPerL: orEmpty(within(figure('Water', 'number', { per: 'L', ...dearest }), (any) => any.min(0))),
  steamWaterL: orEmpty(
    figure('Water in the steam vessel', 'L', { low: 0.1, high: 200, help: 'empty: not known whether it boils dry' }),
  ),
  steamPowerKw: orEmpty(
    figure('Power of the steam vessel', 'kW', { low: 0.1, high: 50, shown: 'kW', help: 'at full heat' }),
  ),
  ovenPowerW: orEmpty(
    figure('Power into the leaves in the oven', 'W', { low: 50, high: 20_000, help: 'empty: 300 W, from memory' }),
  ),
  /** Left out, as in older books: metric. */
  units: orEmpty(choice('Units', unitSystems, { labels: { metric: 'metric, mm, L, kg', us: 'US, in, gal, lb' } })),
  /** Left out: year first. */
  dateOrder: orEmpty(choice('Dates', dateOrders, { labels: dateOrderWords })),
  paper: orEmpty(choice('Paper', ['A4', 'Letter'])),
  weekStart: orEmpty(choice('The week begins on', ['Monday', 'Sunday', 'Saturday'])),
  ...typedFields,
  plantsBasicDays: orEmpty(within(count('Plants replaced, basic kit', replaced), (any) => any.min(1))),
  plantsFullDays: orEmpty(within(count('Plants replaced, full kit', replaced), (any) => any.min(1))),
  plantsShowDays: orEmpty(within(count('Plants replaced, show kit', replaced), (any) => any.min(1))),
};
