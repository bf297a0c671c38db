import { choice, code, count, figure, orEmpty, words } from './field.ts';
import { typedFields } from './typed.ts';

const animals = { low: 1, high: 10_000_000 };
const days = { unit: 'd', low: 1, high: 3_650 };
const warmth = { low: -10, high: 60 };

export const cultureKind = {
  id: code(),
  label: words('Kind', { needed: true }),
  breeding: choice('Breeding', ['females only', 'two sexes'], { fresh: 'two sexes' }),
  /** At 1 / 1.5 a day a tub doubles in under two days. */
  ratePerDay: orEmpty(
    figure('Growth', 'each/d', { shown: '%/d', low: 0, high: 1 / 1.5, help: 'a day; left out for flies' }),
  ),
  tubL: figure('Tub', 'L', { low: 0.05, high: 200, fresh: 1.5 }),
  capacity: count('Capacity', { ...animals, fresh: 1_000 }),
  harvestShare: figure('Harvest', 'share', { shown: '%', low: 0, high: 1, fresh: 0.5 }),
  harvestEveryDays: count('Harvest every', { ...days, fresh: 14 }),
  yield: count('Yield of a harvest', { called: 'Yield', ...animals, fresh: 100 }),
  firstHarvestDays: count('First harvest after', { called: 'First harvest', ...days, fresh: 28 }),
  productiveDays: orEmpty(count('Productive for', { called: 'Productive', ...days })),
  lowestC: figure('Lowest', 'degC', { ...warmth, fresh: 18 }),
  highestC: figure('Highest', 'degC', { ...warmth, fresh: 26 }),
  founders: count('Starter animals', { called: 'Starter', ...animals, fresh: 50 }),
  foundersNewLine: count('Starter of a new line', { called: 'New line', ...animals, fresh: 11 }),
  note: words('Note'),
  /** Floated: a share of the tub at once, at most once in a refill time. Picked: as many as are asked for. */
  taken: choice('Taken', ['floated', 'picked'], { fresh: 'floated' }),
  feedEveryDays: orEmpty(count('Feed every', { called: 'Feeding', ...days, fresh: 7 })),
  q10: figure('Growth times, for 10 °C', 'number', {
    low: 1,
    high: 5,
    fresh: 2,
    help: 'how many times faster it grows 10 degrees warmer; 1.5 to 3',
  }),
  atC: figure('Growth is of', 'degC', { ...warmth, fresh: 21 }),
  /** Decides what a build takes of it, its portion and its cautions; flies are planned by the week. */
  animals: choice('Animals', ['springtails', 'isopods', 'flies'], { fresh: 'springtails' }),
  ...typedFields,
};
