import { choice, code, figure, words, yesNo } from './field.ts';
import type { UseName } from './uses.ts';
import { typedFields } from './typed.ts';

export const plantClasses = ['ground', 'mid', 'feature', 'climber', 'epiphyte'] as const;

/** The use of the need line by which a recipe asks for plants of a class. */
export const plantNeedUses = {
  ground: 'groundNeed',
  mid: 'midNeed',
  feature: 'featureNeed',
  climber: 'climberNeed',
  epiphyte: 'epiphyteNeed',
} as const satisfies Readonly<Record<(typeof plantClasses)[number], UseName>>;

const light = { low: 0, high: 60 };

export const plant = {
  id: code(),
  name: words('Plant', { needed: true }),
  class: choice('Class', plantClasses),
  widthNowCm: figure('Width now', 'cm', { low: 0.5, high: 300, fresh: 6 }),
  widthLaterCm: figure('Width in a year', 'cm', { low: 0.5, high: 500, fresh: 15 }),
  lightLow: figure('Light from', 'mol/m2/d', { ...light, fresh: 2 }),
  lightHigh: figure('Light to', 'mol/m2/d', { ...light, fresh: 6 }),
  dry: yesNo('Dry tanks only'),
  harm: words('Harm', { help: 'sap, oxalates and the like; empty where nothing is known' }),
  leastFloorM2: figure('Least floor', 'm2', { low: 0, high: 20, help: '0 for any' }),
  note: words('Note'),
  ...typedFields,
};
