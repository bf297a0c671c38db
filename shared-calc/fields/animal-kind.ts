import { z } from 'zod';

import { choice, code, count, data, figure, orEmpty, reference, share, words, yesNo } from './field.ts';
import { sourceFields, sourceMarks } from './source.ts';
import { typedFields } from './typed.ts';

const warmth = { low: -10, high: 60 };
const group = { low: 1, high: 9_999 };

/** Least days apart before animals go in with others; common practice, and never less. */
const LEAST_QUARANTINE = 30;

/** How much of the top is open for these animals. */
const ventChoices = ['small', 'middle', 'large'] as const;

/** A kind of animal. What is left out is not known yet: the house's figure then stands in its place. */
export const animalKind = {
  id: code('Code', { list: 'code' }),
  label: words('Kind', { list: 'label', needed: true }),
  ceiling: orEmpty(figure('Ceiling', 'degC', { list: 'ceiling', ...warmth, help: 'the warmest it stands' })),
  actFrom: orEmpty(
    figure('Act from', 'degC', { list: 'act from', ...warmth, help: 'somebody cools the tank from here on' }),
  ),
  floor: orEmpty(figure('Floor', 'degC', { list: 'floor', ...warmth, help: 'the coldest it stands' })),
  bandLow: orEmpty(share('Humidity from', { list: 'humidity from' })),
  bandHigh: orEmpty(share('Humidity to', { list: 'humidity to' })),
  dipAllowed: orEmpty(share('May dip by', { list: 'dip', help: 'below the band, before the next misting' })),
  vents: orEmpty(
    choice('Vents', ventChoices, {
      list: 'vents',
      labels: { small: 'small: a 25 mm strip', middle: 'middle: a 50 mm strip', large: 'large: half the depth' },
    }),
  ),
  leastFloor: orEmpty(figure('Least floor', 'm2', { list: 'least floor', low: 0.01, high: 100, help: 'for a group' })),
  leastHeight: orEmpty(figure('Least height', 'mm', { list: 'least height', low: 50, high: 6_000 })),
  groupLeast: orEmpty(count('Group from', { list: 'group from', ...group })),
  groupMost: orEmpty(count('Group to', { list: 'group to', ...group })),
  prey: orEmpty(
    reference('Prey', ['cultureKind'], {
      list: 'prey',
      help: 'a culture of ours; empty where it is bought or grows here',
    }),
  ),
  preyADay: orEmpty(
    figure('Prey a day', 'each/d', { list: 'prey a day', low: 0, high: 10_000, help: 'for one animal' }),
  ),
  crushesPlants: orEmpty(yesNo('Crushes plants', { list: 'crushes plants' })),
  eatsIsopods: orEmpty(yesNo('Eats isopods', { list: 'eats isopods' })),
  harmToPeople: words('Harm to people', { list: 'harm' }),
  permits: words('Papers and permits', {
    list: 'permits',
    help: 'what to ask the wildlife authority, and what it said',
  }),
  quarantineDays: count('Quarantine', {
    list: 'quarantine',
    unit: 'd',
    low: LEAST_QUARANTINE,
    high: 365,
    fresh: 60,
    help: 'days apart; 30 to 60 is common practice',
  }),
  ...sourceFields,
  note: words('Note', { list: 'note' }),
  /** By the key of a field; a figure without a mark has that of its kind. */
  marks: orEmpty(data('Source of each figure', z.record(z.string(), z.enum(sourceMarks)))),
  ...typedFields,
};
