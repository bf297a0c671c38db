import { z } from 'zod';

import { choice, code, data, day, figure, orEmpty, reference, words, yesNo } from './field.ts';

export const stockEntry = {
  id: code(),
  material: reference('Material', ['material', 'tank']),
  amount: figure('Amount there', "the material's", { called: 'Amount', low: 0 }),
  sealed: yesNo('Sealed'),
  reservedFor: orEmpty(reference('Kept for', ['job'], { empty: 'nobody' })),
  bestBefore: orEmpty(day('Best before')),
  quarantineUntil: orEmpty(day('In quarantine until')),
  note: words('Note'),
};

export const treatmentBatch = {
  id: code(),
  material: reference('Material', ['material']),
  litres: figure('Amount', 'L'),
  way: choice('Way', ['steam', 'boil', 'bake']),
  aim: choice('Aim', ['clean', 'sterile']),
  on: day('On'),
  collectedAt: words('Collected at'),
  log: data('Readings', z.array(z.tuple([z.number(), z.number()])), { help: 'pairs of minutes and degC' }),
  note: words('Note'),
};

export const tub = {
  id: code(),
  kind: reference('Kind', ['cultureKind']),
  startedOn: day('Started on'),
  claimedBy: orEmpty(reference('Kept for', ['job'])),
  spare: yesNo('Spare'),
  place: words('Place'),
  note: words('Note'),
};
