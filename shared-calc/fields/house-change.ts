import { z } from 'zod';

import { choice, code, data, day, longText, orEmpty, reference, schemaOf } from './field.ts';
import { line } from './recipe.ts';

const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const Line = schemaOf(line);

export const houseAnswers = ['take', 'leave'] as const;
const houseWays = ['fork', 'from parent', 'take', 'send', 'join'] as const;

/** A change of one line of a house recipe: a proposal until it is in force, then an offer to the jobs that are sold. */
export const houseChange = {
  id: code(),
  recipe: reference('Recipe', ['recipe']),
  on: day('On'),
  /** The whole line; left out where the line is new. */
  before: orEmpty(data('Before', Line)),
  /** The whole line; left out where it is taken out of the recipe. */
  after: orEmpty(data('After', Line)),
  note: longText('Note'),
  fromJob: orEmpty(reference('From job', ['job'])),
  inForceOn: orEmpty(day('In force on')),
  /** What was said for each sold job, on which day and by whom: a rate of the rate book. */
  answers: data(
    'Answers',
    z.array(z.strictObject({ job: z.string(), answer: z.enum(houseAnswers), on: Day, by: z.string() })),
    { fresh: [] },
  ),
  /** How it came about within the family; left out for an edit by hand. A fork and a join have no line. */
  how: orEmpty(choice('How', houseWays)),
  /** The other recipe: the parent that it came from, or the child. */
  of: orEmpty(reference('Other recipe', ['recipe'])),
  by: orEmpty(reference('By', ['rate'])),
  /** It holds for these tanks alone. */
  for: orEmpty(data('For these tanks', z.array(code().schema).min(1))),
};

export type HouseAnswer = z.infer<(typeof houseChange)['answers']['schema']>[number];
