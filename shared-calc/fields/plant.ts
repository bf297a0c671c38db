import { choice, code, figure, money, words, yesNo } from './field.ts';

export const plantClasses = ['ground', 'mid', 'feature', 'climber', 'epiphyte'] as const;

export const plant = {
  id: code(),
  name: words('Plant'),
  class: choice('Class', plantClasses),
  widthNowCm: figure('Width now', 'cm'),
  widthLaterCm: figure('Width later', 'cm'),
  lightLow: figure('Light from', 'umol/m2/s'),
  lightHigh: figure('Light to', 'umol/m2/s'),
  priceCoins: money('Price'),
  dry: yesNo('Dry tanks only'),
  harm: words('Harm', { help: 'sap, oxalates and the like; empty where nothing is known' }),
  leastFloorM2: figure('Least floor', 'm2', { help: '0 for any' }),
  note: words('Note'),
};
