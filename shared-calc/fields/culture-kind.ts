import { choice, code, count, figure, orEmpty, words } from './field.ts';

export const cultureKind = {
  id: code(),
  label: words('Kind'),
  breeding: choice('Breeding', ['females only', 'two sexes']),
  ratePerDay: orEmpty(figure('Growth a day', 'share', { help: 'left out for flies' })),
  tubL: figure('Tub', 'L'),
  capacity: count('Capacity'),
  harvestShare: figure('Harvest', 'share'),
  harvestEveryDays: count('Harvest every', { unit: 'd' }),
  yield: count('Yield of a harvest'),
  firstHarvestDays: count('First harvest after', { unit: 'd' }),
  productiveDays: orEmpty(count('Productive for', { unit: 'd' })),
  lowestC: figure('Lowest', 'degC'),
  highestC: figure('Highest', 'degC'),
  founders: count('Starter animals'),
  foundersNewLine: count('Starter of a new line'),
  note: words('Note'),
};
