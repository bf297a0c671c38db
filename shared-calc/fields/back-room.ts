import { z } from 'zod';

import { choice, code, count, data, day, figure, orEmpty, reference, words, yesNo } from './field.ts';
import { typedFields } from './typed.ts';

export const treatmentBatch = {
  id: code(),
  material: reference('Material', ['material']),
  litres: figure('Amount', 'L'),
  way: choice('Way', ['steam', 'boil', 'bake']),
  aim: choice('Aim', ['clean', 'sterile']),
  on: day('On', { past: true }),
  collectedAt: words('Collected at'),
  log: data('Readings', z.array(z.tuple([z.number(), z.number()])), { help: 'pairs of minutes and degC' }),
  note: words('Note'),
  ...typedFields,
};

export const tub = {
  id: code(),
  kind: reference('Kind', ['cultureKind']),
  startedOn: day('Started on', { past: true }),
  claimedBy: orEmpty(reference('Kept for', ['job'])),
  spare: yesNo('Spare'),
  place: words('Place'),
  note: words('Note'),
  founders: count('Starter animals', { low: 1, high: 10_000_000, fresh: 1_000 }),
  way: choice('Started by', ['split', 'new', 'bought'], { labels: { new: 'a new line' }, fresh: 'split' }),
  from: orEmpty(reference('Split from', ['tub'])),
  degC: orEmpty(
    figure('Stands at', 'degC', { low: -10, high: 60, help: "empty: at the temperature of the kind's growth" }),
  ),
  endedOn: orEmpty(day('Ended on', { past: true })),
  ...typedFields,
};
